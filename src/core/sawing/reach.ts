import { inches, type Inches } from "../basis/units";
import { HAIR } from "./filling/hair";
import type { Flitch } from "./flitches";
import { sectionAt, type LyingLog } from "./lyingLog";
import type { Face } from "./outline";
import { diameterAt } from "./sawLog";
import type { Sides } from "./sides";

/**
 * Where a flitch may lie in a symmetrical log: both its faces keep within its reach of the pith, or wane shows.
 *
 *     s = max(w / 2, w - n)
 *     reach = B sqrt(1 - s^2 / A^2) + q t,  at most B
 *
 *     w, t, l  width over all, thickness, length                                                    [in], [in], [ft]
 *     A, B     half the diameters of the log at l from its large end, along the flitch and square to it; equal if round
 *     n        distance of the nearer side from the pith                                            [in]
 *     s        half of the chord that the outer face needs                                          [in]
 *     q        share of the thickness over which wane may show                                      (0 to 1)
 *
 * With the side n cut away, a flitch wider than 2 n lies off the middle, and its other edge meets the bark at w - n.
 * Undefined when it lies nowhere.
 */
export function reachOf(
  lying: LyingLog,
  { width, thickness, length }: Flitch,
  wane: number,
  face: Face,
  sides: Sides,
): Inches | undefined {
  if (width > sides.right - sides.left + HAIR) return undefined;
  const half = Math.max(width / 2, width - Math.min(0 - sides.left, sides.right));
  const radius = diameterAt(lying.log, length) / 2;
  const { a, b } = lying.isPlain ? { a: radius, b: radius } : sectionAt(lying, length, face);
  if (half > a) return undefined;
  const reach = Math.min(b, (b / a) * Math.sqrt(a ** 2 - half ** 2) + wane * thickness);
  return 2 * reach + HAIR < thickness ? undefined : inches(reach);
}
