import type { WorkbookHost } from "../../workbook/host";
import type { CellValue } from "../../workbook/plan";
import { fromExcel, toExcel } from "./cellValues";
import { excelRun } from "./excelRun";
import { missingName } from "./hostProblems";

type NameVerbs = Pick<WorkbookHost, "readNames" | "writeNames" | "readSpill">;

/** Named cells of the workbook. */
export const nameVerbs: NameVerbs = {
  readNames: (names) =>
    excelRun(async (context) => {
      const cells = (await rangesOf(context, names)).map((range) => range.load("values"));
      await context.sync();
      return Object.fromEntries(names.map((name, i) => [name, fromExcel(cells[i]?.values[0]?.[0])]));
    }),

  writeNames: (values) =>
    excelRun(async (context) => {
      const cells = (await rangesOf(context, Object.keys(values))).map((range) => range.load("numberFormat"));
      await context.sync();
      Object.values(values).forEach((value, i) => {
        const cell = cells[i];
        if (cell) cell.values = [[toExcel(value, cell.numberFormat[0]?.[0])]];
      });
      await context.sync();
    }),

  readSpill: (name) =>
    excelRun(async (context) => {
      const [cell] = await rangesOf(context, [name]);
      if (!cell) throw missingName(name);
      const spill = cell.getSpillingToRangeOrNullObject().load("values");
      cell.load("values");
      await context.sync();
      const values: readonly (readonly unknown[])[] = spill.isNullObject ? cell.values : spill.values;
      return values.map((row): readonly CellValue[] => row.map(fromExcel));
    }),
};

/** The cells behind names, in their order. */
async function rangesOf(context: Excel.RequestContext, names: readonly string[]): Promise<Excel.Range[]> {
  const items = names.map((name) => context.workbook.names.getItemOrNullObject(name).load("name"));
  await context.sync();
  return items.map((item, i) => {
    if (item.isNullObject) throw missingName(names[i] ?? "");
    return item.getRange();
  });
}
