import type { CellValue, EntryRule } from "../plan";

/** One assumption: its named cell, its unit and what it does. */
export interface Setting {
  readonly name: string;
  readonly label: string;
  readonly value: CellValue;
  readonly unit: string;
  readonly comment: string;
  readonly rule?: EntryRule;
  readonly format?: string;
}
