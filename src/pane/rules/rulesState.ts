import { usualRules } from "../../core/log/ruleSelections";
import { RULE_LENGTH } from "../../workbook/sheets/rules";

/** Which rules are set side by side, and at what length of log. */
export interface RulesState {
  /** As typed. [ft] */
  readonly length: string;
  /** Ids of the rules that are drawn. */
  readonly shown: readonly string[];
}

export const firstRules: RulesState = { length: String(RULE_LENGTH), shown: usualRules.rules.map(({ id }) => id) };
