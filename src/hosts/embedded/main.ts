import "@univerjs/preset-sheets-core/lib/index.css";
import "@univerjs/preset-sheets-conditional-formatting/lib/index.css";
import "@univerjs/preset-sheets-data-validation/lib/index.css";
import "@univerjs/preset-sheets-filter/lib/index.css";
import "@univerjs/preset-sheets-note/lib/index.css";
import "@univerjs/preset-sheets-sort/lib/index.css";
import "@univerjs/preset-sheets-table/lib/index.css";
import "./page/page.css";
import { demoWorkbook } from "../../demo/demoWorkbook";
import { excelHost } from "../excel/excelHost";
import { startPage } from "./page/startPage";

startPage(() => excelHost().lay(demoWorkbook())).catch((problem: unknown) => {
  const notice = document.getElementById("notice");
  if (!notice) throw problem;
  notice.textContent = problem instanceof Error ? problem.message : String(problem);
  notice.hidden = false;
});
