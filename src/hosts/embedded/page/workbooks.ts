import type { IWorkbookData } from "@univerjs/core";
import type { Calculation } from "../engine/calculation";
import type { Spreadsheet } from "../engine/spreadsheet";

const FIRST_SHEET = "first";

/** What Excel opens with, too: a workbook of one empty sheet. */
const EMPTY: Partial<IWorkbookData> = {
  sheetOrder: [FIRST_SHEET],
  sheets: { [FIRST_SHEET]: { id: FIRST_SHEET, name: "Sheet1", rowCount: 1000, columnCount: 52 } },
};

/** Puts one workbook in the place of another; the grid holds one at a time. */
export class Workbooks {
  private opened = 0;

  constructor(private readonly spreadsheet: Spreadsheet) {}

  /** Opens an empty workbook, which the grid needs before it takes functions. */
  first(): void {
    this.replace(EMPTY);
  }

  /** Opens a saved workbook, or an empty one, and calculates it: what formulas had spilled is not saved. */
  async open(calculation: Calculation, data: Partial<IWorkbookData> = EMPTY): Promise<void> {
    await calculation.settled();
    await quiet();
    this.replace(data);
    calculation.all();
    await calculation.settled();
  }

  /** Takes away the empty sheet of a new workbook once others are laid. */
  dropFirstSheet(): void {
    const workbook = this.spreadsheet.api.getActiveWorkbook();
    if (workbook && workbook.getNumSheets() > 1) workbook.deleteSheet(FIRST_SHEET);
  }

  private replace(data: Partial<IWorkbookData>): void {
    const { api } = this.spreadsheet;
    const before = api.getActiveWorkbook();
    this.opened += 1;
    // The grid goes on working in what it is given, so it gets a copy: the empty workbook must stay empty.
    api.createWorkbook({ name: "Woodlot", ...structuredClone(data), id: `workbook-${this.opened}` });
    if (before) api.disposeUnit(before.getId());
  }
}

/** Lets the grid end what it put off to a quiet moment, for it complains when the workbook is gone by then. */
const quiet = (): Promise<void> =>
  new Promise((resolve) => {
    setTimeout(() => requestIdleCallback(() => resolve()), 50);
  });
