import { addressOf, zoneAt } from "../../workbook/address";
import type { CopiedCell, CopiedSheet } from "../../workbook/host";
import { workbookNames } from "../../workbook/tables";
import { fromExcel, isFormula } from "./cellValues";
import { excelRun } from "./excelRun";
import { pageOf } from "./printedPage";

const BLANK: CopiedCell = { value: null, format: "General" };

/** Every used cell of every sheet from A1 on, with what made it. */
export const copyWorkbook = (): Promise<readonly CopiedSheet[]> =>
  excelRun(async (context) => {
    const { worksheets, names } = context.workbook;
    worksheets.load("items/name");
    names.load("items/name");
    await context.sync();

    const named = names.items
      .filter(({ name }) => workbookNames.has(name))
      .map((item) => ({ name: item.name, range: item.getRange().load("address") }));
    const sheets = worksheets.items.map((sheet) => ({
      name: sheet.name,
      tables: sheet.tables.load("items/name"),
      page: pageOf(sheet),
      used: sheet.getUsedRangeOrNullObject(true).load("values,formulas,numberFormat,rowIndex,columnIndex"),
    }));
    await context.sync();

    const tables = sheets.map((sheet) =>
      sheet.tables.items.map((table) => ({ name: table.name, range: table.getRange().load("address") })),
    );
    await context.sync();

    return sheets.map(({ name, used, page }, i) => ({
      name,
      page: page(),
      cells: used.isNullObject ? [] : cellsFromCorner(used),
      tables: (tables[i] ?? []).map((table) => ({ name: table.name, address: onSheet(table.range.address) })),
      names: named
        .filter(({ range }) => sheetOf(range.address) === name)
        .map((one) => ({ name: one.name, at: onSheet(one.range.address) })),
    }));
  });

interface Block {
  readonly values: readonly (readonly unknown[])[];
  readonly formulas: readonly (readonly unknown[])[];
  readonly numberFormat: readonly (readonly unknown[])[];
  readonly rowIndex: number;
  readonly columnIndex: number;
}

/** The block with blanks above and to the left, so that its first cell is A1. */
export function cellsFromCorner({ values, formulas, numberFormat, rowIndex, columnIndex }: Block): CopiedCell[][] {
  const before = new Array<CopiedCell>(columnIndex).fill(BLANK);
  const above = Array.from({ length: rowIndex }, (): CopiedCell[] => []);
  const rows = values.map((row, r) => [
    ...before,
    ...row.map((value, c): CopiedCell => {
      const formula = formulas[r]?.[c];
      const format = numberFormat[r]?.[c];
      return {
        value: fromExcel(value),
        format: typeof format === "string" ? format : BLANK.format,
        ...(isFormula(formula) && { formula }),
      };
    }),
  ]);
  return [...above, ...rows];
}

/** The sheet of an address such as "'Sources and cautions'!A1". */
export function sheetOf(address: string): string {
  const sheet = address.slice(0, address.lastIndexOf("!"));
  return sheet.replace(/^'(.*)'$/, "$1").replaceAll("''", "'");
}

const onSheet = (address: string): string => addressOf(zoneAt(address));
