import { choiceNamed, chosen } from "../basis/choices";
import type { LogRule } from "./logRule";
import { measuredAtSmallEnd } from "./measuredAtSmallEnd";
import { logRules } from "./rules";

/**
 * The log rule that a text names.
 *
 * @throws InvalidInput naming every rule when it is none of them
 */
export const logRule = (text: unknown): LogRule => chosen("Rule", text, logRules);

/** The rules that want the small end: all that can be offered where nothing else of a log is known, as of a standing tree. */
export const smallEndRules: readonly LogRule[] = logRules.filter(({ measuredAt }) => measuredAt === undefined);

/**
 * The log rule that a text names, where only the small end of a log is known.
 *
 * @throws InvalidInput naming the rules on the small end when it is none of them, or saying where it is measured
 */
export function smallEndRule(text: unknown): LogRule {
  const named = choiceNamed(text, logRules);
  return named ? measuredAtSmallEnd(named) : chosen("Rule", text, smallEndRules);
}
