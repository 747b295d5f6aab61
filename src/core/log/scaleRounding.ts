import type { Choice } from "../basis/choices";
import type { BoardFeet } from "../basis/units";
import type { LogRule } from "./logRule";

/** What is done with the board feet that a rule gives. */
export interface ScaleRounding extends Choice {
  apply(rule: LogRule, volume: BoardFeet): BoardFeet;
}

export const asTheRuleDoes: ScaleRounding = {
  title: "As the rule does",
  apply: (rule, volume) => rule.round(volume),
};

export const notRounded: ScaleRounding = {
  title: "None",
  apply: (_rule, volume) => volume,
};

export const scaleRoundings: readonly ScaleRounding[] = [asTheRuleDoes, notRounded];
