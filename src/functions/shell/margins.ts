import { shown } from "../../core/basis/require";
import { percent, type Percent } from "../../core/basis/units";
import type { Estimate } from "../../core/cruise/estimate";
import type { SamplingMethod } from "../../core/cruise/samplingMethod";
import { asError, type Answer } from "./answers";
import { oneNumber } from "./readings";

/** What stands in place of a margin when every tree was tallied: there is no sampling error, and 0 would be false. */
export const NOT_APPLICABLE = "not applicable";

/** The confidence at which a margin is stated; left out, 95 %. */
export const confidenceOf = (given: unknown): Percent =>
  percent(oneNumber(given, "Confidence", { unit: "%", low: 50, high: 99.9 }, 95));

/** Heading of a margin, which is worth nothing without its confidence. */
export const marginAt = (confidence: Percent) => `Margin +/- at ${shown(confidence)} %`;

/**
 * Value, margin, percent, low and high; with a single plot the value stands and the others say what is lacking, and
 * with every tree tallied they say that a margin does not apply.
 */
export function estimated(
  { complete }: SamplingMethod,
  value: number | undefined,
  factor: number,
  work: () => Estimate | undefined,
): (Answer | undefined)[] {
  if (complete) return [value && value * factor, ...Array<string>(4).fill(NOT_APPLICABLE)];
  try {
    const found = work();
    if (!found) return [];
    return [found.value * factor, found.margin * factor, found.marginPercent, found.low * factor, found.high * factor];
  } catch (problem) {
    const lacking = asError(problem);
    return [value === undefined ? undefined : value * factor, lacking, lacking, lacking, lacking];
  }
}
