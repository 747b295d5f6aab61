import type { ColumnMatch } from "./pastedColumns";

/** One cell that holds a number with a comma for its point: "12,5". A thousand is never written into a tally so. */
const DECIMAL_COMMA = /^[+-]?\d+,\d{1,2}$/;

/** A cell of numbers with its comma made a point, where it has one; any other text as it is. */
export const withPoint = (cell: string): string => (DECIMAL_COMMA.test(cell) ? cell.replace(",", ".") : cell);

/** Says how decimal commas were read, for what was read should be seen; undefined where there were none. */
export function saidOfCommas(rows: readonly (readonly string[])[], { columns }: ColumnMatch): string | undefined {
  const numbers = [columns.dbh, columns.logs, columns.count, columns.cull];
  const cells = rows.flatMap((row) => numbers.map((place) => row[place ?? -1]?.trim() ?? ""));
  const commas = cells.filter((cell) => DECIMAL_COMMA.test(cell));
  const first = commas[0];
  if (first === undefined) return undefined;
  const others = commas.length === 1 ? "" : `, and ${commas.length - 1} more like it`;
  return `The comma in ${first} was read as a decimal point: ${withPoint(first)}${others}.`;
}

/**
 * A line cut at its decimal commas has more cells than there are headings; what it says then is anyone's guess. A note
 * that stands last may have commas of its own.
 */
export function cutAtCommas(cells: readonly string[], delimiter: string, { headings, columns }: ColumnMatch): boolean {
  const last = headings.length - 1;
  const over = cells.slice(last + 1).some((cell) => cell.trim() !== "");
  if (delimiter !== "," || last < 0 || !over) return false;
  return columns.note !== last || /^\d+$/.test(cells[last]?.trim() ?? "");
}

/** Share of lines from which on logs without a single decimal point, many of them above 5, are likely to be decimals. */
const MANY = 0.25;

/**
 * Without headings a line cut at decimal commas reads as other numbers: 12,5 as 12 in and 5 logs. It shows only in the
 * whole: no number has a point, and the logs run from 0 to 9 alike.
 */
export function looksCut(rows: readonly (readonly string[])[], delimiter: string, { columns }: ColumnMatch): boolean {
  if (delimiter !== "," || rows.length === 0) return false;
  if (rows.some((row) => row.some((cell) => /\d\.\d/.test(cell)))) return false;
  const tall = rows.filter((row) => Number(row[columns.logs ?? -1]) > 5);
  return tall.length >= MANY * rows.length;
}
