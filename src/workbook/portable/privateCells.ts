import { zoneAt } from "../address";
import type { CopiedCell, CopiedSheet } from "../host";
import { COMPARE } from "../sheets/compare";
import { OUTLINE_SHEET } from "../sheets/outline";
import { POINT_LIST } from "../sheets/pointList";
import { PRICES_SHEET } from "../sheets/prices";
import {
  board,
  BOARD_SIZES,
  GRADE_SHARES,
  gradeShare,
  MORE_PRODUCTS,
  SAW_RATES,
  sawRate,
  named,
  plot,
  PLOTS,
  product,
  PRODUCTS,
} from "../tables";

/** Sheets that are about prices, or about places on the map, from end to end. */
const PRIVATE_SHEETS: readonly string[] = [PRICES_SHEET, COMPARE, OUTLINE_SHEET, POINT_LIST];

/** Columns that tell names, places on the map and prices. */
const PRIVATE_COLUMNS: Readonly<Record<string, readonly string[]>> = {
  [PLOTS]: [plot.east, plot.north, plot.crew],
  [BOARD_SIZES]: [board.each, board.price],
  [MORE_PRODUCTS]: [board.each, board.price],
  [GRADE_SHARES]: [gradeShare.price],
  [SAW_RATES]: [sawRate.value],
  [PRODUCTS]: [product.price],
};

/** A sentence that tells what something brings. */
const DOLLARS = /\$\d/;

/** The sheets without names, prices and places on the map. What shows dollars is a price, wherever it stands. */
export const withoutPrivate = (sheets: readonly CopiedSheet[]): readonly CopiedSheet[] =>
  sheets
    .filter(({ name }) => !PRIVATE_SHEETS.includes(name))
    .map((sheet) => {
      const hidden = hiddenCells(sheet);
      const cells = sheet.cells.map((row, r) =>
        row.map((cell, c) => (hidden(r, c, cell) ? { ...cell, value: null } : cell)),
      );
      return { ...sheet, cells };
    });

function hiddenCells({
  cells,
  tables,
  names = [],
}: CopiedSheet): (row: number, column: number, cell: CopiedCell) => boolean {
  const standName = names.find(({ name }) => name === named.stand)?.at;
  const zones = tables.flatMap(({ name, address }) => {
    const zone = zoneAt(address);
    const headings = cells[zone.row]?.slice(zone.column, zone.column + zone.columns).map(({ value }) => String(value));
    return (PRIVATE_COLUMNS[name] ?? []).map((heading) => ({
      column: zone.column + (headings?.indexOf(heading) ?? 0),
      from: zone.row + 1,
      to: zone.row + zone.rows,
    }));
  });
  const stand = standName === undefined ? undefined : zoneAt(standName);
  return (row, column, { format, formula, value }) =>
    (stand?.row === row && stand.column === column) ||
    formula === `=${named.stand}` ||
    (typeof value === "number" && format.includes("$")) ||
    (typeof value === "string" && DOLLARS.test(value)) ||
    zones.some((zone) => zone.column === column && row >= zone.from && row < zone.to);
}
