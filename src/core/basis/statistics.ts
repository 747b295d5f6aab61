import jStat from "jstat";
import { OutOfRange } from "./problem";
import { requireBetween } from "./require";
import type { Percent } from "./units";

/** From here on t is the normal deviate to one part in a million, and the library begins to lose digits. */
const AS_GOOD_AS_NORMAL = 1e6;

/**
 * Two-sided Student's t for a confidence level.
 *
 * @param confidence confidence level [%], 50 to 99.9
 * @param degreesOfFreedom above 0; need not be whole (Satterthwaite)
 * @throws InvalidInput when the confidence is out of its bounds
 * @throws OutOfRange when there are no degrees of freedom
 *
 * The inverse of the incomplete beta function, of which t is another form, comes from the library jStat;
 * test/core/basis holds t against another library.
 *
 * Source: M. Abramowitz, I. A. Stegun, 1964, Handbook of Mathematical Functions, 26.7.1 and 26.5.27 (from memory).
 */
export function studentT(confidence: Percent, degreesOfFreedom: number): number {
  requireBetween("Confidence", confidence, 50, 99.9, "%");
  if (!(degreesOfFreedom > 0)) throw new OutOfRange("A margin of error needs at least 2 plots. You have 1.");
  const freedom = Math.min(degreesOfFreedom, AS_GOOD_AS_NORMAL);
  const x = jStat.ibetainv(1 - confidence / 100, freedom / 2, 0.5);
  return Math.sqrt((freedom * (1 - x)) / x);
}

/** Arithmetic mean. The list must not be empty. */
export function mean(values: ArrayLike<number>): number {
  let sum = 0;
  for (let i = 0; i < values.length; i += 1) sum += values[i] as number;
  return sum / values.length;
}

/** Arithmetic mean, each value by what it weighs; without weights all weigh the same. The list must not be empty. */
export function weightedMean(values: ArrayLike<number>, weight?: ArrayLike<number>): number {
  if (!weight) return mean(values);
  let [sum, weights] = [0, 0];
  for (let i = 0; i < values.length; i += 1) {
    sum += (values[i] as number) * (weight[i] as number);
    weights += weight[i] as number;
  }
  return sum / weights;
}

/** The products of two lists, pair by pair. */
export function products(values: ArrayLike<number>, others: ArrayLike<number>): Float64Array {
  const multiplied = new Float64Array(values.length);
  for (let i = 0; i < values.length; i += 1) multiplied[i] = (values[i] as number) * (others[i] as number);
  return multiplied;
}

/** Sample variance, divisor n - 1, by the two-pass method. The list must hold at least two values. */
export function sampleVariance(values: ArrayLike<number>): number {
  const centre = mean(values);
  let squares = 0;
  for (let i = 0; i < values.length; i += 1) squares += ((values[i] as number) - centre) ** 2;
  return squares / (values.length - 1);
}
