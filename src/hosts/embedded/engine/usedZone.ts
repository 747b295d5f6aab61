import type { ICellData, Nullable, ObjectMatrix } from "@univerjs/core";
import type { Zone } from "../../../workbook/address";
import { holdsValue } from "./plainValue";

/** What formulas spilled into the cells of a sheet, by row and column. */
export type SpilledCells = Partial<Record<number, Partial<Record<number, ICellData>>>>;

/** The smallest rectangle that holds every used cell of a sheet; undefined for an empty one. */
export function usedZone(
  cells: ObjectMatrix<Nullable<ICellData>>,
  spilled: SpilledCells | undefined,
  valuesOnly: boolean,
): Zone | undefined {
  let [top, left, bottom, right] = [Infinity, Infinity, -1, -1];
  const include = (row: number, column: number) => {
    top = Math.min(top, row);
    left = Math.min(left, column);
    bottom = Math.max(bottom, row);
    right = Math.max(right, column);
  };
  cells.forValue((row, column, cell) => {
    if (holdsValue(cell) || cell?.f || cell?.si || (!valuesOnly && cell?.s)) include(row, column);
  });
  for (const [row, line] of Object.entries(spilled ?? {})) {
    for (const column of Object.keys(line ?? {})) include(Number(row), Number(column));
  }
  if (bottom < 0) return undefined;
  return { row: top, column: left, rows: bottom - top + 1, columns: right - left + 1 };
}
