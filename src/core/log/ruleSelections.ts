import type { Choice } from "../basis/choices";
import type { LogRule } from "./logRule";
import { logRules, menuRules } from "./rules";

/** Which rules are set side by side. Only rules measured at the small end can be: one diameter serves them all. */
export interface RuleSelection extends Choice {
  readonly rules: readonly LogRule[];
}

const atSmallEnd = (rules: readonly LogRule[]) => rules.filter(({ measuredAt }) => measuredAt === undefined);

export const usualRules: RuleSelection = { title: "Usual", rules: atSmallEnd(menuRules) };
export const allRules: RuleSelection = { title: "All", rules: atSmallEnd(logRules) };

export const ruleSelections: readonly RuleSelection[] = [usualRules, allRules];
