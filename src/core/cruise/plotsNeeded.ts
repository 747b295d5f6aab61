import { InvalidInput } from "../basis/problem";
import { requireNotNegative, requirePositive, shown } from "../basis/require";
import type { Source } from "../basis/source";
import { studentT } from "../basis/statistics";
import type { Percent } from "../basis/units";

export const sources: readonly Source[] = [
  {
    author: "author not shown, after USDA Forest Service FSH 2409.12",
    year: "2000",
    title: "Calculating Sample Size for Stratified Random Sample, handout",
    where: "form for a limited number of plots",
    url: "https://www.scribd.com/doc/290105300/Calculating-Sample-Size-for-Stratified-Random-Sample",
    standing: "read",
  },
  {
    author: "D. J. Brus",
    year: "2022",
    title: "Spatial Sampling with R",
    where: "chapter 12: number of plots for a wanted relative error",
    url: "https://github.com/DickBrus/SpatialSamplingwithR",
    standing: "read",
  },
];

/** Keeps a whole number whole: (2 x 50 / 10)^2 is 100 plots, also when the quotient is a hair above. */
const ROUNDING = 1e-9;

/**
 * Number of plots for a wanted margin of error.
 *
 *     n >= 1 / (1/N + (E / (t CV))^2)
 *
 *     n   number of plots, at least 2
 *     N   number of plots that would cover the tract; left out for points, which have none: 1/N is 0
 *     E   margin of error that is wanted, as a share of the mean   [%]
 *     CV  coefficient of variation between plots                   [%]
 *     t   two-sided Student's t for the confidence and n - 1 degrees of freedom
 *
 * t needs n, so the answer is the least n that is enough with its own t. Trial and error, from t = 2 on, ends at the
 * same number, or flips between two neighbours of which this is the larger.
 *
 * @throws InvalidInput when CV is below 0, E is not above 0, N is below 2 or the confidence is out of its bounds
 *
 * [1] handout after USDA Forest Service FSH 2409.12, 2000; [2] D. J. Brus, "Spatial Sampling with R", ch. 12
 */
export function plotsNeeded(variation: Percent, error: Percent, confidence: Percent, population = Infinity): number {
  requireNotNegative("Coefficient of variation", variation, "%");
  requirePositive("Margin of error", error, "%");
  if (!(population >= 2)) {
    throw new InvalidInput(
      `The number of plots that cover the tract should be 2 or more. You have ${shown(population)}.`,
    );
  }
  const needed = (plots: number) => {
    const free = ((studentT(confidence, plots - 1) * variation) / error) ** 2;
    return free === 0 ? 0 : Math.ceil(1 / (1 / population + 1 / free) - ROUNDING);
  };

  let tooFew = 1;
  let enough = Math.max(2, needed(2));
  while (enough - tooFew > 1) {
    const middle = Math.floor((tooFew + enough) / 2);
    if (middle >= needed(middle)) enough = middle;
    else tooFew = middle;
  }
  return enough;
}
