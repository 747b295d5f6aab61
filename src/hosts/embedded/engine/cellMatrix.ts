import type { ICellData } from "@univerjs/core";
import type { Place } from "./place";

/** Cells by their row and column on the sheet; undefined when there are none. */
export function cellMatrix(place: Place, cell: (row: number, column: number) => ICellData | undefined) {
  const matrix: Record<number, Record<number, ICellData>> = {};
  for (let i = 0; i < place.rows; i += 1) {
    const line: Record<number, ICellData> = {};
    for (let j = 0; j < place.columns; j += 1) {
      const data = cell(i, j);
      if (data) line[place.column + j] = data;
    }
    if (Object.keys(line).length > 0) matrix[place.row + i] = line;
  }
  return Object.keys(matrix).length > 0 ? matrix : undefined;
}
