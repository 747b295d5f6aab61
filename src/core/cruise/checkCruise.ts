import { InvalidInput } from "../basis/problem";
import type { Source } from "../basis/source";
import type { Percent } from "../basis/units";
import { estimate, type Estimate } from "./estimate";

export interface CheckCruise {
  /** How much more the check found, on average, and its margin of error. */
  readonly difference: Estimate;
  /** True when the difference is larger than chance explains; only then is there a reason to correct the cruise. */
  readonly shown: boolean;
}

export const sources: readonly Source[] = [
  {
    author: "author not shown",
    year: "n.d.",
    title: "newsletter article on check cruising, title not noted",
    where: "paired comparison of check and cruise on a random part of the plots",
    url: "http://john-bell-associates.com/regular/regular45a.htm",
    standing: "read",
  },
];

/**
 * Cruise against check, plot by plot: each pair is the same plot measured twice, so only the differences count
 * (paired t test).
 *
 *     shown when |d| > t s_d / sqrt(n)
 *
 *     d, s_d  mean and standard deviation of check less cruise
 *     n       plots that were checked, drawn by chance from all of them
 *     t       two-sided Student's t for n - 1 degrees of freedom
 *
 * @throws OutOfRange when fewer than 2 plots were checked
 * @throws InvalidInput when the two lists differ in length
 *
 * [1] newsletter article on check cruising, john-bell-associates.com
 */
export function compareCheckCruise(
  cruise: ArrayLike<number>,
  check: ArrayLike<number>,
  confidence: Percent,
): CheckCruise {
  if (cruise.length !== check.length) {
    throw new InvalidInput(
      `Every checked plot needs both figures: the cruise has ${cruise.length}, the check ${check.length}.`,
    );
  }
  const difference = estimate(
    Float64Array.from(check, (value, plot) => value - (cruise[plot] as number)),
    confidence,
  );
  return { difference, shown: Math.abs(difference.value) > difference.margin };
}
