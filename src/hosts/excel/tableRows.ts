import type { TableRow } from "../../workbook/plan";
import { fromExcel, isFormula, toExcel } from "./cellValues";
import { missingColumn } from "./hostProblems";

/** Rows by heading, without the blank rows at the end that a spreadsheet keeps or a formula answers with blanks. */
export function rowsByHeading(headings: readonly string[], values: readonly (readonly unknown[])[]): TableRow[] {
  const rows = values.map((row) => Object.fromEntries(headings.map((heading, i) => [heading, fromExcel(row[i])])));
  while (rows.length > 0 && Object.values(rows.at(-1) ?? {}).every((value) => value === null)) rows.pop();
  return rows;
}

/** Rows as Excel takes them: what is given, the formulas of the computed columns, blanks for the rest. */
export function rowsToAppend(
  table: string,
  headings: readonly string[],
  firstRow: readonly unknown[],
  rows: readonly TableRow[],
  formats: readonly unknown[] = [],
): (string | number | boolean)[][] {
  for (const heading of rows.flatMap((row) => Object.keys(row))) {
    if (!headings.includes(heading)) throw missingColumn(table, heading);
  }
  return rows.map((row) =>
    headings.map((heading, i) => {
      const formula = firstRow[i];
      return isFormula(formula) ? formula : toExcel(row[heading], formats[i]);
    }),
  );
}

/** True for the blank row of a new table: nothing but formulas. */
export const isBlankRow = (formulas: readonly unknown[]): boolean =>
  formulas.every((cell) => cell === "" || cell === null || isFormula(cell));

/** The same row with only its formulas left. */
export const onlyFormulas = (formulas: readonly unknown[]): string[] =>
  formulas.map((cell) => (isFormula(cell) ? cell : ""));
