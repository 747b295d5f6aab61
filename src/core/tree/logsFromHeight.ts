import { requireNotNegative, requirePositive } from "../basis/require";
import type { Source } from "../basis/source";
import type { Feet } from "../basis/units";

export interface LogCounting {
  /** From the stump to the merchantable top. [ft] */
  readonly height: Feet;
  readonly logLength: Feet;
  /** Left on each log for squaring its ends. [ft] */
  readonly trim: Feet;
  /** What a count is rounded to: 0.5 for half logs. */
  readonly step: number;
}

/**
 * Logs in a merchantable height, to the nearest step.
 *
 *     n = H / (L + t), to the nearest step, halves of a step up
 *
 *     n  logs
 *     H  height from the stump to the merchantable top   [ft]
 *     L  log length                                      [ft]
 *     t  trim                                            [ft]
 *
 * To the nearest half log as in [1]. That a 16-foot log takes 16.3 feet of stem is the form-class tables' own
 * allowance. In [2], 42 ft counts as 2.5 logs.
 *
 * @throws InvalidInput when the height, the log length or the step is not above 0, or the trim is below 0
 */
export function logsFromHeight({ height, logLength, trim, step }: LogCounting): number {
  requirePositive("Merchantable height", height);
  requirePositive("Log length", logLength);
  requireNotNegative("Trim", trim);
  requirePositive("Step", step);
  // Without the hair's breadth, a height that is just half way could fall either way by the way decimals are stored.
  const steps = Math.floor(height / (logLength + trim) / step + 0.5 + 1e-9);
  return Number((steps * step).toFixed(9));
}

export const sources: readonly Source[] = [
  {
    author: "Oklahoma State University",
    year: "n.d.",
    title: "4H-NREM-211",
    where: "[1] merchantable height",
    url: "https://docslib.org/doc/11476502",
    standing: "read",
  },
  {
    author: "Ohio State University Extension",
    year: "n.d.",
    title: "F-35",
    where: "[2] merchantable height, seen only in a web copy of its text",
    standing: "read",
  },
];
