import { OutOfRange } from "../basis/problem";
import { requirePositive } from "../basis/require";
import type { Source } from "../basis/source";
import { mean, sampleVariance, studentT } from "../basis/statistics";
import type { Acres, Percent } from "../basis/units";
import { estimate, withMargin, type Estimate } from "./estimate";

/** One part of a tract that was cruised by itself. */
export interface Stratum {
  readonly name: string;
  readonly acres: Acres;
  /** What each of its plots says of an acre, those without trees as 0. */
  readonly plots: ArrayLike<number>;
}

export interface StratifiedEstimate {
  /** Of each stratum by itself, in the order given. */
  readonly strata: readonly Estimate[];
  readonly combined: Estimate;
  readonly standardError: number;
  /** Satterthwaite's; undefined where no stratum varies. */
  readonly degreesOfFreedom: number | undefined;
}

export const sources: readonly Source[] = [
  {
    author: "D. J. Brus",
    year: "2022",
    title: "Spatial Sampling with R",
    where: "chapter 4: mean and variance by strata; degrees of freedom after Nanthakumar and Selvavel 2004",
    url: "https://github.com/DickBrus/SpatialSamplingwithR",
    standing: "read",
  },
];

/**
 * Mean of a tract from strata that were cruised each by itself.
 *
 *     y = sum(W_h y_h)     V = sum(v_h)     v_h = W_h^2 s_h^2 / n_h     df = V^2 / sum(v_h^2 / (n_h - 1))
 *
 *     W_h       share of stratum h in the acres, so that a stratum with many plots does not count for more land
 *     y_h, s_h  mean and standard deviation of its n_h plots
 *     V, df     variance of the mean, and degrees of freedom of its t: between the least n_h - 1 and their sum
 *
 * A stratum whose plots are all empty stays in, with a mean of 0.
 *
 * @throws OutOfRange naming a stratum of fewer than 2 plots, whose variance no one can know
 * @throws InvalidInput when acres are not above 0, or the confidence is out of its bounds
 *
 * [1] D. J. Brus, "Spatial Sampling with R", ch. 4
 */
export function stratifiedEstimate(strata: readonly Stratum[], confidence: Percent): StratifiedEstimate {
  if (strata.length === 0) throw new OutOfRange("Nothing to work on yet.");
  for (const { name, acres, plots } of strata) {
    const called = name.slice(0, 60);
    requirePositive(`Acres of stratum ${called}`, acres);
    if (plots.length < 2) throw tooFewIn(called, plots.length);
  }
  const all = strata.reduce((sum, { acres }) => sum + acres, 0);
  let value = 0;
  const parts = strata.map(({ acres, plots }) => {
    const share = acres / all;
    value += share * mean(plots);
    return {
      variance: (share ** 2 * sampleVariance(plots)) / plots.length,
      plots: plots.length,
    };
  });
  const { standardError, degreesOfFreedom } = combinedError(parts);
  const t = degreesOfFreedom === undefined ? 0 : studentT(confidence, degreesOfFreedom);
  return {
    strata: strata.map(({ plots }) => estimate(plots, confidence)),
    combined: withMargin(value, t * standardError),
    standardError,
    degreesOfFreedom,
  };
}

/** What one stratum adds to the variance of the mean, its share of the acres squared included. */
export interface StratumVariance {
  readonly variance: number;
  readonly plots: number;
}

/** The standard error of independent parts together, with Satterthwaite's degrees of freedom, as above. */
export function combinedError(parts: readonly StratumVariance[]) {
  const variance = parts.reduce((sum, part) => sum + part.variance, 0);
  const perFreedom = parts.reduce((sum, part) => sum + part.variance ** 2 / (part.plots - 1), 0);
  return {
    standardError: Math.sqrt(variance),
    degreesOfFreedom: perFreedom > 0 ? variance ** 2 / perFreedom : undefined,
  };
}

/** A stratum of one plot has no spread that anyone could know. */
export const tooFewIn = (stratum: string, plots: number) =>
  new OutOfRange(`A margin of error needs at least 2 plots in each stratum. You have ${plots} in stratum ${stratum}.`);
