import { InvalidInput } from "../basis/problem";
import type { LogRule } from "./logRule";

/** @throws InvalidInput when the rule wants the diameter of another place than the small end, which is all there is */
export function measuredAtSmallEnd(rule: LogRule): LogRule {
  if (rule.measuredAt === undefined) return rule;
  throw new InvalidInput(`${rule.title} needs the ${rule.measuredAt} diameter, but here the small end is given.`);
}
