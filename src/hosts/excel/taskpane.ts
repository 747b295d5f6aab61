import { mountPane } from "../../pane/mountPane";
import type { DraftStore } from "../../pane/entry/draft";
import { excelHost } from "./excelHost";
import { paneThemeFor } from "./officeTheme";
import { associateRibbon } from "./ribbonActions";

/** The oldest Excel that knows all that the add-in uses. */
const NEEDED = { set: "ExcelApi", version: "1.12", excel: "Excel 2021, Excel on the web or Microsoft 365" } as const;

/** Seeds that are drawn from: few enough digits to copy from a printed list. */
const SEEDS = 1_000_000;

const OPEN_IN_EXCEL =
  "Open this in Excel: Woodlot Reckoner works in the task pane of a workbook. Start Excel, then choose it under Home, Add-ins.";
const NO_OFFICE = `${OPEN_IN_EXCEL} If you are in Excel, Office's own script could not be loaded: check the connection, then open the pane again.`;
const TOO_OLD = `This Excel is too old for Woodlot Reckoner. It needs ${NEEDED.excel}.`;

function start(): void {
  const root = document.getElementById("pane") ?? document.body.appendChild(document.createElement("main"));
  if (typeof Office === "undefined") return say(root, NO_OFFICE);
  void Office.onReady(({ host }) => {
    // Outside Excel, Office's script is ready all the same and names no host.
    if (!host) return say(root, OPEN_IN_EXCEL);
    if (!Office.context.requirements.isSetSupported(NEEDED.set, NEEDED.version)) return say(root, TOO_OLD);

    const theme = paneThemeFor((Office.context.officeTheme as Office.OfficeTheme | undefined)?.bodyBackgroundColor);
    const drafts = browserStorage();
    const seed = 1 + Math.floor(Math.random() * SEEDS);
    const options = { seed, newWorker, ...(theme && { theme }), ...(drafts && { drafts }) };
    associateRibbon(mountPane(root, excelHost(), options));
  });
}

function say(root: HTMLElement, sentence: string): void {
  const line = document.createElement("p");
  line.setAttribute("role", "status");
  line.textContent = sentence;
  root.replaceChildren(line);
}

/** The worker is a file of its own, loaded when long work is first asked for. */
const newWorker = () => new Worker(new URL(/* webpackChunkName: "solver" */ "./solver.ts", import.meta.url));

/** A browser may forbid storage to a frame; half-typed lines are then not kept. */
function browserStorage(): DraftStore | undefined {
  try {
    return window.localStorage;
  } catch {
    return undefined;
  }
}

start();
