import { addressOf, cellAt, meet, zoneAt } from "../address";
import { formats } from "../formats";
import type { CopiedCell, CopiedSheet } from "../host";
import type { CellValue } from "../plan";
import { named, out } from "../tables";
import type { PortableCell, PortableSheet } from "./portableSheet";

export const METHODS = "Methods";

/** How a stretch of cells was computed. */
interface Method {
  readonly sheet: string;
  readonly at: string;
  readonly what: string;
  readonly formula: string;
}

const facts: readonly (readonly [label: string, name: string])[] = [
  ["Log rule of standing trees", named.rule],
  ["Form class, percent", named.formClass],
  ["Method", named.method],
  ["Gauge, ft2 per acre, or plot size, ac", named.size],
  ["Acres", named.acres],
  ["Acres may be off by", named.acresMargin],
  ["Confidence of every margin, percent (Student's t)", named.confidence],
  ["Log rule of the scale sheet", named.scaleRule],
  ["Diameters of logs to whole inches", named.diameterRounding],
  ["Board feet of logs rounded", named.scaleRounding],
  ["Longest scaling length, ft; blank: no limit", named.longestLength],
  ["Trim of logs, ft", named.trim],
  ["Lengths of logs in steps of, ft", named.lengthStep],
  ["Boards measured", named.boardMeasure],
  ["Kerf, in", named.kerf],
  ["Realized lumber, percent", named.realized],
  ["Units", named.units],
];

/** A sheet that tells how each value of a copy came about, since the copy itself calculates nothing. */
export function methodsSheet(sheets: readonly CopiedSheet[]): PortableSheet {
  const plain = (...values: readonly CellValue[]): PortableCell[] =>
    values.map((value) => ({ value, format: formats.text }));
  const heading = (...values: readonly CellValue[]): PortableCell[] => values.map((value) => ({ value, bold: true }));
  const methods = sheets.flatMap(methodsOf);
  const cells: PortableCell[][] = [
    heading(METHODS),
    [
      {
        value:
          "This copy holds values only: it needs no add-in and does not calculate. The formulas that made the values stand below as text.",
      },
    ],
    [{ value: "Where the methods come from stands on the sheet Sources and cautions." }],
    [],
    heading("Assumption", "Value"),
    ...facts.map(([label, name]) => [{ value: label }, { value: namedValue(sheets, name) }]),
    [],
    heading("Built with"),
    ...answerAt(sheets, out.build).map((row) => row.map((value) => ({ value }))),
    [],
    heading("Sheet", "Cells", "What", "Formula"),
    ...methods.map(({ sheet, at, what, formula }) => plain(sheet, at, what, formula)),
  ];
  return { name: METHODS, cells, widths: [46, 22, 34, 100], tables: [], names: [] };
}

/** Each formula with the cells it stands in; the same formula in neighbouring rows is told once. */
function methodsOf(sheet: CopiedSheet): readonly Method[] {
  const found: (Method & { readonly row: number; readonly column: number; readonly rows: number })[] = [];
  const columns = Math.max(0, ...sheet.cells.map((row) => row.length));
  for (let column = 0; column < columns; column += 1) {
    for (let row = 0; row < sheet.cells.length; row += 1) {
      const formula = sheet.cells[row]?.[column]?.formula;
      if (formula === undefined) continue;
      const last = found.at(-1);
      if (last && last.column === column && last.row + last.rows === row && last.formula === formula) {
        const rows = last.rows + 1;
        found[found.length - 1] = { ...last, rows, at: addressOf({ row: last.row, column, rows, columns: 1 }) };
      } else {
        found.push({
          sheet: sheet.name,
          at: cellAt(row, column),
          what: whatIs(sheet, row, column),
          formula,
          row,
          column,
          rows: 1,
        });
      }
    }
  }
  return found.sort((one, other) => one.row - other.row || one.column - other.column);
}

/** What a cell is about: the heading of its table's column, its name, or the text at the head of its row. */
function whatIs({ cells, tables, names = [] }: CopiedSheet, row: number, column: number): string {
  const here = { row, column, rows: 1, columns: 1 };
  const table = tables.find(({ address }) => meet(zoneAt(address), here));
  if (table) return `${table.name}, ${String(cells[zoneAt(table.address).row]?.[column]?.value ?? "")}`;
  const name = names.find(({ at }) => at === cellAt(row, column));
  if (name) return name.name;
  const label = cells[row]?.slice(0, column).find(({ value }) => typeof value === "string");
  return typeof label?.value === "string" ? label.value : "";
}

function namedValue(sheets: readonly CopiedSheet[], name: string): CellValue {
  const sheet = sheets.find(({ names }) => names?.some((one) => one.name === name));
  const at = sheet?.names?.find((one) => one.name === name)?.at;
  if (!sheet || at === undefined) return null;
  const { row, column } = zoneAt(at);
  return sheet.cells[row]?.[column]?.value ?? null;
}

/** The rows of an answer from its named cell down to the first blank. */
function answerAt(sheets: readonly CopiedSheet[], name: string): readonly (readonly CellValue[])[] {
  const sheet = sheets.find(({ names }) => names?.some((one) => one.name === name));
  const at = sheet?.names?.find((one) => one.name === name)?.at;
  if (!sheet || at === undefined) return [];
  const { row, column } = zoneAt(at);
  const rows = sheet.cells.slice(row).map((line) => line.slice(column).map(({ value }: CopiedCell) => value));
  const end = rows.findIndex((line) => (line[0] ?? null) === null);
  return end < 0 ? rows : rows.slice(0, end);
}
