import { requirePositive } from "../basis/require";
import { InvalidInput } from "../basis/problem";
import type { Source } from "../basis/source";
import type { SquareFeetPerAcre } from "../basis/units";
import { toCenter, type FeetPerInch, type MeasureTo } from "./measureTo";

const SQUARE_FEET_PER_ACRE = 43_560;

/**
 * Plot radius factor of an angle gauge: how far off a tree may stand, for each inch of its DBH.
 *
 *     k = sqrt(43560 / (576 BAF))          to the centre of the tree
 *     k = sqrt(43560 / (576 BAF)) - 1/24   to its face
 *
 *     k    plot radius factor                              [ft/in]
 *     BAF  basal area factor                               [ft2/ac]
 *
 * It follows from the definition: a tree of D inches, pi D^2 / 576 ft2, stands on a circle of k D feet, pi (k D)^2 / 43560
 * acres, and the one over the other is BAF whatever D. The square root of 43560 / 576 is the 8.696 of [1].
 *
 * @throws InvalidInput when BAF is not a number above 0, or so large that no distance is left
 *
 * [1] Point Sampling or Variable Plot Cruising, Kentucky forestry teaching slides
 */
export function plotRadiusFactor(baf: SquareFeetPerAcre, measureTo: MeasureTo = toCenter): FeetPerInch {
  requirePositive("BAF", baf);
  const factor = Math.sqrt(SQUARE_FEET_PER_ACRE / (576 * baf)) - measureTo.leftOut;
  if (factor <= 0) throw new InvalidInput(`BAF should be smaller: no tree could be in. You have ${baf} ft2/ac.`);
  return factor as FeetPerInch;
}

export const sources: readonly Source[] = [
  {
    author: "author not shown",
    year: "n.d.",
    title: "Point Sampling or Variable Plot Cruising, Kentucky forestry teaching slides",
    where: "plot radius factor, 8.696 over the square root of BAF",
    url: "https://studylib.net/doc/5701643/13--14",
    standing: "read",
  },
];
