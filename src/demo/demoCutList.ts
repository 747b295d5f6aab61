import type { TableRow } from "../workbook/plan";
import { wanted } from "../workbook/tables";

/** An invented shed of 12 by 24 ft: what stands, spans and closes it, at rough green sizes. */
const shed: readonly (readonly [piece: string, thickness: number, width: number, length: number, count: number])[] = [
  ["Ridge beam", 6, 8, 30, 1],
  ["Post", 6, 6, 10, 4],
  ["Rafter", 2, 6, 12, 12],
  ["Stud", 2, 4, 8, 20],
  ["Girt", 2, 4, 14, 6],
  ["Roof board", 1, 8, 12, 20],
  ["Siding", 1, 10, 10, 24],
  ["Trim", 1, 4, 8, 10],
];

export const demoCutList: readonly TableRow[] = shed.map(([piece, thickness, width, length, count]) => ({
  [wanted.piece]: piece,
  [wanted.thickness]: thickness,
  [wanted.width]: width,
  [wanted.length]: length,
  [wanted.count]: count,
}));
