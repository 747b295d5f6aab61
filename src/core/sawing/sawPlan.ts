import { OutOfRange } from "../basis/problem";
import { requireBetween, requirePositive } from "../basis/require";
import { feet, type Inches } from "../basis/units";
import { isPriced, type BoardSize } from "./boardSize";
import { mostByAreaAndKerf, type Ceiling } from "./areaBound";
import { bestOf } from "./bestOf";
import { fitThroat } from "./stackOnBed";
import type { BoardLengths } from "./boardPieces";
import { flitches } from "./flitches";
import { splitTaper, waysToLay, type LyingLog, type Taper } from "./lyingLog";
import { whyItDoesNotFit, type Mill, type SayAmount } from "./millLimits";
import { roomIn } from "./room";
import type { SawingPattern, SawJob, SawPlan } from "./sawingPattern";
import { sideBoardsOf } from "./sideBoards";
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
  /** How the saw planes run along the log. Left out: split taper. */
  readonly taper?: Taper;
  /** How the user reads lengths, for a sentence about a log that does not fit. */
  readonly say?: SayAmount;
}

/** The best plan, and how much any plan could give. */
export interface BestPlan extends SawPlan {
  readonly most: Ceiling;
}

/**
 * Boards shorter than the log are kept from 4 ft up, in steps of 2 ft (choices of ours, in common use: 4 ft is also the
 * shortest board of the lower hardwood grades). A mill's own "shortest board" takes the place of the 4 ft.
 */
export const commonLengths: BoardLengths = { shortest: feet(4), step: feet(2) };

/**
 * The best plan to saw a log by a pattern: the most dollars when the boards are priced, else the most board feet; of
 * stacks worth the same, one of the fewest boards.
 *
 * The model, shared by all patterns:
 * - The log is a truncated cone of sound wood inside bark [in, ft]. Its ends may be oval: two diameters each, every
 *   section an ellipse. Its pith may be bent in the plane of the first diameters: sweep [in], a parabola. Such a log is
 *   planned with the first diameter level and upright, and the better is taken. No defects.
 * - The saw planes run parallel to the pith (split taper: the small end is raised) or to the bark (full taper: it is
 *   not), see lyingLog.ts.
 * - A head saw frees flitches, one kerf [in] apart. A flitch is cut to one length from the large end, then edged to one
 *   board or to several side by side with an edger's kerf [in] between them.
 * - A board is free of wane, or shows it over no more than the allowed share q of its thickness [%]: its width is
 *   measured at m - q t from the pith instead of at its outer face m.
 * - Boards have the listed thickness as sawn, green, and the listed width [in]. They run the whole log, or shorter by a
 *   step down to a shortest board, or have a length of their own [ft]. Each is worth its board feet, its price per MBF
 *   or its price per piece [$]. A listed size may be a blank that is sawn further into siding or shingles, see
 *   boardSize.ts.
 * - The mill sets the largest and the longest log, the lowest blade (the last piece on the bed is no thinner), the
 *   throat (only that last piece may be thicker) and the widest cut. Where its scale has a step [in], every setting is
 *   one of its marks, and boards come out thicker by less than a step, see scale.ts.
 *
 * Each pattern tells what its plan is the best of, and on which settings: any, the marks of the scale, or a grid. Beside
 * it stands what no plan of any kind can exceed, see areaBound.ts.
 *
 * @throws InvalidInput when a measure cannot be used or only part of the board list is priced
 * @throws OutOfRange when the log does not fit the mill, or no listed board fits the log
 */
export function sawPlan(order: SawOrder): BestPlan {
  const { log, sizes, kerf, pattern, mill = {}, lengths = commonLengths, sideBySide = true, say } = order;
  const { edgerKerf = kerf, waneAllowed = 0, bladeAboveBed = 0, throat = Infinity, widestCut = Infinity } = mill;
  const { scaleStep, shortestBoard = lengths.shortest, lengthStep = lengths.step } = mill;
  requireSawLog(log);
  requirePositive("Kerf", kerf, "in");
  requirePositive("Edger kerf", edgerKerf, "in");
  requireBetween("Wane allowed", waneAllowed, 0, 100, "% of the thickness");
  requirePositive("Length step", lengthStep, "ft");
  if (scaleStep !== undefined) requirePositive("Scale step", scaleStep, "in");
  const priced = isPriced(sizes);
  const misfit = whyItDoesNotFit(log, mill, say);
  if (misfit !== undefined) throw new OutOfRange(`${misfit}.`);
  const edging = {
    sizes,
    priced,
    kerf,
    edgerKerf,
    sideBySide,
    ...(scaleStep !== undefined && { scaleStep }),
    lengths: { shortest: feet(shortestBoard), step: feet(lengthStep) },
  };
  const job = {
    ...edging,
    log,
    groups: flitches(log, edging),
    wane: waneAllowed / 100,
    bladeAboveBed,
    throat,
    widestCut,
  };
  const laid = (lying: LyingLog): SawJob => {
    const roomFor = roomIn(lying, job.wane);
    const sideBoards = sideBoardsOf(fitThroat(job.groups, throat), roomFor, { ...job, lying });
    return { ...job, lying, roomFor, sideBoards };
  };
  const plan = bestOf(
    waysToLay(log, order.taper ?? splitTaper)
      .map(laid)
      .map((one) => (toBeat) => pattern.plan({ ...one, ...(toBeat !== undefined && { toBeat }) })),
  );
  return { ...plan, most: mostByAreaAndKerf(job) };
}
