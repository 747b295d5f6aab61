import { dollarsPerMbf, feet, inches } from "../../src/core/basis/units";
import type { BoardSize } from "../../src/core/sawing/boardSize";
import { live } from "../../src/core/sawing/patterns/live";
import type { SawLog } from "../../src/core/sawing/sawLog";
import { commonLengths, sawPlan } from "../../src/core/sawing/sawPlan";
import type { SawPlan } from "../../src/core/sawing/sawingPattern";

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

export function livePlan(log: SawLog, sizes: readonly BoardSize[], kerf: number, shortBoards = true): SawPlan {
  const lengths = shortBoards ? commonLengths : { ...commonLengths, shortest: log.length };
  return sawPlan({ log, sizes, kerf: inches(kerf), pattern: live, lengths });
}
