import { columnLetters, zoneAt } from "../../workbook/address";
import type { BlockPlan, PlannedCell, SheetPlan, TablePlan } from "../../workbook/plan";
import { cellStyle } from "../../workbook/styles";
import { tableZone } from "../../workbook/zones";
import { even, filledWith, planned, toExcel } from "./cellValues";

/** Rows below a table that are dressed for what will be typed there, where the spreadsheet does not do it itself. */
export const ROWS_TO_COME = 200;

/** Characters that the button in a heading covers. */
const FILTER_BUTTON = 5;

const TABLE_STYLE = "TableStyleLight1";

/** Everything that other formulas refer to: values, tables, names. Formulas come later, when all of it is there. */
export function layValues(sheet: Excel.Worksheet, plan: SheetPlan, workbook: Excel.Workbook): void {
  layWidths(sheet, plan);
  for (const block of plan.blocks) layBlock(sheet, block);
  for (const table of plan.tables) layTable(sheet, table);
  for (const { name, at } of [...plan.names, ...plan.spills]) workbook.names.add(name, sheet.getRange(at));
}

function layWidths(sheet: Excel.Worksheet, { widths, tables }: SheetPlan): void {
  const wanted = new Map(widths.map((width, column) => [column, width]));
  for (const table of tables) {
    const { column } = zoneAt(table.at);
    table.columns.forEach(({ width, heading }, i) => {
      wanted.set(column + i, Math.max(width, heading.length + FILTER_BUTTON));
    });
  }
  for (const [column, width] of wanted) sheet.getRangeByIndexes(0, column, 1, 1).format.columnWidth = pointsWide(width);
}

/** A width in characters as Excel counts it, in points: 7 pixels for each and 5 for the edges, at 96 pixels an inch. */
export const pointsWide = (characters: number): number => (7 * characters + 5) * 0.75;

export const hasFormula = ({ cells }: BlockPlan): boolean =>
  cells.some((row) => row.some((cell) => typeof cell === "object" && cell !== null));

export function blockRange(sheet: Excel.Worksheet, { at, cells }: BlockPlan): Excel.Range {
  const { row, column } = zoneAt(at);
  return sheet.getRangeByIndexes(row, column, cells.length, Math.max(...cells.map((line) => line.length)));
}

function layBlock(sheet: Excel.Worksheet, block: BlockPlan): void {
  const range = blockRange(sheet, block);
  const cells = even<PlannedCell>(block.cells, null);
  if (block.style) range.style = cellStyle(block.style);
  if (block.format !== undefined) range.numberFormat = filledWith(cells.length, cells[0]?.length ?? 0, block.format);
  if (block.lines) breakLines(sheet, range, zoneAt(block.at).row, block.lines);
  if (!hasFormula(block)) range.values = cells.map((row) => row.map(planned));
}

/** Points that a line of text is high, with the space around it. */
const LINE_HEIGHT = 16;

/** Breaks long texts and makes their rows high enough, since not every spreadsheet does that by itself. */
export function breakLines(sheet: Excel.Worksheet, range: Excel.Range, row: number, lines: readonly number[]): void {
  range.format.wrapText = true;
  range.format.verticalAlignment = "Top";
  lines.forEach((count, i) => {
    sheet.getRangeByIndexes(row + i, 0, 1, 1).format.rowHeight = count * LINE_HEIGHT;
  });
}

function layTable(sheet: Excel.Worksheet, table: TablePlan): void {
  const { row, column, rows, columns } = tableZone(table);
  const range = sheet.getRangeByIndexes(row, column, rows, columns);
  const dressed = rows - 1 + ROWS_TO_COME;
  const formats = table.columns.map(({ format }) => format ?? "General");
  sheet.getRangeByIndexes(row + 1, column, dressed, columns).numberFormat = Array.from(
    { length: dressed },
    () => formats,
  );

  const headings = table.columns.map(({ heading }) => heading);
  const body = Array.from({ length: rows - 1 }, (_, i) =>
    headings.map((heading, c) => toExcel(table.rows[i]?.[heading], formats[c])),
  );
  range.values = [headings, ...body];

  const added = sheet.tables.add(addressOn(row, column, rows, columns), true);
  added.name = table.name;
  added.style = TABLE_STYLE;
  added.showBandedRows = false;

  sheet.getRangeByIndexes(row, column, 1, columns).style = cellStyle("Heading");
  for (const run of runsOf(table.columns.map(({ formula }) => formula === undefined))) {
    const cells = sheet.getRangeByIndexes(row + 1, column + run.from, rows - 1, run.length);
    cells.style = cellStyle(run.value ? "Input" : "Computed");
  }
}

const addressOn = (row: number, column: number, rows: number, columns: number) =>
  `${columnLetters(column)}${row + 1}:${columnLetters(column + columns - 1)}${row + rows}`;

/** Neighbours that are alike, so that each stretch is written at once. */
export function runsOf<T>(
  values: readonly T[],
): { readonly from: number; readonly length: number; readonly value: T }[] {
  const runs: { from: number; length: number; value: T }[] = [];
  values.forEach((value, i) => {
    const last = runs.at(-1);
    if (last && last.value === value) last.length += 1;
    else runs.push({ from: i, length: 1, value });
  });
  return runs;
}
