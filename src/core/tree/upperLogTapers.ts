import { upperLogTaper } from "../reference/upperLogTaper";

/** The tapers are given for every second inch of DBH, from this one on. */
const FIRST_DBH = 10;
const DBH_STEP = 2;

/** Tenths of an inch are whole numbers, so that diameters come out as exact as they are printed. */
const tenths = (tapers: readonly number[]) => tapers.map((taper) => Math.round(taper * 10));

/**
 * Tapers above the first log, one list for each DBH of the table and each number of logs in the tree;
 * undefined where none is known. [tenths of an inch]
 */
export const upperLogTapers: readonly (readonly (readonly number[] | undefined)[])[] = upperLogTaper.rows.map((row) => [
  [],
  tenths(row.two),
  tenths(row.three),
  "four" in row ? tenths(row.four) : undefined,
]);

/** Where a DBH lies among the rows of the table: 0 at the first row, 0.5 half way to the second. */
export const placeAmongRows = (dbh: number) => (dbh - FIRST_DBH) / DBH_STEP;
export const dbhOfRow = (row: number) => FIRST_DBH + DBH_STEP * row;

/** Diameter inside bark at the top of the first log, to the tenth as the tables take it. [tenths of an inch] */
export const firstTop = (dbh: number, formClass: number) => Math.round((formClass * dbh) / 10);
