import { inches, type Inches } from "../basis/units";
import { HAIR } from "./filling/hair";
import type { Flitch } from "./flitches";
import { diameterAt, type SawLog } from "./sawLog";
import type { Sides } from "./sides";

/**
 * Where a flitch may lie in the log: both its faces keep within its reach of the pith, or wane shows.
 *
 *     s = max(w / 2, w - n)
 *     reach = sqrt(D(l)^2 / 4 - s^2) + q t,  at most D(l) / 2
 *
 *     w, t, l  width over all, thickness, length                        [in], [in], [ft]
 *     D(l)     diameter of the log at l from its large end              [in]
 *     n        distance of the nearer side from the pith                [in]
 *     s        half of the chord that the outer face needs              [in]
 *     q        share of the thickness over which wane may show          (0 to 1)
 *
 * With the side n cut away, a flitch wider than 2 n lies off the middle, and its other edge meets the bark at w - n.
 * Undefined when it lies nowhere.
 */
export function reachOf(
  log: SawLog,
  { width, thickness, length }: Flitch,
  wane: number,
  sides: Sides,
): Inches | undefined {
  if (width > sides.right - sides.left + HAIR) return undefined;
  const radius = diameterAt(log, length) / 2;
  const half = Math.max(width / 2, width - Math.min(0 - sides.left, sides.right));
  if (half > radius) return undefined;
  const reach = Math.min(radius, Math.sqrt(radius ** 2 - half ** 2) + wane * thickness);
  return 2 * reach + HAIR < thickness ? undefined : inches(reach);
}
