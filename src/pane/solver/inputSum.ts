import type { TableRow } from "../../workbook/plan";
import { PLAN_INPUTS, type PlanTable } from "../../workbook/sheets/planInputs";
import { number } from "../job/cells";

/** Sum over the measures of a table, by which the sheet of a plan sees later that they have changed. */
export const inputSum = (table: PlanTable, rows: readonly TableRow[]): number =>
  rows.reduce((sum, row) => PLAN_INPUTS[table].reduce((of, heading) => of + (number(row[heading]) ?? 0), sum), 0);
