import type { CellValue, SheetPlan, TableRow } from "./plan";

/** A table as it stands in the workbook now. */
export interface TableContent {
  readonly name: string;
  readonly sheet: string;
  readonly headings: readonly string[];
  readonly rows: readonly TableRow[];
}

/** A cell of a copy: what it shows, and what made it. */
export interface CopiedCell {
  readonly value: CellValue;
  /** The formula in the cell, with its equals sign; absent for a plain value and for a cell filled by a spill. */
  readonly formula?: string;
  readonly format: string;
}

/** How a sheet prints. */
export interface PrintedPage {
  readonly landscape: boolean;
  /** Of the size on the screen; left out, pages are made one page wide. [%] */
  readonly scale?: number;
  /** All that is printed; left out, whatever the sheet holds. */
  readonly area?: string;
  /** Rows, counted from 1, that every page repeats on top. */
  readonly titleRows?: readonly [first: number, last: number];
}

export interface CopiedSheet {
  readonly name: string;
  readonly cells: readonly (readonly CopiedCell[])[];
  /** Tables on the sheet, each with its header row included in the address, such as "A5:N137". */
  readonly tables: readonly { readonly name: string; readonly address: string }[];
  /** Named cells on the sheet; left out by a host that does not know them. */
  readonly names?: readonly { readonly name: string; readonly at: string }[];
  /** Left out by a host that does not know it. */
  readonly page?: PrintedPage;
}

export type Place =
  | { readonly sheet: string; readonly at: string }
  | { readonly table: string; readonly row: number; readonly heading: string };

/**
 * The one road from the add-in to a spreadsheet, in the add-in's own words. Row numbers count from 0 below the heading.
 * Every verb rejects with a HostProblem whose message a person can read.
 */
export interface WorkbookHost {
  /** Lays sheets in order; a sheet of the same name is replaced, with its tables and names. Values only where planned. */
  lay(sheets: readonly SheetPlan[]): Promise<void>;
  hasTable(name: string): Promise<boolean>;
  readTable(name: string): Promise<TableContent>;
  /** Adds rows below the last one; computed columns are filled with their formulas. One undo step where the host can. */
  appendRows(table: string, rows: readonly TableRow[]): Promise<void>;
  /** Changes the named cells of one row and no others. */
  updateRow(table: string, row: number, changes: TableRow): Promise<void>;
  /** Changes the named cells of several rows at once. */
  updateRows(table: string, changes: readonly { readonly row: number; readonly changes: TableRow }[]): Promise<void>;
  deleteRow(table: string, row: number): Promise<void>;
  readNames(names: readonly string[]): Promise<Readonly<Record<string, CellValue>>>;
  writeNames(values: Readonly<Record<string, CellValue>>): Promise<void>;
  /** The whole spilled answer whose formula stands in the named cell; one cell when it is an error such as "#VALUE!". */
  readSpill(name: string): Promise<readonly (readonly CellValue[])[]>;
  /** Calls back, after things settle, when cells were changed by anyone. Resolves to the way to stop. */
  watch(onChange: () => void): Promise<() => void>;
  /**
   * Lets a sheet print no more and no fewer rows than an area such as "A1:G38", where what it prints now has the same
   * corner and columns. Does nothing where there is no such sheet.
   */
  printDownTo(sheet: string, area: string): Promise<void>;
  select(place: Place): Promise<void>;
  /** Every used cell of every sheet, for a copy. */
  copy(): Promise<readonly CopiedSheet[]>;
  /** Opens or hands over an .xlsx file, given in base64, as a new workbook. */
  openCopy(base64: string, fileName: string): Promise<void>;
}

/** Something the spreadsheet could not do, told as what happened and what to do next. */
export class HostProblem extends Error {
  override readonly name = "HostProblem";
  constructor(
    readonly kind: "missing table" | "missing name" | "busy" | "refused",
    message: string,
  ) {
    super(message);
  }
}
