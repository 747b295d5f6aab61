import type { Source } from "../basis/source";
import { mean, products, sampleVariance, studentT } from "../basis/statistics";
import { percent, type Percent } from "../basis/units";
import { ratioOfMeans } from "./ratioOfMeans";
import { requireTwoPlots } from "./requireTwoPlots";

/** An amount with its margin of error at some confidence. */
export interface Estimate {
  readonly value: number;
  /** Half the width of the interval, in the unit of the value. */
  readonly margin: number;
  /** The margin as a share of the value; undefined where the value is 0. */
  readonly marginPercent: Percent | undefined;
  /** May lie below 0 where plots are few and differ much: it is shown as computed. */
  readonly low: number;
  readonly high: number;
}

export const sources: readonly Source[] = [
  {
    author: "F. Freese",
    year: "1962",
    title: "Elementary Forest Sampling, USDA Agriculture Handbook 232",
    where: "simple random sampling, read in the online re-edition, section 3.1",
    url: "https://freese-stats.com/sampling-measureable-variables.html",
    standing: "read",
  },
  {
    author: "A. O. Finley and J. W. Doser",
    year: "n.d.",
    title: "Introduction to Forestry Data Analysis with R",
    where: "chapter 12: forest plots as a sample from a population without end, so no finite population correction",
    url: "https://www.finley-lab.com/ifdar/foreststat",
    standing: "read",
  },
];

/**
 * Mean of the plots and its margin of error.
 *
 *     m = t s / sqrt(n)
 *
 *     m  margin of error: the interval is the mean less m to the mean plus m
 *     t  two-sided Student's t for the confidence and n - 1 degrees of freedom
 *     s  sample standard deviation of the plots, divisor n - 1
 *     n  number of plots, those without trees included
 *
 * Where plots weigh by their acres, as strips do, mean and standard error are those of a ratio of means.
 *
 * No finite population correction: plot centres are picked from a surface without end, and a point of a point
 * sample has no area of its own [2]. The printed example of [1] does use one; its test says so.
 *
 * @param weight what each plot weighs, such as its acres. Left out: all weigh the same
 * @throws OutOfRange when there are fewer than 2 plots
 * @throws InvalidInput when the confidence is out of its bounds
 *
 * [1] F. Freese, "Elementary Forest Sampling", USDA Agriculture Handbook 232, 1962
 * [2] A. O. Finley and J. W. Doser, "Introduction to Forestry Data Analysis with R", ch. 12
 */
export function estimate(plots: ArrayLike<number>, confidence: Percent, weight?: ArrayLike<number>): Estimate {
  requireTwoPlots(plots.length);
  const t = studentT(confidence, plots.length - 1);
  if (weight) {
    const { value, standardError } = ratioOfMeans(products(plots, weight), weight);
    return withMargin(value, t * standardError);
  }
  return withMargin(mean(plots), t * Math.sqrt(sampleVariance(plots) / plots.length));
}

/** An amount and its margin, written out as percent, low and high. */
export function withMargin(value: number, margin: number): Estimate {
  return {
    value,
    margin,
    marginPercent: value === 0 ? undefined : percent((100 * margin) / Math.abs(value)),
    low: value - margin,
    high: value + margin,
  };
}
