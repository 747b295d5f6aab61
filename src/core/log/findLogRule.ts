import { chosen } from "../basis/choices";
import type { LogRule } from "./logRule";
import { measuredAtSmallEnd } from "./measuredAtSmallEnd";
import { logRules } from "./rules";

/**
 * The log rule that a text names.
 *
 * @throws InvalidInput naming every rule when it is none of them
 */
export const logRule = (text: unknown): LogRule => chosen("Rule", text, logRules);

/**
 * The log rule that a text names, where only the small end of a log is known.
 *
 * @throws InvalidInput when it is none of them, or one that is measured elsewhere
 */
export const smallEndRule = (text: unknown): LogRule => measuredAtSmallEnd(logRule(text));
