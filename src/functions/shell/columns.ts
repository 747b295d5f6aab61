import { InvalidInput } from "../../core/basis/problem";
import { asCells, blank, boundedNumber, type Bounds, type Cells } from "./readings";
import type { BadRows } from "./badRows";

/** One list of a table, read row by row in a tight loop: a column, a row or a block, or one value for every row. */
export interface Column {
  readonly what: string;
  /** How many rows the list has; 1 for a single value. */
  readonly rows: number;
  readonly single: boolean;
  /** The cells themselves where each row has just one, so that a long loop need not call for each of them. */
  readonly narrow?: Cells;
  at(row: number): unknown;
}

export function column(given: unknown, what: string): Column {
  const cells = asCells(given);
  const wide = cells[0]?.length ?? 0;
  const rows = cells.length * wide;
  if (rows === 1) {
    const only: unknown = cells[0]?.[0];
    return { what, rows, single: true, at: () => only };
  }
  if (wide === 1) return { what, rows, single: false, narrow: cells, at: (row) => cells[row]?.[0] as unknown };
  return { what, rows, single: false, at: (row) => cells[Math.floor(row / wide)]?.[row % wide] as unknown };
}

/**
 * How many rows lists share. A longer list will do when it is blank beyond the others, as a whole column is.
 * @throws InvalidInput naming two lists that differ
 */
export function sharedRows(columns: readonly Column[]): number {
  const lists = columns.filter(({ single }) => !single);
  const shortest = lists.reduce<Column | undefined>(
    (least, one) => (least && least.rows <= one.rows ? least : one),
    undefined,
  );
  if (!shortest) return 1;
  for (const list of lists) {
    const filled = list.rows === shortest.rows ? list.rows : filledRows(list);
    if (filled > shortest.rows) {
      throw new InvalidInput(
        `These lists need the same number of rows: ${shortest.what} has ${shortest.rows}, ${list.what} has ${filled}.`,
      );
    }
  }
  return shortest.rows;
}

/** Blank or 0, which mean the same in a list of measurements or names: some hosts hand over a blank as 0. */
export const isNothing = (cell: unknown): boolean =>
  cell === 0 || blank(cell) || (typeof cell === "number" && !Number.isFinite(cell));

/** True when a list was left out. */
export const isMissing = (list: Column): boolean => list.single && isNothing(list.at(0));

/** Rows up to the last one that holds something, so that a whole column may be given. */
export function filledRows(list: Column, empty: (cell: unknown) => boolean = isNothing): number {
  let filled = list.rows;
  while (filled > 0 && empty(list.at(filled - 1))) filled -= 1;
  return filled;
}

/**
 * The number in a cell, with one value standing for blank and for 0 alike, since hosts disagree on how a blank arrives.
 * @throws InvalidInput when the cell holds something else, or a number out of its bounds
 */
export function numberAt(list: Column, row: number, bounds: Bounds, leftOut: number): number {
  const cell = list.at(row);
  if (isNothing(cell)) return leftOut;
  return boundedNumber(cell, list.what, bounds);
}

/**
 * A whole list of numbers in one tight loop, as numberAt reads each. A row that cannot be used is added to the bad
 * ones and reads as 0.
 *
 * @param wanted rows to read: those where this list is above 0. Left out: every row
 */
export function numbersOf(
  list: Column,
  rows: number,
  bounds: Bounds,
  leftOut: number,
  bad: BadRows,
  wanted?: Float64Array,
): Float64Array {
  const { narrow } = list;
  const { low = -Infinity, high = Infinity } = bounds;
  const numbers = new Float64Array(rows);
  // Apart from the loop: a function made inside it would cost every row more than the reading does.
  const oddOne = (row: number) => bad.guard(row, () => (numbers[row] = numberAt(list, row, bounds, leftOut)));
  if (list.single) {
    oddOne(0);
    return numbers.fill(numbers[0] ?? 0);
  }
  for (let row = 0; row < rows; row += 1) {
    if (wanted && wanted[row] === 0) continue;
    // Nearly every cell is a sound number, and the bounds tell that sooner than the type does.
    const cell = (narrow ? narrow[row]?.[0] : list.at(row)) as number;
    if (cell >= low && cell <= high && cell !== 0 && typeof cell === "number") numbers[row] = cell;
    else if (isNothing(cell)) numbers[row] = leftOut;
    else oddOne(row);
  }
  return numbers;
}

/**
 * Spares the work on a cell that was met before: a tally names few plots and species many times. Most plots go by
 * small whole numbers, which a plain list finds sooner than a map does.
 */
export function remembered<T>(work: (cell: unknown) => T): (cell: unknown) => T {
  const numbered: T[] = [];
  const known = new Map<unknown, T>();
  return (cell) => {
    const small = typeof cell === "number" && cell >= 0 && cell < 10_000 && Number.isInteger(cell);
    const before = small ? numbered[cell] : known.get(cell);
    if (before !== undefined) return before;
    const answer = work(cell);
    if (small) numbered[cell] = answer;
    else known.set(cell, answer);
    return answer;
  };
}
