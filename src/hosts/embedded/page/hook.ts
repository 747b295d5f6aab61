import { zoneAt } from "../../../workbook/address";
import type { Calculation } from "../engine/calculation";
import type { Cells } from "../engine/cells";
import type { PlainValue } from "../engine/plainValue";
import type { Place } from "../engine/place";
import type { Tables } from "../engine/tables";

/**
 * Lets a test in the browser see the grid, which is drawn on a canvas and leaves no cell in the page.
 * Addresses are "B4", "A1:C3", or either behind a sheet's name: "Setup!B4".
 */
export interface WoodlotPage {
  read(address: string): Promise<PlainValue[][]>;
  text(address: string): Promise<string[][]>;
  formula(address: string): Promise<PlainValue[][]>;
  settled(): Promise<void>;
  select(address: string): void;
  tables(): { readonly name: string; readonly sheet: string; readonly rows: number }[];
  sheets(): string[];
  /** Middle of a cell, in pixels of the page, for the mouse. */
  middleOf(address: string): { readonly x: number; readonly y: number };
  syncs(): number;
  saved(): Promise<void>;
}

export function pageHook(
  cells: Cells,
  tables: Tables,
  calculation: Calculation,
  more: Pick<WoodlotPage, "syncs" | "saved">,
): WoodlotPage {
  const place = (address: string): Place => {
    const at = address.lastIndexOf("!");
    const name = address.slice(0, Math.max(at, 0)).replace(/^'|'$/g, "");
    const sheet = name ? cells.workbook.getSheetByName(name) : cells.workbook.getActiveSheet();
    if (!sheet) throw new Error(`There is no sheet named "${name}".`);
    return { sheetId: sheet.getSheetId(), ...zoneAt(address.slice(at + 1)) };
  };
  const settledFirst = async <T>(read: () => T): Promise<T> => {
    await calculation.settled();
    return read();
  };
  return {
    read: (address) => settledFirst(() => cells.values(place(address))),
    text: (address) => settledFirst(() => cells.texts(place(address))),
    formula: (address) => settledFirst(() => cells.formulas(place(address))),
    settled: () => calculation.settled(),
    select: (address) => {
      cells.worksheet(place(address).sheetId).activate();
      cells.range(place(address)).activate();
    },
    tables: () =>
      tables.list().map(({ name, place: { sheetId, rows } }) => ({
        name,
        sheet: cells.worksheet(sheetId).getSheetName(),
        rows: rows - 1,
      })),
    sheets: () => cells.workbook.getSheets().map((sheet) => sheet.getSheetName()),
    middleOf: (address) => {
      const rect = cells.range(place(address)).getCellRect();
      const canvas = document.querySelector("#sheet canvas[id^=univer-sheet-main-canvas]")?.getBoundingClientRect();
      return { x: (canvas?.x ?? 0) + rect.x + rect.width / 2, y: (canvas?.y ?? 0) + rect.y + rect.height / 2 };
    },
    ...more,
  };
}
