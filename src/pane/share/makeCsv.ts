import { PLOTS, TREES } from "../../workbook/tables";
import type { Job } from "../job/job";
import type { Pane } from "../pane";
import type { CsvState } from "./csvState";

/** The trees or the points as rows of text, as they stand now; names and places are left out where that is wanted. */
async function rowsNow(pane: Pane, job: Job, what: CsvState["what"]): Promise<string[][]> {
  const { csvRows, plotCsv, rowsWithTrees, treeCsv, withoutPrivateColumns } = await import("../../workbook/csv");
  const table = await pane.host.readTable(what === "trees" ? TREES : PLOTS);
  const rows = what === "trees" ? rowsWithTrees(table.rows) : table.rows;
  const columns = what === "trees" ? treeCsv : plotCsv;
  return pane.state.share.leaveOutPrivate
    ? csvRows("", withoutPrivateColumns(columns), rows)
    : csvRows(job.stand, columns, rows);
}

/** Shows the trees or the points as CSV text, to be copied. */
export async function showCsv(pane: Pane, job: Job, what: CsvState["what"]): Promise<void> {
  await pane.run("Writing the text", async () => {
    const { csvOf } = await import("../../workbook/csv");
    const rows = await rowsNow(pane, job, what);
    pane.set({ csv: { what, text: csvOf(rows), rows: rows.length - 1 } });
    pane.say(`${rows.length - 1} ${what} as CSV text.`);
  });
}

/** The same as a workbook of one sheet, ready for Save As, CSV UTF-8. */
export async function csvWorkbook(pane: Pane, job: Job, what: CsvState["what"]): Promise<void> {
  await pane.run("Making the workbook", async () => {
    const rows = await rowsNow(pane, job, what);
    const { oneSheetFile } = await import("../../workbook/portable/oneSheetFile");
    const stand = pane.state.share.leaveOutPrivate ? "Woodlot" : job.stand;
    const { base64, fileName } = await oneSheetFile(stand, what, rows);
    await pane.host.openCopy(base64, fileName);
    pane.say(`${fileName} is made. Save it as CSV UTF-8.`);
  });
}
