import { requireNotNegative, requirePositive } from "../basis/require";
import { feet, type Feet } from "../basis/units";
import { limitingDistance, type BorderlineTree } from "./limitingDistance";

/** How near to the limit a tape reading is not trusted; a choice of ours, about what a cloth tape and bark allow. */
export const USUAL_TOLERANCE = feet(0.1);

export type Verdict = "In" | "Out" | "Too close - tape again";

/**
 * Whether a taped tree is in.
 *
 * @param distance as taped, along the slope if there is one [ft]
 * @param tolerance how near to the limit calls for a second taping [ft]
 * @throws InvalidInput when the distance is not above 0, the tolerance is below 0, or the tree cannot be used
 */
export function inOrOut(tree: BorderlineTree, distance: Feet, tolerance: Feet = USUAL_TOLERANCE): Verdict {
  requirePositive("Distance", distance);
  requireNotNegative("Tolerance", tolerance);
  const inside = limitingDistance(tree) - distance;
  if (Math.abs(inside) < tolerance) return "Too close - tape again";
  return inside >= 0 ? "In" : "Out";
}
