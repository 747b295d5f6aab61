import type { Zone } from "../../../workbook/address";

/** A rectangle of cells on a sheet, counted from 0. */
export interface Place extends Zone {
  readonly sheetId: string;
}

export interface EngineRange {
  startRow: number;
  startColumn: number;
  endRow: number;
  endColumn: number;
}

/** The rectangle as the grid writes it, with its last row and column. */
export const toEngine = ({ row, column, rows, columns }: Zone): EngineRange => ({
  startRow: row,
  startColumn: column,
  endRow: row + rows - 1,
  endColumn: column + columns - 1,
});

export const fromEngine = ({ startRow, startColumn, endRow, endColumn }: EngineRange): Zone => ({
  row: startRow,
  column: startColumn,
  rows: endRow - startRow + 1,
  columns: endColumn - startColumn + 1,
});

export const contains = (outer: Zone, row: number, column: number): boolean =>
  row >= outer.row && row < outer.row + outer.rows && column >= outer.column && column < outer.column + outer.columns;
