import type { IWorkbookData } from "@univerjs/core";
import { NAMESPACE } from "../../../functions/names";
import { Calculation } from "../engine/calculation";
import { Cells } from "../engine/cells";
import { growTablesOnEntry } from "../engine/growingTables";
import { startSpreadsheet } from "../engine/spreadsheet";
import { keepSheetOfTableReferences } from "../engine/tableReferences";
import { Tables } from "../engine/tables";
import { functionCollector } from "../functions/collector";
import type { FunctionsFile } from "../functions/metadata";
import { registerFunctions } from "../functions/registrar";
import { Sentences } from "../functions/sentences";
import { standInForExcel } from "../standin/excel";
import { standInForOffice } from "../standin/office";
import { bar } from "./bar";
import { openBrowserStorage } from "./browserStorage";
import { errorLine } from "./errorLine";
import { fileFromBase64, handOver } from "./handOver";
import { pageHook } from "./hook";
import { keeper } from "./keeper";
import { loadScript } from "./loadScript";
import { CannotOpen, openedFile, saved, type SavedWorkbook } from "./saved";
import { resizable } from "./separator";

const PANE_WIDTH = 350;
const FIRST_SHEET = "first";
/** What Excel opens with, too: a workbook of one empty sheet. */
const EMPTY: Partial<IWorkbookData> = {
  sheetOrder: [FIRST_SHEET],
  sheets: { [FIRST_SHEET]: { id: FIRST_SHEET, name: "Sheet1", rowCount: 1000, columnCount: 52 } },
};
const DEMO_NOT_LAID = "The demo could not be laid out";

/** A name that an add-in gives to the copy it opens; Excel itself has no use for it. */
declare global {
  var woodlotCopyName: string | undefined;
}

/**
 * Brings up the page: the grid, the functions in its cells, the workbook that was saved here or else the first contents,
 * the stand-in for Office.js, and last the task pane, which finds everything in place as it would in Excel.
 * @param firstContents lays what a new workbook holds
 */
export async function startPage(firstContents: () => Promise<void>): Promise<void> {
  const part = (id: string) => document.getElementById(id) as HTMLElement;
  const dark = matchMedia("(prefers-color-scheme: dark)");
  const spreadsheet = startSpreadsheet(part("sheet"), dark.matches);
  const { api } = spreadsheet;
  dark.addEventListener("change", () => api.toggleDarkMode(dark.matches));

  const cells = new Cells(spreadsheet);
  const tables = new Tables(cells);
  keepSheetOfTableReferences((id) => cells.workbook.getSheetBySheetId(id)?.getSheetName());
  const sentences = new Sentences();
  let workbooks = 0;
  const openWorkbook = (data: Partial<IWorkbookData>) => {
    const before = api.getActiveWorkbook();
    workbooks += 1;
    api.createWorkbook({ name: "Woodlot", ...data, id: `workbook-${workbooks}` });
    if (before) api.disposeUnit(before.getId());
  };
  openWorkbook(EMPTY);
  const calculation = new Calculation(spreadsheet, () => sentences.clear());

  const { implementations, runtime } = functionCollector();
  Object.assign(globalThis, { CustomFunctions: runtime });
  const [file] = await Promise.all([functionsFile(), loadScript("../functions.js")]);
  registerFunctions(spreadsheet, NAMESPACE, file, implementations, sentences);

  const engine = { spreadsheet, calculation, cells, tables };
  const { excel, syncs } = standInForExcel(engine, (base64) =>
    handOver(fileFromBase64(base64), globalThis.woodlotCopyName ?? "Woodlot copy.xlsx"),
  );
  const pane = part("pane") as HTMLIFrameElement;
  Object.assign(globalThis, { Excel: excel, Office: standInForOffice(() => pane.focus()) });

  const keep = keeper(await openBrowserStorage(), () => cells.workbook.save(), (state) => tools.tellSaved(state));
  const open = async ({ workbook }: SavedWorkbook) => {
    openWorkbook(workbook);
    calculation.all();
    await calculation.settled();
  };
  const layFirst = async () => {
    try {
      await firstContents();
      if (cells.workbook.getNumSheets() > 1) cells.workbook.deleteSheet(FIRST_SHEET);
    } catch (problem) {
      tools.tell(`${DEMO_NOT_LAID}: ${messageOf(problem)}`);
    }
    await calculation.settled();
  };
  const startOver = async () => {
    openWorkbook(EMPTY);
    await layFirst();
    reloadPane();
  };
  const reloadPane = () => pane.contentWindow?.location.reload();
  const tools = bar(part("bar"), {
    save: () => handOver(jsonFile(saved(cells.workbook.save(), new Date().toISOString())), "Woodlot workbook.json"),
    open: async (text) => {
      await open(openedFile(text));
      reloadPane();
    },
    startOver,
    saveKeptAside: async () => handOver(jsonFile(await keep.keptAside()), "Woodlot workbook kept aside.json"),
  });

  const restored = await keep.restore().catch((problem: unknown) => {
    tools.tellKeptAside(messageOf(problem));
    return undefined;
  });
  if (restored) {
    await open(restored).catch(async () => {
      await keep.keepAside();
      tools.tellKeptAside("The workbook saved in this browser would not open.");
      await startOver();
    });
  } else await layFirst();
  api.onCommandExecuted((command, options) => {
    if (isChange(command.id, options)) keep.changed();
  });
  if (!restored) keep.changed();
  document.addEventListener("visibilitychange", () => void keep.flush());
  addEventListener("pagehide", () => void keep.flush());

  growTablesOnEntry(spreadsheet, cells, tables, calculation);
  errorLine(part("sentence"), spreadsheet, cells, calculation, sentences);
  resizable(part("separator"), pane, PANE_WIDTH);
  Object.assign(globalThis, { woodlotPage: pageHook(cells, tables, calculation, { syncs, saved: () => keep.flush() }) });
  pane.src = "pane.html";
  document.body.dataset.ready = "true";
}

async function functionsFile(): Promise<FunctionsFile> {
  const answer = await fetch("../functions.json");
  if (!answer.ok) throw new Error("The list of functions could not be read. Reload the page.");
  return (await answer.json()) as FunctionsFile;
}

/** What alters the workbook; calculated answers and moves of the selection do not. */
const isChange = (id: string, options: { onlyLocal?: boolean } | undefined): boolean =>
  id.includes(".mutation.") && !options?.onlyLocal && !id.startsWith("formula.");

const jsonFile = (contents: unknown): Blob => new Blob([JSON.stringify(contents)], { type: "application/json" });

const messageOf = (problem: unknown): string =>
  problem instanceof CannotOpen || problem instanceof Error ? problem.message : String(problem);
