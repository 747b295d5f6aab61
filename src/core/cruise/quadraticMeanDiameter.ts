import { OutOfRange } from "../basis/problem";
import type { Source } from "../basis/source";
import { studentT, weightedMean } from "../basis/statistics";
import { inches, type Inches, type Percent } from "../basis/units";
import { SQUARE_FEET_PER_SQUARE_INCH_OF_DIAMETER } from "../basis/circle";
import { withMargin, type Estimate } from "./estimate";
import type { PlotTotals } from "./plotTotals";
import { requireTwoPlots } from "./requireTwoPlots";

export const sources: readonly Source[] = [
  {
    author: "C. Brack and G. Wood",
    year: "1998",
    title: "teaching page on the basal area of a stand, Australian National University, title not noted",
    where: "mean diameter from basal area and number of trees",
    url: "https://fennerschool-associated.anu.edu.au/mensuration/BrackandWood1998/S_BA.HTM",
    standing: "read",
  },
];

/**
 * Quadratic mean diameter: the diameter of the tree of mean basal area.
 *
 *     Dq = sqrt(sum(w d^2) / sum(w))
 *
 *     Dq  quadratic mean diameter
 *     d   diameter at breast height, in the unit that Dq then has
 *     w   weight: the trees per acre that each diameter stands for
 *
 * @throws OutOfRange when no diameter has a weight
 *
 * [1] C. Brack and G. Wood, teaching page on the basal area of a stand, Australian National University, 1998
 */
export function quadraticMeanDiameter(dbh: ArrayLike<number>, weight: ArrayLike<number>): number {
  let weights = 0;
  let squares = 0;
  for (let i = 0; i < dbh.length; i += 1) {
    weights += weight[i] as number;
    squares += (weight[i] as number) * (dbh[i] as number) ** 2;
  }
  if (!(weights > 0)) throw new OutOfRange("Nothing to work on yet.");
  return Math.sqrt(squares / weights);
}

/** Quadratic mean diameter of a stand, from its plots; undefined while there are no trees. */
export function quadraticMeanDiameterOf({ trees, basalArea, design: { weight } }: PlotTotals): Inches | undefined {
  const perAcre = weightedMean(trees, weight);
  return perAcre > 0
    ? inches(Math.sqrt(weightedMean(basalArea, weight) / perAcre / SQUARE_FEET_PER_SQUARE_INCH_OF_DIAMETER))
    : undefined;
}

/**
 * Quadratic mean diameter of a stand with a margin of error from its plots. It is the root of a ratio of two means,
 * basal area over trees, which rise and fall together; so its error is that of the residuals of that ratio under the
 * design of the plots, carried through the root by its slope (delta method).
 *
 *     R = G / T     m = t Dq s_R / (2 R)
 *
 *     G, T      mean basal area [ft2/ac] and mean trees [1/ac] of the plots
 *     R, s_R    mean basal area of a tree and its standard error: that of the mean of g - R t, over T   [ft2]
 *     Dq, m     quadratic mean diameter and its margin of error    [in]
 *     t         two-sided Student's t for the degrees of freedom of the design
 *
 * An approximation that is good once there are a dozen plots or so; its test holds it against the jackknife.
 *
 * @throws OutOfRange when there are fewer than 2 plots
 */
export function estimateQuadraticMeanDiameter(totals: PlotTotals, confidence: Percent): Estimate | undefined {
  const { trees, basalArea, design } = totals;
  requireTwoPlots(trees.length);
  const diameter = quadraticMeanDiameterOf(totals);
  if (diameter === undefined) return undefined;
  const perAcre = weightedMean(trees, design.weight);
  const ratio = weightedMean(basalArea, design.weight) / perAcre;
  const residuals = Float64Array.from(basalArea, (area, plot) => area - ratio * (trees[plot] as number));
  const { standardError, degreesOfFreedom } = design.errorOf(residuals);
  const t = degreesOfFreedom === undefined ? 0 : studentT(confidence, degreesOfFreedom);
  return withMargin(diameter, (t * diameter * (standardError / perAcre)) / (2 * ratio));
}
