import { chosen } from "../basis/choices";
import type { LogRule } from "./logRule";
import { logRules } from "./rules";

/**
 * The log rule that a text names.
 *
 * @throws InvalidInput naming every rule when it is none of them
 */
export const logRule = (text: unknown): LogRule => chosen("Rule", text, logRules);
