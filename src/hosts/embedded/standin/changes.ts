import { SetRangeValuesMutation } from "@univerjs/sheets";
import { addressOf } from "../../../workbook/address";
import type { Engine } from "./engine";

type CellMatrix = Record<number, Record<number, object | null | undefined> | undefined>;
export type Changed = { readonly sheetId: string; readonly address: string };

/** Every property of a cell that is content and not looks. */
const CONTENT = ["v", "f", "p", "si"];

/**
 * Tells when cells were changed by a person or by code, one report for each sheet after a burst of changes. Calculated
 * answers are not changes: https://learn.microsoft.com/office/dev/add-ins/excel/excel-add-ins-worksheets#detect-data-changes
 */
export function reportChanges({ spreadsheet }: Engine, report: (changes: readonly Changed[]) => void): void {
  const pending = new Map<string, { top: number; left: number; bottom: number; right: number }>();
  spreadsheet.api.onCommandExecuted(({ id, params }, options) => {
    if (id !== SetRangeValuesMutation.id || options?.onlyLocal) return;
    const { subUnitId, cellValue } = params as { subUnitId: string; cellValue?: CellMatrix };
    for (const [row, line] of Object.entries(cellValue ?? {})) {
      for (const [column, cell] of Object.entries(line ?? {})) {
        if (cell && !CONTENT.some((key) => key in cell)) continue;
        include(subUnitId, Number(row), Number(column));
      }
    }
  });

  function include(sheetId: string, row: number, column: number): void {
    if (pending.size === 0) setTimeout(flush, 0);
    const zone = pending.get(sheetId);
    if (!zone) pending.set(sheetId, { top: row, left: column, bottom: row, right: column });
    else {
      zone.top = Math.min(zone.top, row);
      zone.left = Math.min(zone.left, column);
      zone.bottom = Math.max(zone.bottom, row);
      zone.right = Math.max(zone.right, column);
    }
  }

  function flush(): void {
    const changes = [...pending].map(([sheetId, { top, left, bottom, right }]) => ({
      sheetId,
      address: addressOf({ row: top, column: left, rows: bottom - top + 1, columns: right - left + 1 }),
    }));
    pending.clear();
    report(changes);
  }
}
