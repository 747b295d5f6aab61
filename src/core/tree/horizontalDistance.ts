import { requireBetween, requirePositive } from "../basis/require";
import type { Source } from "../basis/source";
import { feet, type Feet, type Percent } from "../basis/units";

/** Steeper ground than this cannot be cruised on foot; a choice of ours. [%] */
export const STEEPEST = 200;

/**
 * How much longer a distance is along a slope than level: 1 / cos(angle) = sqrt(1 + (s / 100)^2).
 *
 * @param slope rise over run [%]; uphill and downhill are the same
 * @throws InvalidInput when the slope is not between -200 and 200 %
 */
export function slopeStretch(slope: Percent): number {
  requireBetween("Slope", slope, -STEEPEST, STEEPEST, "%");
  return Math.sqrt(1 + (slope / 100) ** 2);
}

/**
 * Level distance of one taped along a slope.
 *
 *     h = s / sqrt(1 + (p / 100)^2)
 *
 *     h  level distance               [ft, or the unit of s]
 *     s  distance along the slope     [ft, or any unit]
 *     p  slope                        [%]
 *
 * @throws InvalidInput when the distance is not above 0 or the slope is not between -200 and 200 %
 */
export function horizontalDistance(slopeDistance: Feet, slope: Percent): Feet {
  requirePositive("Slope distance", slopeDistance);
  return feet(slopeDistance / slopeStretch(slope));
}

export const sources: readonly Source[] = [
  {
    author: "plain geometry",
    year: "",
    title: "Distance along a slope and level distance",
    where: "the cosine of the slope angle",
    standing: "computed",
  },
];
