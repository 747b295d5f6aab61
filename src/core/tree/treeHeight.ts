import { InvalidInput } from "../basis/problem";
import { requireBetween } from "../basis/require";
import type { Source } from "../basis/source";
import { feet, percent, type Feet, type Percent } from "../basis/units";
import type { HeightScale } from "./heightScales";
import { horizontalDistance } from "./horizontalDistance";

export interface HeightSighting {
  /** Taped from the eye to the tree, along the slope if there is one. [ft] */
  readonly distance: Feet;
  /** Readings of the instrument; below the eye they are negative. */
  readonly top: number;
  readonly base: number;
  readonly scale: HeightScale;
  /** Slope along which the distance was taped. [%] */
  readonly slope?: Percent;
}

/**
 * Height from a distance and two angles.
 *
 *     H = h (tan a - tan b)
 *
 *     H  height between the two marks sighted           [ft]
 *     h  level distance from the eye to the tree        [ft]
 *     a  angle to the top, b angle to the base; on a percent scale the tangent is the reading / 100, on the
 *        topographic scale the reading / 66 [1]
 *
 * @throws InvalidInput when the distance is not above 0, a reading is off the scale, or the top is not above the base
 *
 * [1] J. DeYoung, Forest Measurements: An Applied Approach, section 2.4
 */
export function treeHeight({ distance, top, base, scale, slope = percent(0) }: HeightSighting): Feet {
  requireBetween("Top reading", top, -scale.largestReading, scale.largestReading, scale.unit);
  requireBetween("Base reading", base, -scale.largestReading, scale.largestReading, scale.unit);
  if (top <= base) throw new InvalidInput("The top reading should be above the base reading.");
  return feet(horizontalDistance(distance, slope) * (scale.rise(top) - scale.rise(base)));
}

export const sources: readonly Source[] = [
  {
    author: "J. DeYoung",
    year: "n.d.",
    title: "Forest Measurements: An Applied Approach",
    where: "section 2.4",
    url: "https://openoregon.pressbooks.pub/forestmeasurements/chapter/2-4-using-topographic-slope-to-determine-tree-height",
    standing: "read",
  },
];
