import { writeXlsx, type Cell, type DataValidation, type WriteSheet } from "hucre/xlsx";
import { fixed, zoneAt } from "../address";
import type { BlockPlan, EntryRulePlan, PlannedCell, SheetPlan } from "../plan";
import { styleLooks } from "../styles";
import { pageSetup } from "./pageSetup";

/** A picture that lies on a sheet of a file. */
export interface FilePicture {
  /** Cells that it covers, such as "D3:F20"; they set its size. */
  readonly over: string;
  readonly png: Uint8Array;
  /** What it shows, for who cannot see it. */
  readonly says: string;
}

/** A sheet plan of blocks, names and rules for entry as an .xlsx file, its formulas live, with pictures. */
export function planFile(plan: SheetPlan, pictures: readonly FilePicture[] = []): Promise<Uint8Array> {
  const { name, names, print, widths, frozenRows, landscape } = plan;
  const sheet: WriteSheet = {
    name,
    columns: widths.map((width) => ({ width })),
    rows: rowsOf(plan),
    cells: new Map(plan.blocks.flatMap(cellsOf)),
    rowDefs: new Map(plan.blocks.flatMap(heightsOf)),
    images: pictures.map(imageOf),
    dataValidations: plan.entryRules.map(ruleOf),
    freezePane: { rows: frozenRows },
    view: { showGridLines: false },
    pageSetup: {
      ...pageSetup({ landscape, ...(print ?? { scale: 100 }) }),
      ...(print && {
        showGridLines: print.gridlines,
        margins: { left: print.margin, right: print.margin, top: print.margin, bottom: 0.75, header: 0.3, footer: 0.3 },
      }),
    },
    headerFooter: { oddFooter: "&C&A - page &P of &N" },
    ...(print && { rowBreaks: print.breaks.map((row) => row - 2) }), // behind a row counted from 0
  };
  return writeXlsx({
    sheets: [sheet],
    defaultFont: FONT,
    namedRanges: names.map((one) => ({ name: one.name, range: `'${name}'!${fixed(one.at)}` })),
  });
}

function imageOf({ over, png, says }: FilePicture): NonNullable<WriteSheet["images"]>[number] {
  const { row, column, rows, columns } = zoneAt(over);
  const anchor = { from: { row, col: column }, to: { row: row + rows, col: column + columns } };
  return { data: png, type: "png", anchor, altText: says };
}

function rowsOf({ blocks }: SheetPlan): (string | number | boolean | null)[][] {
  const last = Math.max(...blocks.map(({ at, cells }) => zoneAt(at).row + cells.length));
  return Array.from({ length: last }, () => []);
}

/** Widths of columns go by its digits; what stands in for it where it is missing is as wide. */
const FONT = { name: "Arial", size: 10 };

/** Later blocks are laid over earlier ones, as on a sheet. */
function cellsOf({ at, cells, style, format, lines }: BlockPlan): [string, Partial<Cell>][] {
  const { row, column } = zoneAt(at);
  const look = style ? styleLooks[style] : undefined;
  const dress = {
    ...(format !== undefined && { numFmt: format }),
    font: {
      ...FONT,
      ...(look?.color && { color: { rgb: look.color.slice(1) } }),
      ...(look?.bold && { bold: true }),
      ...(look?.italic && { italic: true }),
      ...(look?.size !== undefined && { size: look.size }),
    },
    ...(look?.fill !== undefined && {
      fill: { type: "pattern" as const, pattern: "solid" as const, fgColor: { rgb: look.fill.slice(1) } },
    }),
    ...(style === "Input" && { border: LINES }),
  };
  return cells.flatMap((line, r) =>
    line.map((cell, c): [string, Partial<Cell>] => [
      `${row + r},${column + c}`,
      {
        ...contentOf(cell),
        style: {
          ...dress,
          ...(cell === null
            ? { alignment: { vertical: "center" as const } }
            : (lines?.[r] ?? 1) > 1 && { alignment: { vertical: "top" as const, wrapText: true } }),
        },
      },
    ]),
  );
}

const LINE = { style: "thin" as const, color: { rgb: "8D976B" } };
const LINES = { top: LINE, bottom: LINE, left: LINE, right: LINE };

/** The type is stated so that a text that begins with an equals sign stays a text. */
function contentOf(cell: PlannedCell): Partial<Cell> {
  if (cell === null) return { value: null, type: "empty" };
  if (typeof cell === "object") {
    const { formula, result } = cell;
    return {
      value: result ?? null,
      type: "formula",
      formula: formula.slice(1),
      ...(result !== undefined && { formulaResult: result }),
    };
  }
  return { value: cell, type: typeof cell === "number" ? "number" : typeof cell === "boolean" ? "boolean" : "string" };
}

const LINE_HEIGHT = 16; // points, as on the sheets in the workbook

function heightsOf({ at, lines }: BlockPlan): [number, { readonly height: number }][] {
  return (lines ?? []).map((count, line) => [zoneAt(at).row + line, { height: count * LINE_HEIGHT }]);
}

function ruleOf({ at, rule }: EntryRulePlan): DataValidation {
  const said = {
    range: at,
    allowBlank: true,
    showErrorMessage: true,
    errorTitle: "Please look again",
    errorMessage: rule.message,
    errorStyle: rule.strict ? ("stop" as const) : ("warning" as const),
  };
  switch (rule.kind) {
    case "list":
      return { ...said, type: "list", values: [...rule.choices] };
    case "listOf":
      return { ...said, type: "list", formula1: rule.range };
    case "number":
      return {
        ...said,
        type: "decimal",
        operator: "between",
        formula1: String(rule.low),
        formula2: String(rule.high),
      };
  }
}
