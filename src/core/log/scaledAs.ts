import { OutOfRange } from "../basis/problem";
import type { BoardFeet } from "../basis/units";
import type { LogRule, ScaledLog } from "./logRule";
import { noPublishedValue } from "./noPublishedValue";

/**
 * What one rule gives for a log, as a value of another rule that is put together from it.
 *
 * @throws OutOfRange in the name of the rule that was asked, where the other one has no value
 */
export function scaledAs(asked: LogRule, other: LogRule, log: ScaledLog): BoardFeet {
  try {
    return other.scale(log);
  } catch (problem) {
    if (problem instanceof OutOfRange) throw noPublishedValue(asked, log);
    throw problem;
  }
}
