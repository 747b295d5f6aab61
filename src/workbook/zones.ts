import { zoneAt, type Zone } from "./address";
import type { SheetPlan, TablePlan } from "./plan";

/** The rows a sheet is thought to have when something may grow to its end. */
export const LAST_ROW = 1000;

export interface NamedZone extends Zone {
  readonly what: string;
}

/** A table with its heading row; without rows it still shows one blank one. */
export const tableZone = ({ at, columns, rows }: TablePlan): Zone => ({
  ...zoneAt(at),
  rows: Math.max(rows.length, 1) + 1,
  columns: columns.length,
});

/** Everything a sheet holds or keeps free: a table keeps the row above for its tab and all rows below to grow into. */
export function zonesOf(sheet: SheetPlan): readonly NamedZone[] {
  const blocks = sheet.blocks.map(({ at, cells }) => ({
    what: `block ${at}`,
    ...zoneAt(at),
    rows: cells.length,
    columns: Math.max(...cells.map((row) => row.length)),
  }));
  const tables = sheet.tables.map((table) => {
    const { row, column, columns } = tableZone(table);
    return { what: `table ${table.name}`, row: row - 1, column, columns, rows: LAST_ROW - row };
  });
  const spills = sheet.spills.map(({ name, at, rows, columns }) => ({
    what: `spill ${name}`,
    ...zoneAt(at),
    rows,
    columns,
  }));
  return [...blocks, ...tables, ...spills];
}
