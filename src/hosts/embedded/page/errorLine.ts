import { cellAt } from "../../../workbook/address";
import type { Calculation } from "../engine/calculation";
import type { Cells } from "../engine/cells";
import type { Spreadsheet } from "../engine/spreadsheet";
import { isErrorText } from "../functions/errorText";
import type { Sentences } from "../functions/sentences";

/**
 * Shows the sentence behind the selected cell's error, where Excel would show it in the cell's flag.
 * An error that none of our functions said is left without one.
 */
export function errorLine(
  line: HTMLElement,
  spreadsheet: Spreadsheet,
  cells: Cells,
  calculation: Calculation,
  sentences: Sentences,
): void {
  const { api } = spreadsheet;
  const show = async () => {
    await calculation.settled();
    const said = selectedSentence(cells, sentences);
    if (line.textContent === said) return;
    line.textContent = said;
    line.classList.toggle("has-error", said !== "");
  };
  api.addEvent(api.Event.SelectionChanged, () => void show());
  api.getFormula().calculationEnd(() => void show());
}

function selectedSentence(cells: Cells, sentences: Sentences): string {
  const range = cells.workbook.getActiveRange();
  if (!range) return "";
  const [sheetId, row, column] = [range.getSheetId(), range.getRow(), range.getColumn()];
  const value = cells.values({ sheetId, row, column, rows: 1, columns: 1 })[0]?.[0];
  if (!isErrorText(value)) return "";
  const sentence = sentences.find(sheetId, row, column, value);
  return sentence ? `${cellAt(row, column)}: ${sentence}` : "";
}
