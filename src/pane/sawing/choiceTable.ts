import type { CellValue } from "../../workbook/plan";
import { dataTable } from "../components/dataTable";
import { figure } from "../figures";

/** An answer of the sheet as a table that opens; nothing to open where there is none. */
export function choiceTable(caption: string, opens: string, rows: readonly (readonly CellValue[])[]) {
  const [headings = [], ...choices] = rows.filter(([first]) => first !== null && first !== "");
  if (choices.length === 0) return "";
  return dataTable(
    caption,
    headings.map((heading) => String(heading ?? "")),
    choices.map((row) => row.map((cell, i) => shown(cell, String(headings[i] ?? "")))),
    opens,
  );
}

const shown = (cell: CellValue, heading: string): string =>
  typeof cell === "number" ? figure(cell, decimalsOf(heading)) : String(cell ?? "");

const decimalsOf = (heading: string) => (/pieces/i.test(heading) ? 0 : heading.includes("$") ? 2 : 1);
