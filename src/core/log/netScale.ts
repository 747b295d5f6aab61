import { boardFeet, type BoardFeet, type Percent } from "../basis/units";
import { requireDeduction } from "./deduction";
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
 * @throws InvalidInput when P is below 0, above 100, or between 0 and 1
 */
export function netScale(rule: LogRule, gross: BoardFeet, deduction: Percent, rounding = asTheRuleDoes): BoardFeet {
  if (deduction === 0) return gross;
  requireDeduction(deduction);
  return rounding.apply(rule, boardFeet((gross * (100 - deduction)) / 100));
}
