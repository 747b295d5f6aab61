import type { TableRow } from "../../workbook/plan";
import { wanted } from "../../workbook/tables";
import { number, positive, text } from "../job/cells";
import type { PieceWanted } from "./jobs";

/** The piece of a line of the cut list, with its spare ones; none of a line that cannot be read. */
export function pieceOf(row: TableRow, spares: number): readonly PieceWanted[] {
  const [thickness, width, length, count] = [wanted.thickness, wanted.width, wanted.length, wanted.count].map(
    (heading) => positive(row[heading]),
  );
  if (thickness == null || width == null || length == null || count == null || !Number.isInteger(count)) return [];
  const name = text(row[wanted.piece]) || `${thickness} x ${width} x ${length}`;
  return [{ name, thickness, width, length, count: Math.round(count * (1 + spares / 100)) }];
}

/** Board feet of a line. */
export const volumeOf = (row: TableRow): number =>
  [wanted.thickness, wanted.width, wanted.length, wanted.count].reduce(
    (product, heading) => product * (number(row[heading]) ?? 0),
    1 / 12,
  );

/** True when a line says something, so that it is missed when it cannot be read. */
export const saysPiece = (row: TableRow): boolean =>
  [wanted.piece, wanted.thickness, wanted.width, wanted.length, wanted.count].some(
    (heading) => text(row[heading]) !== "",
  );
