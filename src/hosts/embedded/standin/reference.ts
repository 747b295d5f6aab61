import type { Cells } from "../engine/cells";
import type { Place } from "../engine/place";
import { placeOn } from "./places";

/** The cells that a reference with its sheet names, such as "Setup!$B$4" or "'Stand table'!A1:C5"; undefined for anything else. */
export function referencedPlace(cells: Cells, reference: string): Place | undefined {
  const [, quotedSheet, plainSheet, address] =
    /^=?(?:'((?:[^']|'')+)'|([^'!]+))!(\$?[A-Z]+\$?\d+(?::\$?[A-Z]+\$?\d+)?)$/i.exec(reference) ?? [];
  const name = quotedSheet?.replace(/''/g, "'") ?? plainSheet;
  const sheet = name && cells.workbook.getSheetByName(name);
  return sheet && address ? placeOn(sheet.getSheetId(), address) : undefined;
}
