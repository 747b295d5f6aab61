import type { Place } from "../../workbook/host";
import { excelRun, withTable } from "./excelRun";
import { HostProblem } from "../../workbook/host";
import { missingColumn } from "./hostProblems";

/** Brings a cell before the user's eyes. */
export function selectPlace(place: Place): Promise<void> {
  return "table" in place ? selectInTable(place) : selectOnSheet(place);
}

const selectInTable = ({ table: name, row, heading }: Extract<Place, { readonly table: string }>): Promise<void> =>
  withTable(name, async (table, context) => {
    const header = table.getHeaderRowRange().load("values");
    await context.sync();
    const column = (header.values[0] ?? []).map(String).indexOf(heading);
    if (column < 0) throw missingColumn(name, heading);
    table.worksheet.activate();
    table.getDataBodyRange().getCell(row, column).select();
    await context.sync();
  });

const selectOnSheet = ({ sheet: name, at }: Extract<Place, { readonly sheet: string }>): Promise<void> =>
  excelRun(async (context) => {
    const sheet = context.workbook.worksheets.getItemOrNullObject(name).load("name");
    await context.sync();
    if (sheet.isNullObject) {
      throw new HostProblem(
        "refused",
        `The sheet named ${name} is missing. Build the workbook anew on the Setup view; your data has not been changed.`,
      );
    }
    sheet.activate();
    sheet.getRange(at).select();
    await context.sync();
  });
