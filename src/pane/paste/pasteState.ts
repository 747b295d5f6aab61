import type { PastedColumns } from "../../workbook/pastedColumns";

export interface PasteState {
  readonly text: string;
  /** Columns as the user matched them; undefined while they are found by themselves. */
  readonly columns: PastedColumns | undefined;
  readonly goes: "add" | "new";
  readonly stand: string;
  readonly acres: string;
  readonly gauge: string;
  /** What came of the last tally that was taken in; "" before. */
  readonly result: string;
}

export const emptyPaste: PasteState = {
  text: "",
  columns: undefined,
  goes: "add",
  stand: "",
  acres: "",
  gauge: "10",
  result: "",
};
