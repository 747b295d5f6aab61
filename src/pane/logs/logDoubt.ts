import { LEAST_DEDUCTION } from "../../core/log/deduction";
import type { Job } from "../job/job";
import type { LogLine } from "./logLine";

/** Measures that a log seldom has; choices of ours. */
const THIN = 4; // in
const THICK = 60; // in
const SHORT = 4; // ft
const LONG = 41; // ft
const MOST_SWEEP = 0.5; // of the small end

/** True for a deduction that no scaler takes, such as 0.15, which is likely meant as 15 percent. */
export const isShare = ({ deduction }: LogLine): boolean =>
  deduction !== null && deduction > 0 && deduction < LEAST_DEDUCTION;

/** What looks odd in a log before it is saved; "" when nothing does. Odd may be right, so nothing is refused. */
export function logDoubt(log: LogLine, job: Job): string {
  const { species, smallEnd, length, largeEnd, sweep, deduction } = log;
  if (isShare(log)) {
    const percent = Number((100 * (deduction ?? 0)).toFixed(6));
    return `Deduction ${deduction} %, or ${percent} %? Type d${percent} for ${percent} %; the sheet has no net scale for ${deduction} %.`;
  }
  if (largeEnd !== null && smallEnd > largeEnd) return "The small end is thicker than the large end. Swapped?";
  if (smallEnd > THICK) return `Small end ${smallEnd} in is very thick. Missing a decimal point?`;
  if (smallEnd < THIN) return `Small end ${smallEnd} in is very thin.`;
  if (length > LONG) return `Length ${length} ft is very long for a log.`;
  if (length < SHORT) return `Length ${length} ft is very short for a log.`;
  if ((sweep ?? 0) > MOST_SWEEP * smallEnd)
    return `Sweep ${sweep} in is more than half the small end. Missing a decimal point?`;
  if (!job.species.some(({ code }) => code.toLowerCase() === species.toLowerCase()))
    return `"${species}" is not in your species list on Setup.`;
  return "";
}
