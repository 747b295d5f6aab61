import { dollarsPerMbf, feet, inches } from "../../src/core/basis/units";
import { worthOf, type BoardPiece, type BoardSize } from "../../src/core/sawing/boardSize";
import type { Mill } from "../../src/core/sawing/millLimits";
import { live } from "../../src/core/sawing/patterns/live";
import type { Outline } from "../../src/core/sawing/outline";
import type { SawLog } from "../../src/core/sawing/sawLog";
import { commonLengths, sawPlan } from "../../src/core/sawing/sawPlan";
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
}

export function planned(log: SawLog, sizes: readonly BoardSize[], kerf: number, options: PlanOptions = {}): SawPlan {
  const { pattern = live, shortBoards = true, sideBySide = true, mill = {} } = options;
  const lengths = shortBoards ? commonLengths : { ...commonLengths, shortest: log.length };
  return sawPlan({ log, sizes, kerf: inches(kerf), pattern, lengths, sideBySide, mill });
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
