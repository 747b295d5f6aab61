import { Problem } from "../../core/basis/problem";
import { logRule } from "../../core/log/findLogRule";
import type { LogRule } from "../../core/log/logRule";
import { usualRules } from "../../core/log/ruleSelections";
import type { ScaleConventions } from "../../workbook/settings";
import { scaledBy, type MeasuredLog, type Scaled } from "./scaledBy";

/** A log's scale, or the sentence that says why there is none. */
export function scaleOrWhy(log: MeasuredLog, scale: ScaleConventions): Scaled | string {
  try {
    return scaledBy(logRule(scale.rule), log, scale);
  } catch (problem) {
    if (problem instanceof Problem) return problem.message;
    throw problem;
  }
}

/** The same logs by one rule. */
export interface RuleTotal {
  readonly rule: LogRule;
  /** Net board feet of the logs that the rule has a value for. */
  readonly net: number;
  /** Logs that it has none for. */
  readonly without: number;
}

const totalBy = (rule: LogRule, logs: readonly MeasuredLog[], scale: ScaleConventions): RuleTotal => {
  const nets = logs.map((log) => scaleOrWhy(log, { ...scale, rule: rule.title }));
  const known = nets.filter((one) => typeof one !== "string");
  return { rule, net: known.reduce((sum, { net }) => sum + net, 0), without: nets.length - known.length };
};

/** The sheet's own rule; undefined when the cell names none. */
export function sheetTotal(logs: readonly MeasuredLog[], scale: ScaleConventions): RuleTotal | undefined {
  try {
    return totalBy(logRule(scale.rule), logs, scale);
  } catch (problem) {
    if (problem instanceof Problem) return undefined;
    throw problem;
  }
}

/** The same logs by every rule that menus offer, with the same rounding of diameters and the same lengths. */
export const totalsByRule = (logs: readonly MeasuredLog[], scale: ScaleConventions): readonly RuleTotal[] =>
  usualRules.rules.map((rule) => totalBy(rule, logs, scale));
