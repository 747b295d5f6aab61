import { dollarsPerMbf, feet, inches } from "../../src/core/basis/units";
import { bestCant } from "../../src/core/sawing/cants/bestCant";
import { worthOf, type BoardPiece, type BoardSize } from "../../src/core/sawing/boardSize";
import { flitches } from "../../src/core/sawing/flitches";
import type { Mill } from "../../src/core/sawing/millLimits";
import { lying, type Taper } from "../../src/core/sawing/lyingLog";
import { live } from "../../src/core/sawing/patterns/live";
import type { Outline } from "../../src/core/sawing/outline";
import { roomIn } from "../../src/core/sawing/room";
import type { SawLog } from "../../src/core/sawing/sawLog";
import { sideBoardsOf } from "../../src/core/sawing/sideBoards";
import { commonLengths, sawPlan, type BestPlan } from "../../src/core/sawing/sawPlan";
import type { SawingPattern, SawPlan } from "../../src/core/sawing/sawingPattern";

export const sawLog = (smallEnd: number, largeEnd: number, length: number): SawLog => ({
  smallEnd: inches(smallEnd),
  largeEnd: inches(largeEnd),
  length: feet(length),
});

export const board = (thickness: number, width: number, price?: number): BoardSize => ({
  thickness: inches(thickness),
  width: inches(width),
  ...(price !== undefined && { price: dollarsPerMbf(price) }),
});

/** Inch boards of every whole-inch width from the least one to the log's diameter. */
export const inchBoards = (leastWidth: number, widest: number): BoardSize[] =>
  Array.from({ length: Math.floor(widest) - leastWidth + 1 }, (_, i) => board(1, leastWidth + i));

export interface PlanOptions {
  readonly pattern?: SawingPattern;
  readonly shortBoards?: boolean;
  readonly sideBySide?: boolean;
  readonly mill?: Mill;
  readonly taper?: Taper;
}

export function planned(log: SawLog, sizes: readonly BoardSize[], kerf: number, options: PlanOptions = {}): BestPlan {
  const { pattern = live, shortBoards = true, sideBySide = true, mill = {}, taper } = options;
  const lengths = shortBoards ? commonLengths : { ...commonLengths, shortest: log.length };
  return sawPlan({ log, sizes, kerf: inches(kerf), pattern, lengths, sideBySide, mill, ...(taper && { taper }) });
}

export const livePlan = (log: SawLog, sizes: readonly BoardSize[], kerf: number, shortBoards = true): SawPlan =>
  planned(log, sizes, kerf, { shortBoards });

export interface PlacedBoard {
  readonly piece: BoardPiece;
  readonly outline: Outline;
  readonly lower: number;
  readonly worth: number;
}

/** The boards of a plan, from the lowest to the highest, as the log first lay. */
export function boardsOf({ flitches, priced }: SawPlan): readonly PlacedBoard[] {
  return flitches
    .flatMap(({ boards }) => boards)
    .map(({ piece, outline }) => ({ piece, outline, lower: outline.lower, worth: worthOf(piece, priced) }))
    .sort((a, b) => a.lower - b.lower);
}

/**
 * Board feet of the best cant of some thicknesses from a cylinder of 8 ft, each sawn into planks as wide as itself and
 * inch boards, with inch side boards.
 */
export function cantVolume(diameter: number, kerf: number, cants: readonly number[]): number {
  const log = sawLog(diameter, diameter, 8);
  const edged = (sizes: readonly BoardSize[]) =>
    flitches(log, {
      sizes,
      priced: false,
      lengths: { ...commonLengths, shortest: log.length },
      kerf,
      edgerKerf: kerf,
      sideBySide: true,
    });
  const sawing = { log, lying: lying(log), kerf, edgerKerf: kerf, wane: 0 };
  const worths = cants
    .filter((cant) => cant < diameter)
    .map((cant) => {
      const inside = edged([...inchBoards(3, cant), board(2, cant)]);
      const outside = edged(inchBoards(3, diameter));
      const roomFor = roomIn(sawing.lying, sawing.wane);
      const sideBoards = sideBoardsOf(outside, roomFor, sawing);
      const unlimited = { bladeAboveBed: 0, throat: Infinity, facesBeyond: { low: 0, high: 0 } };
      const order = {
        thicknesses: [inches(cant)],
        boardWidths: [inches(cant)],
        widestCut: Infinity,
        inside,
        roomFor,
        sideBoards,
        ...unlimited,
      };
      return bestCant(order, sawing)?.worth ?? 0;
    });
  return Math.max(...worths);
}
