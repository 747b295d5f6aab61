import { InvalidInput, OutOfRange } from "../basis/problem";
import { shown } from "../basis/require";
import { products, sampleVariance, studentT, weightedMean } from "../basis/statistics";
import type { Percent } from "../basis/units";
import { withMargin, type Estimate } from "./estimate";
import { ratioOfMeans } from "./ratioOfMeans";
import { requireTwoPlots } from "./requireTwoPlots";

/** How far chance may have moved a mean, and the degrees of freedom of its t; none where the plots do not differ. */
export interface MeanError {
  readonly standardError: number;
  readonly degreesOfFreedom: number | undefined;
}

/**
 * How the plots of a cruise were drawn, and so what each of them weighs in a mean and how unsure that mean is. Every
 * table of a cruise reads the same design, so that parts and totals cannot part company.
 */
export interface PlotDesign {
  /** What each plot weighs in a mean; left out where all weigh the same. */
  readonly weight?: Float64Array;
  /**
   * Standard error of the mean of these values, one for each plot.
   * @throws OutOfRange when the plots are too few to tell
   */
  errorOf(values: ArrayLike<number>): MeanError;
}

/** Mean of the plots by their design, and its margin of error. */
export function estimateBy(design: PlotDesign, values: ArrayLike<number>, confidence: Percent): Estimate {
  const { standardError, degreesOfFreedom } = design.errorOf(values);
  const t = degreesOfFreedom === undefined ? 0 : studentT(confidence, degreesOfFreedom);
  return withMargin(weightedMean(values, design.weight), t * standardError);
}

/**
 * Plots that all say as much, drawn by chance or on a grid.
 *
 * @param population how many plots would cover the tract, for fixed plots only: the error then shrinks by
 * sqrt(1 - n/N). Left out: there is no such number, as for every point sample
 */
export const evenPlots = (plots: number, population = Infinity): PlotDesign => ({
  errorOf(values) {
    requireTwoPlots(plots);
    const variance = (sampleVariance(values) / plots) * uncovered(plots, population);
    return { standardError: Math.sqrt(variance), degreesOfFreedom: plots - 1 };
  },
});

/** Plots that say as much as they have acres, as strips do: a ratio of means. */
export const plotsByArea = (weight: Float64Array): PlotDesign => ({
  weight,
  errorOf(values) {
    requireTwoPlots(weight.length);
    const { standardError } = ratioOfMeans(products(values, weight), weight);
    return { standardError, degreesOfFreedom: weight.length - 1 };
  },
});

/**
 * Plots taken in groups; the group is the unit of the error, as in clusterEstimate.
 *
 * @param group number of the group of each plot, counted from 0
 */
export const groupedPlots = (group: ArrayLike<number>, groups: number): PlotDesign => ({
  errorOf(values) {
    if (groups < 2) throw new OutOfRange(`A margin of error needs at least 2 groups of plots. You have ${groups}.`);
    const sums = new Float64Array(groups);
    const plots = new Float64Array(groups);
    for (let plot = 0; plot < values.length; plot += 1) {
      const place = group[plot] as number;
      sums[place] = (sums[place] as number) + (values[plot] as number);
      plots[place] = (plots[place] as number) + 1;
    }
    return {
      standardError: ratioOfMeans(sums, plots).standardError,
      degreesOfFreedom: groups - 1,
    };
  },
});

/**
 * What is left to chance once so many of all plots were taken: 1 - n/N.
 * @throws InvalidInput when more plots were taken than there are
 */
export function uncovered(plots: number, population: number): number {
  if (population < plots)
    throw new InvalidInput(
      `The plots that would cover the tract should be at least the ${plots} you took. You have ${shown(population)}.`,
    );
  return 1 - plots / population;
}
