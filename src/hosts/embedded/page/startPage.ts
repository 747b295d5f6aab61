import { Calculation } from "../engine/calculation";
import { Cells } from "../engine/cells";
import { growTablesOnEntry } from "../engine/growingTables";
import { type Spreadsheet, startSpreadsheet } from "../engine/spreadsheet";
import { keepSheetOfTableReferences } from "../engine/tableReferences";
import { Tables } from "../engine/tables";
import { Sentences } from "../functions/sentences";
import { standInForExcel } from "../standin/excel";
import { standInForOffice } from "../standin/office";
import { bar } from "./bar";
import { noStorage, openBrowserStorage } from "./browserStorage";
import { errorLine } from "./errorLine";
import { fileFromBase64, handOver } from "./handOver";
import { pageHook } from "./hook";
import { type Keeper, keeper } from "./keeper";
import { loadFunctions } from "./loadFunctions";
import { openedFile, saved, type SavedWorkbook } from "./saved";
import { resizable } from "./separator";
import { Workbooks } from "./workbooks";

const PANE_WIDTH = 350;

/** The name of the next copy that is handed over as a file; in Excel the user names it on saving. */
declare global {
  var woodlotCopyName: string | undefined;
}

/**
 * Brings up the page: the grid, the functions in its cells, the stand-in for Office.js, the workbook that was saved here
 * or else the first contents, and last the task pane, which finds everything in place as it would in Excel.
 * @param firstContents lays what a new workbook holds
 */
export async function startPage(firstContents: () => Promise<void>): Promise<void> {
  const part = (id: string) => document.getElementById(id) as HTMLElement;
  const pane = part("pane") as HTMLIFrameElement;
  const spreadsheet = startInColors(part("sheet"));
  const cells = new Cells(spreadsheet);
  const tables = new Tables(cells);
  const sentences = new Sentences();
  const workbooks = new Workbooks(spreadsheet);
  keepSheetOfTableReferences((id) => cells.workbook.getSheetBySheetId(id)?.getSheetName());
  workbooks.first();
  const calculation = new Calculation(spreadsheet, () => sentences.clear());
  await loadFunctions(spreadsheet, sentences);

  const { excel, syncs } = standInForExcel({ spreadsheet, calculation, cells, tables }, (base64) =>
    handOver(fileFromBase64(base64), globalThis.woodlotCopyName ?? "Woodlot copy.xlsx"),
  );
  Object.assign(globalThis, { Excel: excel, Office: standInForOffice(() => pane.focus()) });

  const layFirst = async () => {
    try {
      await firstContents();
      workbooks.dropFirstSheet();
    } catch (problem) {
      tools.tell(`The demo could not be laid out: ${messageOf(problem)}`);
    }
    await calculation.settled();
  };
  const startOver = async () => {
    await workbooks.open(calculation);
    await layFirst();
  };
  const reloadPane = () => pane.contentWindow?.location.reload();
  const snapshot = () => cells.workbook.save();
  const tools = bar(part("bar"), {
    save: () => handOver(jsonFile(saved(snapshot(), new Date().toISOString())), "Woodlot workbook.json"),
    open: async (text) => {
      await workbooks.open(calculation, openedFile(text).workbook);
      reloadPane();
    },
    startOver: async () => {
      await startOver();
      reloadPane();
    },
    saveKeptAside: async () => handOver(jsonFile(await keep.keptAside()), "Woodlot workbook kept aside.json"),
  });
  const keep = keeper(await openBrowserStorage().catch(() => noStorage), snapshot, (state) => tools.tellSaved(state));

  const restored = await keep.restore().catch((problem: unknown) => {
    tools.tellKeptAside(messageOf(problem));
    return undefined;
  });
  if (!restored) await layFirst();
  else if (!(await opens(restored))) {
    await keep.keepAside();
    tools.tellKeptAside("The workbook saved in this browser would not open.");
    await startOver();
  }
  saveChanges(keep, spreadsheet.api);
  if (!restored) keep.changed();

  growTablesOnEntry(spreadsheet, cells, tables, calculation);
  errorLine(part("sentence"), spreadsheet, cells, calculation, sentences);
  resizable(part("separator"), pane, PANE_WIDTH);
  const hook = pageHook(cells, tables, calculation, { syncs, saved: () => keep.flush() });
  Object.assign(globalThis, { woodlotPage: hook });
  pane.src = "pane.html";
  document.body.dataset.ready = "true";

  async function opens({ workbook }: SavedWorkbook): Promise<boolean> {
    return workbooks.open(calculation, workbook).then(
      () => true,
      () => false,
    );
  }
}

/** Follows the system's choice of light or dark. */
function startInColors(container: HTMLElement): Spreadsheet {
  const dark = matchMedia("(prefers-color-scheme: dark)");
  const spreadsheet = startSpreadsheet(container, dark.matches);
  dark.addEventListener("change", () => spreadsheet.api.toggleDarkMode(dark.matches));
  return spreadsheet;
}

/** Saves after every change of the workbook; calculated answers and moves of the selection are none. */
function saveChanges(keep: Keeper, api: Spreadsheet["api"]): void {
  api.onCommandExecuted(({ id }, options) => {
    if (id.includes(".mutation.") && !options?.onlyLocal && !id.startsWith("formula.")) keep.changed();
  });
  document.addEventListener("visibilitychange", () => void keep.flush());
  addEventListener("pagehide", () => void keep.flush());
}

const jsonFile = (contents: unknown): Blob => new Blob([JSON.stringify(contents)], { type: "application/json" });

const messageOf = (problem: unknown): string => (problem instanceof Error ? problem.message : String(problem));
