import { textOf } from "../../core/basis/choices";
import { InvalidInput } from "../../core/basis/problem";
import { shown } from "../../core/basis/require";
import { plainNumbers } from "./plainNumbers";

/** What the spreadsheet hands over for a range: rows of cells, each a number, a text, a boolean or a blank. */
export type Cells = any[][];

/** One argument, ready to be read cell by cell. A blank cell reads as undefined; a bad one throws a Problem. */
export interface Reading<T> {
  readonly what: string;
  readonly rows: number;
  readonly columns: number;
  readonly at: (row: number, column: number) => T | undefined;
  /** All that are plain numbers at once, row by row; NaN where `at` has to say what a cell means. */
  readonly plain?: () => Float64Array;
}

export interface Bounds {
  readonly unit: string;
  readonly low?: number;
  readonly high?: number;
}

/** A cell that holds nothing, whichever way the host says so. A 0 is a matter of what the argument means. */
export const blank = (cell: unknown): boolean =>
  cell == null || cell === "" || (typeof cell === "string" && cell.trim() === "");

/**
 * A range as rows and columns, whatever a host made of it: a lone value is a range of one cell, a plain list is a row,
 * and ragged rows are filled up with blanks.
 */
export function asCells(given: unknown): Cells {
  if (!Array.isArray(given)) return [[given]];
  const lines: readonly unknown[] = given.some(Array.isArray) ? given : [given];
  const first: unknown = lines[0];
  const width = Array.isArray(first) ? first.length : 0;
  if (width > 0 && allAreWide(lines, width)) return lines as Cells;

  const rows = lines.map((line): unknown[] => (Array.isArray(line) ? line : [line]));
  const widest = rows.reduce((most, row) => Math.max(most, row.length), 1);
  return rows.map((row) => Array.from({ length: widest }, (_, column) => row[column] ?? null));
}

/** Whether rows are all of one width; a plain loop, since long columns pass here before they are read. */
function allAreWide(rows: readonly unknown[], width: number): boolean {
  for (let row = 0; row < rows.length; row += 1) {
    const line = rows[row];
    if (!Array.isArray(line) || line.length !== width) return false;
  }
  return true;
}

/**
 * A measurement: blank and 0 both mean "not measured", since hosts disagree on how a blank cell arrives.
 * @param tag puts the unit on a plain number, converting from metric where that is wanted
 */
export function measured<T>(given: unknown, what: string, tag: (value: number) => T, bounds: Bounds): Reading<T> {
  const cells = asCells(given);
  return {
    ...reading(cells, what, (cell) => (cell === 0 || blank(cell) ? undefined : tag(boundedNumber(cell, what, bounds)))),
    plain: () => plainNumbers(cells, bounds, (value) => (value === 0 ? NaN : tag(value))),
  };
}

/** Any other number of a column: a blank reads as the value that stands for "left out". */
export function optionalNumber<T>(
  given: unknown,
  what: string,
  tag: (value: number) => T,
  bounds: Bounds,
  leftOut = 0,
): Reading<T> {
  const cells = asCells(given);
  return {
    ...reading(cells, what, (cell) => tag(blank(cell) ? leftOut : boundedNumber(cell, what, bounds))),
    plain: () => plainNumbers(cells, bounds, tag),
  };
}

/** A column of texts or numbers that name things, such as plots or species. Compared without regard to case. */
export function names(given: unknown, what: string): Reading<string> {
  return reading(asCells(given), what, (cell) => {
    if (cell === 0 || blank(cell)) return undefined;
    if (typeof cell === "object") throw new InvalidInput(`${what} should be a name or a number.`);
    return textOf(cell).slice(0, 100);
  });
}

/** One number that is not a column. Left out or blank: the value that stands for it. */
export function oneNumber(given: unknown, what: string, bounds: Bounds, leftOut?: number): number {
  const cell = asCells(given)[0]?.[0];
  if (leftOut !== undefined && (cell === 0 || blank(cell))) return leftOut;
  if (blank(cell))
    throw new InvalidInput(
      `${what} needs a number${bounds.unit && ` in ${inWords(bounds.unit)}`}, but the cell is blank.`,
    );
  return boundedNumber(cell, what, bounds);
}

/** After the word "in", the unit "in" would be read as a slip. */
const inWords = (unit: string) => (unit === "in" ? "inches" : unit);

/** One text that is not a column. Left out or blank: the text that stands for it. */
export function oneText(given: unknown, what: string, leftOut = ""): unknown {
  const cells = asCells(given);
  if (cells.length > 1 || (cells[0]?.length ?? 0) > 1) {
    throw new InvalidInput(`${what} should be one text, not a list of them.`);
  }
  const cell: unknown = cells[0]?.[0];
  return cell === 0 || blank(cell) ? leftOut : cell;
}

/** True when an argument was left out, whichever way the host says so. */
export const isLeftOut = (given: unknown): boolean => {
  const cells = asCells(given);
  return cells.length === 1 && (cells[0]?.length ?? 0) <= 1 && (cells[0]?.[0] === 0 || blank(cells[0]?.[0]));
};

function reading<T>(cells: Cells, what: string, read: (cell: unknown) => T | undefined): Reading<T> {
  const columns = cells[0]?.length ?? 0;
  return { what, rows: cells.length, columns, at: (row, column) => read(cells[row]?.[column]) };
}

/** A number within its bounds, or the sentence that says what is wrong with the cell. */
export function boundedNumber(cell: unknown, what: string, { unit, low = -1e12, high = 1e12 }: Bounds): number {
  const value = typeof cell === "number" ? cell : numberOf(cell, what);
  if (value >= low && value <= high) return value;
  if (isDateSerial(value)) throw new InvalidInput(DATE);
  const hint = value > high && value / 10 >= low && value / 10 <= high ? " Missing a decimal point?" : "";
  throw new InvalidInput(
    `${what} should be between ${shown(low)} and ${shown(high)}${unit && ` ${unit}`}. You have ${shown(value)}.${hint}`,
  );
}

export const DATE = "This looks like a date. Excel turns 5/4 or 1/8 into a date; type 1.25 or =5/4.";
const PLAIN_NUMBER = /^[+-]?(\d+(\.\d*)?|\.\d+)(e[+-]?\d+)?$/i;
const LIKE_A_DATE = /^\d{1,4}[/-]\d{1,2}([/-]\d{1,4})?$|^\d{1,2}-[a-z]{3,}(-\d+)?$/i;

/** Serial numbers of the days from 1990 to 2099, as a cell that was turned into a date holds them. */
export const isDateSerial = (value: number) => Number.isInteger(value) && value >= 32_874 && value <= 73_050;

function numberOf(cell: unknown, what: string): number {
  if (typeof cell === "string") {
    const text = cell.trim();
    if (PLAIN_NUMBER.test(text) && Number.isFinite(Number(text))) return Number(text);
    if (LIKE_A_DATE.test(text)) throw new InvalidInput(DATE);
    throw new InvalidInput(`${what} needs a number, but the cell has "${text.slice(0, 60)}". Type just the number.`);
  }
  if (cell instanceof Date) throw new InvalidInput(DATE);
  if (typeof cell === "boolean")
    throw new InvalidInput(`${what} needs a number, but the cell has ${cell ? "TRUE" : "FALSE"}.`);
  throw new InvalidInput(`${what} needs a number, but the cell has something else.`);
}
