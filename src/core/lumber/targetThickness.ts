import { requireBetween, requireNotNegative, requirePositive } from "../basis/require";
import { shareForPercent } from "../basis/shareForPercent";
import type { Source } from "../basis/source";
import { sum, type Step } from "../basis/step";
import { inches, type Inches, type Percent } from "../basis/units";

export const targetThicknessSources: readonly Source[] = [
  {
    author: "T. D. Brown",
    year: "2000",
    title: "Lumber Size Control, Part 2, Oregon State University EM 8731",
    where: "[1] p. 12 critical size; p. 16 target size = critical size + Z times the standard deviation of thickness",
    url: "https://fliphtml5.com/cvft/qigv/",
    standing: "read",
  },
  {
    author: "T. D. Brown",
    year: "2000",
    title: "Lumber Size Control, Part 2, Oregon State University EM 8731",
    where: "[2] shrinkage as a divisor, (F + P) / (1 - S/100)",
    standing: "from memory",
  },
];

/** What a rough green board is to become, and what is lost on the way. */
export interface ThicknessAllowances {
  /** Thickness of the finished board. [in] */
  readonly finished: Inches;
  /** Shrinkage in thickness from green to the finished moisture. [%] */
  readonly shrinkage: Percent;
  /** Taken off by the planer, both faces together. [in] */
  readonly planing: Inches;
  /** Added so that the thin spots still do. [in] */
  readonly variation: Inches;
}

/**
 * Thickness at which to set the saw for a rough green board.
 *
 *     T = (F + P) / (1 - S / 100) + V
 *
 *     T  target thickness, rough and green                            [in]
 *     F  thickness of the finished board                              [in]
 *     P  planing, both faces together                                 [in]
 *     S  shrinkage in thickness, green to finished; 0 if sold green   [%]
 *     V  allowance for uneven sawing                                  [in]
 *
 * The bracket without V is the critical size [1] [2]: no spot may be thinner. V is Z times the standard deviation of
 * thickness, with Z from the share of thin spots that is put up with: 3.09 for none, 1.65 for 5 %, 1.28 for 10 % [1].
 * It comes after the shrinkage because it is measured on green boards.
 *
 * No wood shrinks by less than 0.2 %, but a cell in percent format holds 0.045 where it shows 4.5 %: such a figure is
 * asked about rather than taken.
 *
 * @throws InvalidInput when F is not above 0, P or V is below 0, or S is neither 0 nor from 0.2 to 50
 */
export function targetThickness({ finished, shrinkage, planing, variation }: ThicknessAllowances): Inches {
  requirePositive("Finished thickness", finished, "in");
  requireNotNegative("Planing", planing, "in");
  requireNotNegative("Saw variation", variation, "in");
  requireBetween("Shrinkage", shrinkage, 0, 50, "%");
  if (shrinkage > 0 && shrinkage < LEAST_SHRINKAGE) {
    throw shareForPercent("Shrinkage", shrinkage, ", or leave it out for none");
  }
  return inches((finished + planing) / (1 - shrinkage / 100) + variation);
}

const LEAST_SHRINKAGE = 0.2; // %, a choice of ours

/** The way to the target, step by step; the last step is what targetThickness gives. */
export function targetThicknessWorking(allowances: ThicknessAllowances): readonly Step[] {
  const target = targetThickness(allowances);
  const { finished, shrinkage, planing, variation } = allowances;
  const dry = finished + planing;
  const critical = dry / (1 - shrinkage / 100);
  return [
    { sum: sum`${finished} + ${planing}`, meaning: "Finished thickness and planing", value: dry, unit: "in" },
    {
      sum: sum`${dry} / (1 - ${shrinkage} / 100)`,
      meaning: "Critical size: what must be there before it shrinks",
      value: critical,
      unit: "in",
    },
    {
      sum: sum`${critical} + ${variation}`,
      meaning: "With the allowance for uneven sawing",
      value: target,
      unit: "in",
    },
  ];
}
