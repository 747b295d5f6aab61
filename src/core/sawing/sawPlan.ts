import { OutOfRange } from "../basis/problem";
import { requirePositive } from "../basis/require";
import { feet, inches, type Inches } from "../basis/units";
import { isPriced, type BoardSize } from "./boardSize";
import type { BoardLengths } from "./candidates";
import { whyItDoesNotFit, type Mill, type SayAmount } from "./millLimits";
import type { SawingPattern, SawPlan } from "./sawingPattern";
import { requireSawLog, type SawLog } from "./sawLog";

export interface SawOrder {
  readonly log: SawLog;
  readonly sizes: readonly BoardSize[];
  readonly kerf: Inches;
  readonly pattern: SawingPattern;
  readonly mill?: Mill;
  readonly lengths?: BoardLengths;
  /** How the user reads lengths, for a sentence about a log that does not fit. */
  readonly say?: SayAmount;
}

/**
 * Boards shorter than the log are kept from 4 ft up, in steps of 2 ft (choices of ours, in common use: 4 ft is also the
 * shortest board of the lower hardwood grades). A mill's own "shortest board" takes the place of the 4 ft.
 */
export const commonLengths: BoardLengths = { shortest: feet(4), step: feet(2) };

/**
 * The best plan to saw a log by a pattern: the most dollars when the boards are priced, else the most board feet.
 *
 * @throws InvalidInput when a measure cannot be used or only part of the board list is priced
 * @throws OutOfRange when the log does not fit the mill, or no listed board fits the log
 */
export function sawPlan({ log, sizes, kerf, pattern, mill = {}, lengths = commonLengths, say }: SawOrder): SawPlan {
  requireSawLog(log);
  requirePositive("Kerf", kerf, "in");
  const priced = isPriced(sizes);
  const misfit = whyItDoesNotFit(log, mill, say);
  if (misfit !== undefined) throw new OutOfRange(`${misfit}.`);
  return pattern.plan({
    log,
    sizes,
    priced,
    kerf,
    lengths: { ...lengths, shortest: feet(mill.shortestBoard ?? lengths.shortest) },
    bladeAboveBed: inches(mill.bladeAboveBed ?? 0),
  });
}
