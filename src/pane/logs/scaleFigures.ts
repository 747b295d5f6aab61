import { Problem } from "../../core/basis/problem";
import { logRule } from "../../core/log/findLogRule";
import type { LogRule } from "../../core/log/logRule";
import { usualRules } from "../../core/log/ruleSelections";
import { BUYERS_CARD } from "../../core/log/scaleCard";
import type { ScaleConventions } from "../../workbook/settings";
import { scaledBy, type MeasuredLog, type Scaled } from "./scaledBy";

/** True when the sheet goes by the buyer's own card, which lies on a sheet of its own. */
const byCard = ({ rule }: ScaleConventions) => rule.trim().toLowerCase() === BUYERS_CARD.toLowerCase();

/** A log's scale, or the sentence that says why there is none. */
export function scaleOrWhy(log: MeasuredLog, scale: ScaleConventions): Scaled | string {
  if (byCard(scale)) return "Once it is on the sheet, the log is scaled there by the buyer's card.";
  try {
    return scaledBy(logRule(scale.rule), log, scale);
  } catch (problem) {
    if (problem instanceof Problem) return problem.message;
    throw problem;
  }
}

/** The same logs by one rule, or by the buyer's card. */
export interface RuleTotal {
  readonly title: string;
  /** Net board feet of the logs that the rule has a value for. */
  readonly net: number;
  /** Logs that it has none for. */
  readonly without: number;
}

const totalBy = (rule: LogRule, logs: readonly MeasuredLog[], scale: ScaleConventions): RuleTotal => {
  const nets = logs.map((log) => scaleOrWhy(log, { ...scale, rule: rule.title }));
  const known = nets.filter((one) => typeof one !== "string");
  const net = known.reduce((sum, one) => sum + one.net, 0);
  return { title: rule.title, net, without: nets.length - known.length };
};

/** What the sheet has for each log by the card. */
function totalByCard(logs: readonly MeasuredLog[]): RuleTotal {
  const known = logs.flatMap(({ net }) => net ?? []);
  return { title: BUYERS_CARD, net: known.reduce((sum, one) => sum + one, 0), without: logs.length - known.length };
}

/** By the sheet's own rule; undefined when the cell names none. */
export function sheetTotal(logs: readonly MeasuredLog[], scale: ScaleConventions): RuleTotal | undefined {
  if (byCard(scale)) return totalByCard(logs);
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
