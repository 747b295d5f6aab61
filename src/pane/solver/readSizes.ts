import { Problem } from "../../core/basis/problem";
import { products } from "../../core/sawing/resawn";
import { widthsNamed } from "../../core/sawing/widthsNamed";
import type { CellValue, TableRow } from "../../workbook/plan";
import { board } from "../../workbook/tables";
import { positive, text } from "../job/cells";
import type { SizeWanted } from "./jobs";

/** The boards that are wanted, a size for each width that a line names; or the sentence that says which line is unread. */
export function sizesFrom(rows: readonly TableRow[]): readonly SizeWanted[] | string {
  const sizes: SizeWanted[] = [];
  for (const [i, row] of rows.entries()) {
    if (!saysBoard(row)) continue;
    const line = `Line ${i + 1} of the boards on the sheet Mill`;
    const thickness = thicknessIn(row);
    if (thickness === null)
      return `${line} has no thickness that can be read. Give it in inches, finished or sawn, such as 1.125.`;
    const widths = widthsIn(row[board.width]);
    if (widths.length === 0)
      return `${line} has no width that can be read. Give it in inches, such as 6, or as 4 to 12 by 2, or random.`;
    sizes.push(...widths.map((width) => ({ ...sizeOf(row, thickness), width })));
  }
  return sizes.length > 0 ? sizes : "There are no boards to saw: type them on the sheet Mill, thickness and width.";
}

const saysBoard = (row: TableRow) => Object.values(board).some((heading) => text(row[heading]) !== "");

/** As sawn, where the sheet has not worked the thickness out yet. */
const thicknessIn = (row: TableRow) =>
  positive(row[board.thickness]) ?? (text(row[board.finished]) === "" ? positive(row[board.sawn]) : null);

function sizeOf(row: TableRow, thickness: number): Omit<SizeWanted, "width"> {
  const [length, each, price] = [board.length, board.each, board.price].map((heading) => positive(row[heading]));
  return {
    thickness,
    product: text(row[board.product]) || (products[0]?.title ?? ""),
    ...(length != null && { length }),
    ...(each != null && { each }),
    ...(price != null && { price }),
  };
}

function widthsIn(cell: CellValue | undefined): readonly number[] {
  const width = positive(cell);
  if (width !== null) return [width];
  try {
    return widthsNamed(text(cell)) ?? [];
  } catch (problem) {
    if (problem instanceof Problem) return [];
    throw problem;
  }
}
