import type { Source } from "../basis/source";
import type { LyingLog, Section } from "./lyingLog";
import type { Outline } from "./outline";
import { cutFrom } from "./quarters/fannedLog";
import type { SawnBoard } from "./sawnFlitch";

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
export const GRAINS = ["quarter", "rift", "flat"] as const;
export type Grain = (typeof GRAINS)[number];

/** Limits in common use; printed ones differ from each other by up to 15 degrees (from memory). [degrees] */
const QUARTER_FROM = 60;
const RIFT_FROM = 30;

/**
 * Angle between the growth rings and the wide face of a board, at the middle of the board.
 *
 *     theta = atan((|u| / A^2) / (|v| / B^2))
 *
 *     u, v  distance of the board's middle from the pith, along its wide face and square to it          [in]
 *     A, B  half the diameters of the log there, along the wide face and square to it; equal if round   [in]
 *
 * The rings run as the bark does: circles around the pith, or ellipses of the log's own shape. 90 degrees on a plane
 * through the pith, 0 straight above it.
 */
export function ringAngle(board: Outline, section: Section): number {
  const { left, right, lower, upper } = board;
  const across = Math.abs((left + right) / 2 - section.u) / section.a ** 2;
  const up = Math.abs((lower + upper) / 2 - section.v) / section.b ** 2;
  const isFlat = right - left >= upper - lower;
  return (Math.atan2(isFlat ? across : up, isFlat ? up : across) * 180) / Math.PI;
}

/** Of a board at its place in a log, half-way along it. */
export function grainOf({ piece, outline }: SawnBoard, lying: LyingLog): Grain {
  const angle = ringAngle(outline, cutFrom(lying, outline, piece.length / 2).section);
  if (angle >= QUARTER_FROM) return "quarter";
  return angle >= RIFT_FROM ? "rift" : "flat";
}
