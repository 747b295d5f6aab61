import { cellAt } from "../address";
import type { CopiedSheet } from "../host";

/** A cell that shows an error instead of a value. */
export interface ErrorCell {
  readonly sheet: string;
  readonly at: string;
  readonly error: string;
  /** What that means, and what to do about it. */
  readonly says: string;
}

const meanings: Readonly<Record<string, string>> = {
  "#VALUE!": "Something that this cell reads cannot be used. Select the cell and open its flag to read what.",
  "#N/A": "There is not enough data for this cell yet, or a published table does not reach that far.",
  "#NAME?":
    "The add-in's functions were not there when this cell was calculated. Press Ctrl+Alt+F9 to calculate again.",
  "#SPILL!": "Something stands in the way of this answer. Clear the cells below and to the right of it.",
  "#REF!": "This cell reads a place that was deleted. Build the workbook anew on the Setup view.",
  "#DIV/0!": "This cell divides by a cell that is blank or 0.",
  "#BUSY!": "This cell is still calculating. Wait a moment, then make the copy again.",
};

const ERROR = /^#(?:[A-Z]+[A-Z0-9_/]*[!?]|N\/A|DIV\/0!)$/;

/** Every cell that shows an error, in the order of the sheets. */
export const errorCells = (sheets: readonly CopiedSheet[]): readonly ErrorCell[] =>
  sheets.flatMap(({ name, cells }) =>
    cells.flatMap((row, r) =>
      row.flatMap(({ value }, c): ErrorCell[] => {
        if (typeof value !== "string" || !ERROR.test(value)) return [];
        const says = meanings[value] ?? "This cell shows an error. Select it and open its flag to read why.";
        return [{ sheet: name, at: cellAt(r, c), error: value, says }];
      }),
    ),
  );
