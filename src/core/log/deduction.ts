import { requireBetween } from "../basis/require";
import { shareForPercent } from "../basis/shareForPercent";
import type { Source } from "../basis/source";
import { percent, type Percent } from "../basis/units";

export const deductionSources: readonly Source[] = [
  {
    author: "L. R. Grosenbaugh",
    year: "1952",
    title: "Shortcuts for Cruisers and Scalers, Occasional Paper 126, Southern Forest Experiment Station",
    where: "p. 14 and following: cull percents are added, the whole log at most; from memory",
    standing: "from memory",
  },
  {
    author: "Woodlot Reckoner",
    year: "",
    title: "Least deduction",
    where: "a defect below 1 % of the gross scale counts as none",
    standing: "choice of ours",
  },
];

/** Nobody scales a defect below 1 %. [%] A choice of ours. */
export const LEAST_DEDUCTION = 1;
const WHOLE_LOG = 100; // %

/**
 * Throws InvalidInput unless a deduction is 0 or from 1 to 100 %. A cell in percent format holds 0.15 where it shows
 * 15 %: such a figure is asked about rather than taken.
 */
export function requireDeduction(deduction: Percent): void {
  if (deduction === 0) return;
  requireBetween("Deduction", deduction, 0, WHOLE_LOG, "%");
  if (deduction < LEAST_DEDUCTION) throw shareForPercent("Deduction", deduction, "; below 1 % nothing is deducted");
}

/**
 * What several defects of one log take off it together: their sum, since each is a share of the gross scale, and no
 * more than the whole log. [%]
 *
 * @throws InvalidInput when one of them is no deduction
 */
export function combinedDeduction(deductions: readonly Percent[]): Percent {
  deductions.forEach(requireDeduction);
  return percent(
    Math.min(
      WHOLE_LOG,
      deductions.reduce<number>((sum, one) => sum + one, 0),
    ),
  );
}
