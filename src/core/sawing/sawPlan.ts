import { OutOfRange } from "../basis/problem";
import { requireBetween, requirePositive } from "../basis/require";
import { feet, type Inches } from "../basis/units";
import { isPriced, type BoardSize } from "./boardSize";
import type { BoardLengths } from "./flitches";
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
  /** False when each flitch gives one board only. Left out: true. */
  readonly sideBySide?: boolean;
  /** How the user reads lengths, for a sentence about a log that does not fit. */
  readonly say?: SayAmount;
}

/**
 * Boards shorter than the log are kept from 4 ft up, in steps of 2 ft (choices of ours, in common use: 4 ft is also the
 * shortest board of the lower hardwood grades). A mill's own "shortest board" takes the place of the 4 ft.
 */
export const commonLengths: BoardLengths = { shortest: feet(4), step: feet(2) };

/**
 * The best plan to saw a log by a pattern: the most dollars when the boards are priced, else the most board feet; of
 * plans worth the same, one of the fewest boards.
 *
 * The model, shared by all patterns:
 * - The log is a truncated cone of sound wood inside bark. All saw planes run parallel to the pith (split taper: the
 *   small end is raised), so the end view tells everything but the lengths. No sweep, no oval, no defects.
 * - A head saw frees flitches, one kerf apart. A flitch is cut to one length from the large end, then edged to one board
 *   or to several side by side with an edger's kerf between them.
 * - A board is free of wane, or shows it over no more than the allowed share q of its thickness: its width is measured
 *   at m - q t from the pith instead of at its outer face m.
 * - Boards have the listed sizes at full length or shorter by steps; each is worth its board feet, its price per MBF or
 *   its price per piece.
 * - The mill sets the largest and longest log, the lowest blade (the last piece on the bed is no thinner), the throat
 *   (only that last piece may be thicker), and the widest cut.
 *
 * Each pattern tells what its plan is the best of. Where nothing else is said that is exact: positions are not rounded
 * to a grid, see fill.ts.
 *
 * @throws InvalidInput when a measure cannot be used or only part of the board list is priced
 * @throws OutOfRange when the log does not fit the mill, or no listed board fits the log
 */
export function sawPlan(order: SawOrder): SawPlan {
  const { log, sizes, kerf, pattern, mill = {}, lengths = commonLengths, sideBySide = true, say } = order;
  const { edgerKerf = kerf, waneAllowed = 0, bladeAboveBed = 0, throat = Infinity, widestCut = Infinity } = mill;
  requireSawLog(log);
  requirePositive("Kerf", kerf, "in");
  requirePositive("Edger kerf", edgerKerf, "in");
  requireBetween("Wane allowed", waneAllowed, 0, 100, "% of the thickness");
  const priced = isPriced(sizes);
  const misfit = whyItDoesNotFit(log, mill, say);
  if (misfit !== undefined) throw new OutOfRange(`${misfit}.`);
  return pattern.plan({
    log,
    sizes,
    priced,
    kerf,
    edgerKerf,
    sideBySide,
    wane: waneAllowed / 100,
    lengths: { ...lengths, shortest: feet(mill.shortestBoard ?? lengths.shortest) },
    bladeAboveBed,
    throat,
    widestCut,
  });
}
