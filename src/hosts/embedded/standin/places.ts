import { addressOf, type Zone, zoneAt } from "../../../workbook/address";
import type { Place } from "../engine/place";
import { invalid } from "./apiError";

/** Finds the sheet of a worksheet object, by its id, anew whenever it is used. */
export type FindSheet = () => string;

/** Finds the range's place anew whenever it is used, as Excel does. */
export type Locate = () => Place;

/** The place behind a range object, for members that take a range. */
export const locates = new WeakMap<object, Locate>();

/** A range by its address on a sheet. */
export function placeOn(sheetId: string, address: string): Place {
  try {
    return onSheet({ sheetId, ...zoneAt(address.toUpperCase()) });
  } catch {
    throw invalid(`"${address}" is no address of cells that this page reads.`);
  }
}

/** "$B$4" or "$A$1:$C$5". */
export const fixedAddress = (zone: Zone): string => addressOf(zone).replace(/([A-Z]+)(\d+)/g, "$$$1$$$2");

const MOST_ROWS = 1_048_576;
const MOST_COLUMNS = 16_384;

/** The place, when it lies on a sheet of Excel's size. */
export function onSheet(place: Place): Place {
  const { row, column, rows, columns } = place;
  const inside =
    row >= 0 && column >= 0 && rows > 0 && columns > 0 && row + rows <= MOST_ROWS && column + columns <= MOST_COLUMNS;
  if (!inside) throw invalid("The range lies outside the sheet.");
  return place;
}

/** A sheet's name as a reference writes it. */
export const quoted = (sheet: string): string =>
  /^[\p{L}_][\p{L}\p{N}_.]*$/u.test(sheet) ? sheet : `'${sheet.replace(/'/g, "''")}'`;
