import { boardFeet, feet, type BoardFeet } from "../basis/units";
import type { LogRule, ScaledLog } from "./logRule";
import { asTheRuleDoes } from "./scaleRounding";
import { segments } from "./segments";

export const NO_LIMIT = feet(Infinity);

/**
 * Gross scale of a log: what the rule gives before any deduction for defect. [bf]
 *
 * A log longer than the longest scaling length is scaled in segments. Each of them is rounded by itself, as it would
 * be read from the rule's printed table, and then added.
 *
 * @throws InvalidInput when a measure is not a number above 0
 * @throws OutOfRange where the rule has no value
 */
export function grossScale(rule: LogRule, log: ScaledLog, rounding = asTheRuleDoes, longest = NO_LIMIT): BoardFeet {
  if (log.length <= longest) return rounding.apply(rule, rule.scale(log));
  let sum = 0;
  for (const piece of segments(log, longest, rule.taper)) sum += rounding.apply(rule, rule.scale(piece));
  return boardFeet(sum);
}
