import type { Choice } from "../basis/choices";
import { smallEndRules } from "./findLogRule";
import type { LogRule } from "./logRule";
import { menuRules } from "./rules";

/** Which rules are set side by side. Only rules measured at the small end can be: one diameter serves them all. */
export interface RuleSelection extends Choice {
  readonly rules: readonly LogRule[];
}

export const usualRules: RuleSelection = {
  title: "Usual",
  rules: menuRules.filter((rule) => smallEndRules.includes(rule)),
};
export const allRules: RuleSelection = { title: "All", rules: smallEndRules };

export const ruleSelections: readonly RuleSelection[] = [usualRules, allRules];
