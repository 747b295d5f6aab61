import type { TableRow } from "../../workbook/plan";
import { ALL_LOGS_INPUTS } from "../../workbook/sheets/allLogs";
import { number } from "../job/cells";

/** Sums over the measures of logs and boards, by which the sheet All logs sees later that they have changed. */
export const allLogsInputs = (logs: readonly TableRow[], boards: readonly TableRow[]) => ({
  logs: sumOf(logs, ALL_LOGS_INPUTS.logs),
  boards: sumOf(boards, ALL_LOGS_INPUTS.boards),
});

const sumOf = (rows: readonly TableRow[], headings: readonly string[]) =>
  rows.reduce((sum, row) => headings.reduce((of, heading) => of + (number(row[heading]) ?? 0), sum), 0);
