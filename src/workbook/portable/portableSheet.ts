import type { PrintedPage } from "../host";
import type { CellValue } from "../plan";

/** A cell of a file: a value and how it looks, never a formula. */
export interface PortableCell {
  readonly value: CellValue;
  readonly format?: string;
  readonly bold?: boolean;
}

/** A sheet of a file that needs no add-in. */
export interface PortableSheet {
  readonly name: string;
  readonly cells: readonly (readonly PortableCell[])[];
  /** Widths in characters of columns A, B, C ... */
  readonly widths: readonly number[];
  readonly tables: readonly {
    readonly name: string;
    readonly address: string;
    readonly headings: readonly string[];
  }[];
  readonly names: readonly { readonly name: string; readonly at: string }[];
  readonly page?: PrintedPage;
}

/** Makes an .xlsx file of sheets. */
export type WriteFile = (sheets: readonly PortableSheet[]) => Promise<Uint8Array>;

/** Counts the formulas in an .xlsx file, and finds the add-in's name among them. */
export type ReadFormulas = (file: Uint8Array) => Promise<readonly string[]>;
