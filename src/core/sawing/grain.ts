import type { Source } from "../basis/source";
import type { Outline } from "./outline";

export const sources: readonly Source[] = [
  {
    author: "The trade",
    year: "",
    title: "Quarter, rift and flat grain",
    where: "rings at 60 to 90, 30 to 60 and under 30 degrees to the face; limits differ by source",
    standing: "from memory",
  },
];

/** How the growth rings meet the wide face of a board: near a right angle, slanting, or near the face itself. */
export type Grain = "quarter" | "rift" | "flat";

/** Limits in common use; printed ones differ from each other by up to 15 degrees (from memory). [degrees] */
const QUARTER_FROM = 60;
const RIFT_FROM = 30;

/**
 * Angle between the growth rings and the wide face of a board, at the middle of the board.
 *
 *     theta = atan(|u| / |v|)
 *
 *     u, v  distance of the board's middle from the pith, along its wide face and square to it  [in]
 *
 * The rings are circles around the pith. 90 degrees on a plane through the pith, 0 straight above it.
 */
export function ringAngle({ left, right, lower, upper }: Outline): number {
  const across = Math.abs(left + right) / 2;
  const up = Math.abs(lower + upper) / 2;
  const isFlat = right - left >= upper - lower;
  return (Math.atan2(isFlat ? across : up, isFlat ? up : across) * 180) / Math.PI;
}

export function grainOf(board: Outline): Grain {
  const angle = ringAngle(board);
  if (angle >= QUARTER_FROM) return "quarter";
  return angle >= RIFT_FROM ? "rift" : "flat";
}
