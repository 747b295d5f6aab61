/** A rectangle of cells, counted from 0. */
export interface Zone {
  readonly row: number;
  readonly column: number;
  readonly rows: number;
  readonly columns: number;
}

/** The letters of a column counted from 0: 0 is A, 26 is AA. */
export function columnLetters(column: number): string {
  const rest = Math.floor(column / 26);
  return (rest > 0 ? columnLetters(rest - 1) : "") + String.fromCharCode(65 + (column % 26));
}

/** "C5" for row 4, column 2. */
export const cellAt = (row: number, column: number): string => `${columnLetters(column)}${row + 1}`;

/** "A1" for one cell, "A1:C5" for more. */
export function addressOf({ row, column, rows, columns }: Zone): string {
  const first = cellAt(row, column);
  return rows === 1 && columns === 1 ? first : `${first}:${cellAt(row + rows - 1, column + columns - 1)}`;
}

/** Reads "C5", "$C$5", "A1:C5" and the same behind a sheet's name. */
export function zoneAt(address: string): Zone {
  const parts = /^\$?([A-Z]+)\$?(\d+)(?::\$?([A-Z]+)\$?(\d+))?$/.exec(address.slice(address.lastIndexOf("!") + 1));
  if (!parts) throw new Error(`"${address}" is no address of cells.`);
  const [, left = "", top = "", right = left, bottom = top] = parts;
  const column = columnNumber(left);
  const row = Number(top) - 1;
  return { row, column, rows: Number(bottom) - row, columns: columnNumber(right) - column + 1 };
}

/** The cell so many rows below and columns right of another. */
export function beside(at: string, rows: number, columns: number): string {
  const { row, column } = zoneAt(at);
  return cellAt(row + rows, column + columns);
}

/** The cell with both its letters and its number fixed: "$C$5". */
export const fixed = (at: string): string => at.replace(/^([A-Z]+)(\d+)$/, "$$$1$$$2");

export const meet = (a: Zone, b: Zone): boolean =>
  a.row < b.row + b.rows &&
  b.row < a.row + a.rows &&
  a.column < b.column + b.columns &&
  b.column < a.column + a.columns;

const columnNumber = (letters: string): number =>
  [...letters].reduce((sum, letter) => sum * 26 + letter.charCodeAt(0) - 64, 0) - 1;
