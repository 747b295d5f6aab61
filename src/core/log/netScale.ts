import { InvalidInput } from "../basis/problem";
import { requireBetween, shown } from "../basis/require";
import { boardFeet, type BoardFeet, type Percent } from "../basis/units";
import type { LogRule } from "./logRule";
import { asTheRuleDoes } from "./scaleRounding";

/**
 * Net scale of a log: its gross scale less a deduction for defect, rounded as the rule rounds.
 *
 *     N = G (1 - P / 100)
 *
 *     N  net scale                           [bf]
 *     G  gross scale                         [bf]
 *     P  defect deduction, 0 or from 1 to 100 [%]
 *
 * Nobody scales a defect below 1 %, but a cell in percent format holds 0.15 where it shows 15 %: such a figure is
 * asked about rather than taken.
 *
 * @throws InvalidInput when P is below 0, above 100, or between 0 and 1
 */
export function netScale(rule: LogRule, gross: BoardFeet, deduction: Percent, rounding = asTheRuleDoes): BoardFeet {
  if (deduction === 0) return gross;
  requireBetween("Deduction", deduction, 0, 100, "%");
  if (deduction < 1) throw new InvalidInput(percentOrShare(deduction));
  return rounding.apply(rule, boardFeet(gross * (1 - deduction / 100)));
}

function percentOrShare(given: number): string {
  const share = shown(given);
  const whole = shown(given * 100);
  return `Deduction is ${share}: ${share} %, or ${whole} %? Type ${whole} for ${whole} %; below 1 % nothing is deducted.`;
}
