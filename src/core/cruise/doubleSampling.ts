import { InvalidInput, OutOfRange } from "../basis/problem";
import type { Source } from "../basis/source";
import { mean, sampleVariance, studentT } from "../basis/statistics";
import type { Percent } from "../basis/units";
import { withMargin, type Estimate } from "./estimate";

/** A quick measure on every plot, and the full one on some of them. */
export interface DoubleSample {
  /** The quick measure of every plot, such as a count of trees. */
  readonly quick: ArrayLike<number>;
  /** The same measure on the plots that were also measured in full, and the full measure there. */
  readonly measured: readonly { readonly quick: number; readonly full: number }[];
}

export interface DoubleSampleEstimate extends Estimate {
  readonly standardError: number;
  /** Full measure for one of the quick measure: the ratio, or the slope of the line. */
  readonly slope: number;
}

export const sources: readonly Source[] = [
  {
    author: "D. J. Brus",
    year: "2022",
    title: "Spatial Sampling with R",
    where: "chapter 11: two-phase random sampling, regression estimator; the ratio form is its analogue",
    url: "https://github.com/DickBrus/SpatialSamplingwithR",
    standing: "read",
  },
];

/**
 * Mean of the full measure by a line through nought: what the quick measure is worth, times its mean on all plots.
 *
 *     y = R x_1     R = sum(y) / sum(x) on the measured plots
 *     V = S_y^2 / n_1 + (1 - n_2 / n_1) S_e^2 / n_2     e = y - R x
 *
 *     x_1       mean of the quick measure on all n_1 plots
 *     S_y^2     variance of the full measure on the n_2 measured plots
 *     S_e^2     mean square of the residuals e, divisor n_2 - 1
 *
 * @throws OutOfRange when fewer than 2 plots were measured, or the quick measure is 0 on all of them
 *
 * [1] D. J. Brus, "Spatial Sampling with R", ch. 11
 */
export function doubleSampleRatio(sample: DoubleSample, confidence: Percent): DoubleSampleEstimate {
  const { full, quick } = columnsOf(sample);
  const below = mean(quick);
  if (below === 0) throw new OutOfRange("Nothing to work on yet.");
  const ratio = mean(full) / below;
  const residuals = full.map((value, i) => value - ratio * (quick[i] as number));
  return fromResiduals(sample, ratio * mean(sample.quick), ratio, full, residuals, confidence);
}

/**
 * Mean of the full measure by the least-squares line on the quick one.
 *
 *     y = y_2 + b (x_1 - x_2)     b = sum((x - x_2) (y - y_2)) / sum((x - x_2)^2)     V as for the ratio, e = residuals
 *
 *     y_2, x_2  means on the measured plots; x_1 mean of the quick measure on all plots
 *
 * @throws OutOfRange when fewer than 2 plots were measured, or the quick measure is the same on all of them
 *
 * [1] D. J. Brus, "Spatial Sampling with R", ch. 11
 */
export function doubleSampleRegression(sample: DoubleSample, confidence: Percent): DoubleSampleEstimate {
  const { full, quick } = columnsOf(sample);
  const [middle, base] = [mean(full), mean(quick)];
  const spread = quick.reduce((sum, one) => sum + (one - base) ** 2, 0);
  if (spread === 0) throw new OutOfRange("A line needs measured plots that differ in the quick measure.");
  const slope = quick.reduce((sum, one, i) => sum + (one - base) * ((full[i] as number) - middle), 0) / spread;
  const residuals = full.map((value, i) => value - middle - slope * ((quick[i] as number) - base));
  return fromResiduals(sample, middle + slope * (mean(sample.quick) - base), slope, full, residuals, confidence);
}

function columnsOf({ quick, measured }: DoubleSample) {
  if (measured.length < 2)
    throw new OutOfRange(`A margin of error needs at least 2 measured plots. You have ${measured.length}.`);
  if (measured.length > quick.length)
    throw new InvalidInput(`Only ${quick.length} plots have the quick measure, but ${measured.length} the full one.`);
  return { full: measured.map((plot) => plot.full), quick: measured.map((plot) => plot.quick) };
}

function fromResiduals(
  { quick }: DoubleSample,
  value: number,
  slope: number,
  full: readonly number[],
  residuals: readonly number[],
  confidence: Percent,
): DoubleSampleEstimate {
  const [all, some] = [quick.length, full.length];
  const square = residuals.reduce((sum, one) => sum + one ** 2, 0) / (some - 1);
  const standardError = Math.sqrt(sampleVariance(full) / all + (1 - some / all) * (square / some));
  return { ...withMargin(value, studentT(confidence, some - 1) * standardError), standardError, slope };
}
