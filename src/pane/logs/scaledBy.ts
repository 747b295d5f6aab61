import { chosen } from "../../core/basis/choices";
import { feet, inches, percent } from "../../core/basis/units";
import { diameterRoundings, notToWhole, rounderFor } from "../../core/log/diameterRounding";
import { grossScale, NO_LIMIT } from "../../core/log/grossScale";
import type { LogRule } from "../../core/log/logRule";
import { netScale } from "../../core/log/netScale";
import { scaleRoundings } from "../../core/log/scaleRounding";
import { scalingLength } from "../../core/log/scalingLength";
import type { ScaleConventions } from "../../workbook/settings";
import type { LogLine } from "./logLine";

/** What the buyer's scaler would write down. */
export interface Scaled {
  /** [in] */
  readonly diameter: number;
  /** [ft] */
  readonly length: number;
  /** [bf] */
  readonly gross: number;
  readonly net: number;
}

/** A log and, where it was taken, the second reading of its small end. [in] */
export type MeasuredLog = Pick<LogLine, "smallEnd" | "length" | "largeEnd" | "deduction"> & {
  readonly second?: number | null;
  /** As the sheet has it; left out for a log that is not there yet. [bf] */
  readonly net?: number | null;
};

/**
 * A log by a rule and the conventions of the scale sheet, as the formulas of that sheet have it.
 *
 * @throws InvalidInput and OutOfRange as the rule and the conventions do
 */
export function scaledBy(rule: LogRule, log: MeasuredLog, conventions: ScaleConventions): Scaled {
  const toInches = chosen("Diameter rounding", conventions.diameterRounding, diameterRoundings);
  const toWhole = toInches === notToWhole ? undefined : rounderFor(toInches, 1);
  const rounding = chosen("Round", conventions.rounding, scaleRoundings);
  const reading = log.second ? (log.smallEnd + log.second) / 2 : log.smallEnd;
  const diameter = toWhole ? toWhole(reading) : reading;
  const length = scalingLength(log.length, conventions.trim, conventions.lengthStep);
  const longest = conventions.longest === null ? NO_LIMIT : feet(conventions.longest);
  const butt = log.largeEnd === null ? {} : { largeEnd: inches(log.largeEnd) };
  const gross = grossScale(
    rule,
    { diameter: inches(diameter), length: feet(length), ...butt },
    rounding,
    longest,
    toWhole,
  );
  const net = netScale(rule, gross, percent(log.deduction ?? 0), rounding);
  return { diameter, length, gross, net };
}
