import type { WorkbookHost } from "../../workbook/host";
import { copyWorkbook } from "./copyVerb";
import { excelRun } from "./excelRun";
import { asHostProblem } from "./hostProblems";
import { laySheets } from "./laySheets";
import { nameVerbs } from "./nameVerbs";
import { printDownTo } from "./printAreaVerb";
import { selectPlace } from "./selectVerb";
import { tableVerbs } from "./tableVerbs";
import { watchWorkbook } from "./watchVerb";

/** The workbook that is open in Excel. */
export const excelHost = (): WorkbookHost => ({
  ...tableVerbs,
  ...nameVerbs,
  lay: (sheets) => excelRun((context) => laySheets(context, sheets)),
  watch: watchWorkbook,
  printDownTo,
  select: selectPlace,
  copy: copyWorkbook,
  openCopy: async (base64) => {
    try {
      await Excel.createWorkbook(base64);
    } catch (problem) {
      throw asHostProblem(problem);
    }
  },
});
