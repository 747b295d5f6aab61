import { type ICellData, IUndoRedoService } from "@univerjs/core";
import { SetRangeValuesMutation, SetStyleCommand, SetWorksheetColWidthMutation } from "@univerjs/sheets";
import type { FWorksheet } from "@univerjs/sheets/facade";
import { meet, type Zone } from "../../../workbook/address";
import { cellData } from "./cellData";
import { cellMatrix } from "./cellMatrix";
import { fromEngine, type Place, toEngine } from "./place";
import { holdsValue, type PlainValue, plainValue } from "./plainValue";
import type { Spreadsheet } from "./spreadsheet";
import { type SpilledCells, usedZone } from "./usedZone";

const SPARE_ROWS = 1_000;

/** Reads and writes the cells of the one open workbook. */
export class Cells {
  private inOneStep = false;

  constructor(private readonly spreadsheet: Spreadsheet) {}

  /** Each cell at full precision: what was typed or calculated, or else what a neighbour's answer spilled into it. */
  values(place: Place): PlainValue[][] {
    const sheet = this.worksheet(place.sheetId).getSheet();
    const spilled = this.spilledInto(place.sheetId);
    return grid(place, (row, column) => {
      const own = sheet.getCellRaw(row, column);
      return plainValue(holdsValue(own) ? own : spilled?.[row]?.[column]);
    });
  }

  formulas(place: Place): PlainValue[][] {
    const values = this.values(place);
    const formulas = this.range(place).getFormulas();
    return values.map((row, i) =>
      row.map((value, j) => {
        const formula = formulas[i]?.[j] ?? "";
        return formula === "" ? value : formula;
      }),
    );
  }

  /** What a person sees, number formats applied. */
  texts(place: Place): string[][] {
    const values = this.values(place);
    const shown = this.range(place).getDisplayValues();
    return values.map((row, i) =>
      row.map((value, j) => (typeof value === "boolean" ? String(value).toUpperCase() : String(shown[i]?.[j] ?? ""))),
    );
  }

  formats(place: Place): string[][] {
    const formats = this.range(place).getNumberFormats();
    return formats.map((row) => row.map((format) => format || "General"));
  }

  /** Changes what cells hold, in one step that can be undone; a cell for which nothing is given stays as it is. */
  write(place: Place, cell: (row: number, column: number) => ICellData | undefined): void {
    const value = cellMatrix(place, cell);
    if (!value) return;
    const params = { unitId: this.workbook.getId(), subUnitId: place.sheetId, value };
    this.spreadsheet.api.syncExecuteCommand("sheet.command.set-range-values", params);
  }

  /**
   * Changes only the looks of cells. By the grid's inner command and in the name of its own formatting: any other write
   * without a formula makes the engine forget the formulas of those cells.
   */
  dress(place: Place, style: (row: number, column: number) => ICellData["s"]): void {
    const cellValue = cellMatrix(place, (i, j) => {
      const s = style(i, j);
      return s === undefined ? undefined : { s };
    });
    if (!cellValue) return;
    const params = { unitId: this.workbook.getId(), subUnitId: place.sheetId, cellValue, trigger: SetStyleCommand.id };
    this.spreadsheet.api.syncExecuteCommand(SetRangeValuesMutation.id, params);
  }

  /** Empties what cells hold. Cells that hold nothing are passed over: the grid would measure the rows of each one. */
  empty(place: Place): void {
    const sheet = this.worksheet(place.sheetId).getSheet();
    this.write(place, (i, j) => {
      const cell = sheet.getCellRaw(place.row + i, place.column + j);
      return holdsValue(cell) || cell?.f || cell?.si ? cellData("") : undefined;
    });
  }

  /** Takes the looks off cells that have any. */
  undress(place: Place): void {
    const sheet = this.worksheet(place.sheetId).getSheet();
    this.dress(place, (i, j) => (sheet.getCellRaw(place.row + i, place.column + j)?.s ? null : undefined));
  }

  /** By the grid's inner command: its outer one measures the text of every row again, which takes seconds. */
  async setColumnWidth({ sheetId, ...zone }: Place, pixels: number): Promise<void> {
    const ranges = [toEngine({ ...zone, row: 0, rows: this.worksheet(sheetId).getMaxRows() })];
    await this.run(SetWorksheetColWidthMutation.id, { subUnitId: sheetId, ranges, colWidth: pixels });
  }

  setRowHeight({ sheetId, row, rows }: Place, pixels: number): void {
    this.worksheet(sheetId).setRowHeightsForced(row, rows, pixels);
  }

  /** Makes one step of undo of all that is done meanwhile. */
  async asOneStep(work: () => Promise<void>): Promise<void> {
    if (this.inOneStep) return work();
    this.inOneStep = true;
    const step = this.spreadsheet.injector.get(IUndoRedoService).__tempBatchingUndoRedo(this.workbook.getId());
    try {
      await work();
    } finally {
      step.dispose();
      this.inOneStep = false;
    }
  }

  /** Runs one of the grid's own commands on the open workbook. */
  async run(command: string, params: object): Promise<boolean> {
    return this.spreadsheet.api.executeCommand(command, { unitId: this.workbook.getId(), ...params });
  }

  /** The rectangle into which the formula in this cell spills, or nothing when it stands for itself. */
  spillFrom(sheetId: string, row: number, column: number): Zone | undefined {
    const range =
      this.spreadsheet.formulaData.getArrayFormulaRange()[this.workbook.getId()]?.[sheetId]?.[row]?.[column];
    if (!range) return undefined;
    const [[own]] = this.values({ sheetId, row, column, rows: 1, columns: 1 }) as [[PlainValue]];
    if (own === "#SPILL!") return undefined;
    return fromEngine(range);
  }

  /** The smallest rectangle from A1's side that holds every used cell; undefined for an empty sheet. */
  used(sheetId: string, valuesOnly: boolean): Zone | undefined {
    return usedZone(this.worksheet(sheetId).getSheet().getCellMatrix(), this.spilledInto(sheetId), valuesOnly);
  }

  /** True when none of the cells holds a value or a formula. */
  blank(place: Place): boolean {
    const used = this.used(place.sheetId, true);
    return !used || !meet(used, place) || this.formulas(place).every((row) => row.every((cell) => cell === ""));
  }

  /** Excel's sheets have a million rows; here a sheet gets more of them when they are asked for. */
  range(place: Place) {
    const sheet = this.worksheet(place.sheetId);
    const last = place.row + place.rows;
    if (last > sheet.getMaxRows()) sheet.setRowCount(last + SPARE_ROWS);
    return sheet.getRange(toEngine(place));
  }

  worksheet(sheetId: string): FWorksheet {
    const sheet = this.workbook.getSheetBySheetId(sheetId);
    if (!sheet) throw new Error(`There is no sheet with the id ${sheetId}.`);
    return sheet;
  }

  get workbook() {
    const workbook = this.spreadsheet.api.getActiveWorkbook();
    if (!workbook) throw new Error("No workbook is open.");
    return workbook;
  }

  private spilledInto(sheetId: string) {
    const cells = this.spreadsheet.formulaData.getArrayFormulaCellData()[this.workbook.getId()]?.[sheetId];
    return cells as SpilledCells | undefined;
  }
}

const grid = <T>({ row, column, rows, columns }: Zone, cell: (row: number, column: number) => T): T[][] =>
  Array.from({ length: rows }, (_, i) => Array.from({ length: columns }, (__, j) => cell(row + i, column + j)));
