import type { CellValue, PlannedCell } from "../../workbook/plan";

/** What Excel would take for a formula or a date if a person typed it, though it is meant as text. */
const READ_OTHERWISE = /^['=+\-@]|^\d+[/-]\d+/;

/** The number format of cells that keep whatever is typed as text. */
const TEXT = "@";

/**
 * A value as Office.js takes it: a blank is "", because null would leave the cell as it is. A text that Excel would
 * read as something else stands behind an apostrophe, which is not shown, so that it can never become a formula; in a
 * cell formatted as text it is safe, and an apostrophe would show.
 */
export function toExcel(value: CellValue | undefined, format: unknown = "General"): string | number | boolean {
  if (typeof value === "string" && format !== TEXT && READ_OTHERWISE.test(value)) return `'${value}`;
  return value ?? "";
}

/** A value as Office.js gives it: a blank comes as "". */
export function fromExcel(value: unknown): CellValue {
  if (value === "" || value === null || value === undefined) return null;
  if (typeof value === "number" || typeof value === "boolean" || typeof value === "string") return value;
  throw new TypeError("Excel gave a cell value of a kind that was not asked for.");
}

export const isFormula = (cell: unknown): cell is string => typeof cell === "string" && cell.startsWith("=");

/** A planned cell as `Range.formulas` takes it. */
export const planned = (cell: PlannedCell | undefined): string | number | boolean =>
  typeof cell === "object" && cell !== null ? cell.formula : toExcel(cell);

/** A block of one value. */
export const filledWith = <T>(rows: number, columns: number, value: T): T[][] =>
  Array.from({ length: rows }, () => new Array<T>(columns).fill(value));

/** Rows made as wide as the widest, since Office.js refuses ragged ones. */
export function even<T>(rows: readonly (readonly T[])[], filler: T): T[][] {
  const wide = Math.max(0, ...rows.map((row) => row.length));
  return rows.map((row) => [...row, ...new Array<T>(wide - row.length).fill(filler)]);
}
