import type { CellValue } from "../../workbook/plan";
import { dataTable } from "../components/dataTable";
import { figure } from "../figures";

/** An answer of the sheet as a table that opens; nothing to open where there is none. */
export function choiceTable(caption: string, opens: string, rows: readonly (readonly CellValue[])[]) {
  const [headings = [], ...choices] = rows.filter(([first]) => first !== null && first !== "");
  if (choices.length === 0) return "";
  return dataTable(
    caption,
    headings.map(shown),
    choices.map((row) => row.map(shown)),
    opens,
  );
}

const shown = (cell: CellValue): string => (typeof cell === "number" ? figure(cell, 1) : String(cell ?? ""));
