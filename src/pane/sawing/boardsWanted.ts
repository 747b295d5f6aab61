import type { CellValue, TableRow } from "../../workbook/plan";
import { board } from "../../workbook/tables";
import { number, text } from "../job/cells";
import { short } from "../figures";

/** The boards that the plan may saw, as the sheet Mill has them, with headings; a line that says nothing is left out. */
export function boardsWanted(rows: readonly TableRow[]): readonly (readonly CellValue[])[] {
  const lines = rows.filter((row) => text(row[board.width]) !== "");
  const finished = lines.some((row) => text(row[board.finished]) !== "");
  const headings = [
    ...(finished ? [["Finished, in", board.finished] as const] : []),
    ["At the saw, in", board.thickness] as const,
    ["Width, in", board.width] as const,
    ["Price per MBF", board.price] as const,
  ];
  return [
    headings.map(([heading]) => heading),
    ...lines.map((row) =>
      headings.map(([, heading]) => {
        const cell = heading === board.thickness ? (row[heading] ?? row[board.sawn]) : row[heading];
        const value = number(cell);
        return value === null ? text(cell) : heading === board.price ? short(value) : String(Number(value.toFixed(3)));
      }),
    ),
  ];
}

/** True when any of them has a price, so that all need one. */
export const arePriced = (rows: readonly TableRow[]): boolean =>
  rows.some((row) => [board.price, board.each].some((heading) => number(row[heading]) !== null));
