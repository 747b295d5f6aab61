import type { Calculation } from "./calculation";
import type { Cells } from "./cells";
import type { Spreadsheet } from "./spreadsheet";
import type { GridTable, Tables } from "./tables";

/**
 * What a person types or pastes directly under a table belongs to it, as in Excel: the table grows, its computed columns
 * are filled, formats and entry rules go down (https://support.microsoft.com/office/resize-a-table-e65ae4bb-e44b-43f4-ad8b-7d68784f1165).
 */
export function growTablesOnEntry(
  spreadsheet: Spreadsheet,
  cells: Cells,
  tables: Tables,
  calculation: Calculation,
): void {
  const { api } = spreadsheet;
  let growing = Promise.resolve();
  const look = (sheetId: string, row: number, column: number) => {
    growing = growing.then(() => grow(sheetId, row, column)).catch(() => undefined);
  };

  api.addEvent(api.Event.SheetEditEnded, ({ worksheet, row, column, isConfirm }) => {
    if (isConfirm) look(worksheet.getSheetId(), row, column);
  });
  api.addEvent(api.Event.ClipboardPasted, () => {
    const range = cells.workbook.getActiveRange();
    if (range) look(range.getSheetId(), range.getRow(), range.getColumn());
  });

  async function grow(sheetId: string, row: number, column: number): Promise<void> {
    await calculation.settled();
    const table = row > 0 ? tables.at(sheetId, row - 1, column) : undefined;
    if (!table || !isDirectlyBelow(table, row)) return;
    const rows = filledRowsBelow(table);
    if (rows > 0) await tables.extend(table, rows);
  }

  function filledRowsBelow({ place }: GridTable): number {
    let rows = 0;
    while (!cells.blank({ ...place, row: place.row + place.rows + rows, rows: 1 })) rows += 1;
    return rows;
  }
}

const isDirectlyBelow = ({ place }: GridTable, row: number): boolean => row === place.row + place.rows;
