import { ApiError } from "./apiError";
import type { ChangeEvents } from "./changeEvents";
import { clientObject } from "./clientObject";
import type { Batch } from "./requestContext";
import { counted } from "./table";
import { addSheet, worksheetOf } from "./worksheet";

/** https://learn.microsoft.com/javascript/api/excel/excel.worksheetcollection */
export function worksheetsOf(batch: Batch, events: ChangeEvents): Excel.WorksheetCollection {
  const { cells } = batch.engine;
  const byName = (name: string) =>
    cells.workbook
      .getSheets()
      .find((one) => one.getSheetName().toLowerCase() === name.toLowerCase() || one.getSheetId() === name);
  const named = (name: string) => () => {
    const sheet = byName(name);
    if (!sheet) throw new ApiError("ItemNotFound", `There is no sheet named "${name}".`);
    return sheet.getSheetId();
  };

  const collection: Excel.WorksheetCollection = clientObject<Excel.WorksheetCollection>(batch, {
    kind: "Excel.WorksheetCollection",
    read: {
      items: () => cells.workbook.getSheets().map((sheet) => worksheetOf(batch, () => sheet.getSheetId())),
    },
    members: {
      add: (name) => {
        let id = "";
        batch.enqueue(collection, () => {
          id = addSheet(batch, name ?? `Sheet${cells.workbook.getNumSheets() + 1}`);
        });
        return worksheetOf(batch, () => id);
      },
      getItem: (name) => worksheetOf(batch, named(name)),
      getItemOrNullObject: (name) => worksheetOf(batch, named(name), () => byName(name) !== undefined),
      getActiveWorksheet: () => worksheetOf(batch, () => cells.workbook.getActiveSheet().getSheetId()),
      getCount: () => counted(batch, collection, () => cells.workbook.getNumSheets()),
      get onChanged() {
        return events.handlers(batch, collection);
      },
    },
  });
  return collection;
}
