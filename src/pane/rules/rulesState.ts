import { usualRules } from "../../core/log/ruleSelections";
import { RULE_LENGTH } from "../../workbook/sheets/rules";

/** Which rules are set side by side, and at what length of log. */
export interface RulesState {
  /** As typed. [ft] */
  readonly length: string;
  /** Ids of the rules that are drawn. */
  readonly shown: readonly string[];
}

/** To begin with, the rules of menus that were read; what is known from memory is shown when it is ticked. */
export const firstRules: RulesState = {
  length: String(RULE_LENGTH),
  shown: usualRules.rules.filter(({ fromMemory = false }) => !fromMemory).map(({ id }) => id),
};
