import { feet, inches, percent, type Feet, type Inches, type Percent } from "../../core/basis/units";
import { NO_LIMIT } from "../../core/log/grossScale";
import { boundsIn, measuredIn } from "./measuredIn";
import { oneNumber, optionalNumber, type Reading } from "./readings";
import { unitSystem, type UnitSystem } from "./unitSystem";

const IMPERIAL = unitSystem(null);

/** Widest and longest log. [in, ft] A choice of ours: wide enough for any, narrow enough to catch a slip. */
export const WIDEST_LOG = 120;
export const LONGEST_LOG = 120;

export const diameterOf = (given: unknown, what: string, { diameter } = IMPERIAL): Reading<Inches> =>
  measuredIn(given, what, diameter, inches, 1, WIDEST_LOG);

export const lengthOf = (given: unknown, { distance } = IMPERIAL): Reading<Feet> =>
  measuredIn(given, "Length", distance, feet, 1, LONGEST_LOG);

export const DEDUCTION = { unit: "%", low: 0, high: 100 };

export const deductionOf = (given: unknown, what = "Deduction"): Reading<Percent> =>
  optionalNumber(given, what, percent, DEDUCTION);

/** A diameter that need not have been measured; blank reads as 0. */
export const diameterOrNone = (given: unknown, what: string, { diameter }: UnitSystem): Reading<Inches> =>
  optionalNumber(given, what, (value) => inches(value / diameter.perOurs), boundsIn(diameter, 0, WIDEST_LOG));

/** Longest length scaled as one piece. Left out: no limit. */
export function longestOf(given: unknown, { distance }: UnitSystem): Feet {
  const limit = oneNumber(given, "Longest scaling length", boundsIn(distance, 4, LONGEST_LOG), NO_LIMIT);
  return feet(limit / distance.perOurs);
}
