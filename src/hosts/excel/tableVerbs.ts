import type { WorkbookHost } from "../../workbook/host";
import { toExcel } from "./cellValues";
import { excelRun, withTable } from "./excelRun";
import { missingColumn, missingRow } from "./hostProblems";
import { isBlankRow, onlyFormulas, rowsByHeading, rowsToAppend } from "./tableRows";

type TableVerbs = Pick<
  WorkbookHost,
  "hasTable" | "readTable" | "appendRows" | "updateRow" | "updateRows" | "deleteRow"
>;

/** Tables of the workbook. Each verb takes one round trip to look and one to write. */
export const tableVerbs: TableVerbs = {
  hasTable: (name) =>
    excelRun(async (context) => {
      const table = context.workbook.tables.getItemOrNullObject(name).load("name");
      await context.sync();
      return !table.isNullObject;
    }),

  readTable: (name) =>
    withTable(name, async (table, context) => {
      const header = table.getHeaderRowRange().load("values");
      const body = table.getDataBodyRange().load("values");
      const sheet = table.worksheet.load("name");
      await context.sync();
      const headings = textsOf(header);
      return { name, sheet: sheet.name, headings, rows: rowsByHeading(headings, body.values) };
    }),

  appendRows: (name, rows) =>
    withTable(name, async (table, context) => {
      const { headings, firstRow, formulas, formats, count } = await look(table, context);
      const [first, ...rest] = rowsToAppend(name, headings, formulas, rows, formats);
      if (!first) return;
      const fillsBlank = count === 1 && isBlankRow(formulas);
      if (fillsBlank) firstRow.formulas = [first];
      const added = fillsBlank ? rest : [first, ...rest];
      if (added.length > 0) table.rows.add(undefined, added);
      await context.sync();
    }),

  updateRow: (name, row, changes) => changeRows(name, [{ row, changes }]),
  updateRows: (name, changes) => changeRows(name, changes),

  deleteRow: (name, row) =>
    withTable(name, async (table, context) => {
      const { firstRow, formulas, count } = await look(table, context);
      if (row >= count) throw missingRow(name, row);
      // A table cannot do without a row: the last one is emptied instead.
      if (count === 1) firstRow.formulas = [onlyFormulas(formulas)];
      else table.rows.getItemAt(row).delete();
      await context.sync();
    }),
};

const changeRows: WorkbookHost["updateRows"] = (name, all) =>
  withTable(name, async (table, context) => {
    const { headings, formats, count } = await look(table, context);
    const body = table.getDataBodyRange();
    for (const { row, changes } of all) {
      if (row >= count) throw missingRow(name, row);
      for (const [heading, value] of Object.entries(changes)) {
        const column = headings.indexOf(heading);
        if (column < 0) throw missingColumn(name, heading);
        body.getCell(row, column).values = [[toExcel(value, formats[column])]];
      }
    }
    await context.sync();
  });

/** What every change of a table has to know, in one round trip. */
async function look(table: Excel.Table, context: Excel.RequestContext) {
  const header = table.getHeaderRowRange().load("values");
  const firstRow = table.getHeaderRowRange().getOffsetRange(1, 0).load("formulas,numberFormat");
  const body = table.getDataBodyRange().load("rowCount");
  await context.sync();
  return {
    headings: textsOf(header),
    firstRow,
    formulas: (firstRow.formulas[0] ?? []) as unknown[],
    formats: (firstRow.numberFormat[0] ?? []) as unknown[],
    count: body.rowCount,
  };
}

const textsOf = (header: Excel.Range): string[] => (header.values[0] ?? []).map(String);
