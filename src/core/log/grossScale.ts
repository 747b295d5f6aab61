import { boardFeet, feet, type BoardFeet } from "../basis/units";
import type { Rounder } from "./diameterRounding";
import type { FelledLog, LogRule } from "./logRule";
import { scaledPieces } from "./scaledPieces";
import { asTheRuleDoes } from "./scaleRounding";

export const NO_LIMIT = feet(Infinity);

/**
 * Gross scale of a log: what the rule gives before any deduction for defect. [bf]
 *
 * A log longer than the longest scaling length is scaled in segments. Each of them is rounded by itself, as it would
 * be read from the rule's printed table, and then added.
 *
 * @param toWhole what is done with the fraction of a diameter before the rule is asked; left out, nothing
 * @throws InvalidInput when a measure is not a number above 0, or the large end is the thinner one
 * @throws OutOfRange where the rule has no value
 */
export function grossScale(
  rule: LogRule,
  log: FelledLog,
  rounding = asTheRuleDoes,
  longest = NO_LIMIT,
  toWhole?: Rounder,
): BoardFeet {
  if (log.length <= longest && log.largeEnd === undefined && !toWhole) return rounding.apply(rule, rule.scale(log));

  let sum = 0;
  for (const segment of scaledPieces(rule, log, longest, toWhole)) {
    let volume = 0;
    for (const piece of segment) volume += rule.scale(piece);
    sum += rounding.apply(rule, boardFeet(volume));
  }
  return boardFeet(sum);
}
