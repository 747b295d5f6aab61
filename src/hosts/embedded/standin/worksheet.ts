import type { Place } from "../engine/place";
import { ApiError, invalid } from "./apiError";
import { clientObject } from "./clientObject";
import { namesOf } from "./names";
import { pageBreaksOf } from "./pageBreaks";
import { pageLayoutOf } from "./pageLayout";
import { type FindSheet, placeOn } from "./places";
import { rangeOf } from "./range";
import { refuseSheetName } from "./refusals";
import type { Batch } from "./requestContext";
import { tablesOf } from "./tables";

/** The size of a new sheet: what lies beyond it cannot be referred to. */
const ROWS = 3_000;
const COLUMNS = 52;

/** https://learn.microsoft.com/office/dev/add-ins/excel/excel-add-ins-worksheets */
export function worksheetOf(batch: Batch, find: FindSheet, exists?: () => boolean): Excel.Worksheet {
  const { cells } = batch.engine;
  const sheet = () => cells.worksheet(find());
  const whole = (): Place => ({
    sheetId: find(),
    row: 0,
    column: 0,
    rows: sheet().getMaxRows(),
    columns: sheet().getMaxColumns(),
  });

  const worksheet: Excel.Worksheet = clientObject<Excel.Worksheet>(batch, {
    kind: "Excel.Worksheet",
    ...(exists && { exists }),
    read: {
      name: () => sheet().getSheetName(),
      id: () => find(),
      position: () => sheet().getIndex(),
      tabColor: () => sheet().getTabColor() ?? "",
      showGridlines: () => !sheet().hasHiddenGridLines(),
    },
    write: {
      name: (name) => {
        const others = cells.workbook.getSheets().filter((one) => one.getSheetId() !== find());
        refuseSheetName(
          name,
          others.map((one) => one.getSheetName()),
        );
        sheet().setName(name);
      },
      position: (index) => void cells.workbook.moveSheet(sheet(), index),
      tabColor: (color) => void sheet().setTabColor(color),
      showGridlines: (shown) => void sheet().setHiddenGridlines(!shown),
    },
    members: {
      get tables() {
        return tablesOf(batch, find);
      },
      get names() {
        return namesOf(batch, find);
      },
      get pageLayout() {
        return pageLayoutOf(batch, find);
      },
      get horizontalPageBreaks() {
        return pageBreaksOf(batch, find);
      },
      get freezePanes() {
        const panes: Excel.WorksheetFreezePanes = clientObject<Excel.WorksheetFreezePanes>(batch, {
          kind: "Excel.WorksheetFreezePanes",
          members: { freezeRows: (rows = 1) => batch.enqueue(panes, () => void sheet().setFrozenRows(rows)) },
        });
        return panes;
      },
      getRange: (address) => rangeOf(batch, () => (address ? placeOn(find(), address) : whole())),
      getRangeByIndexes: (row, column, rows, columns) =>
        rangeOf(batch, () => {
          if (row < 0 || column < 0 || rows < 1 || columns < 1) throw invalid("The range lies outside the sheet.");
          return { sheetId: find(), row, column, rows, columns };
        }),
      getUsedRangeOrNullObject: (valuesOnly = false) => {
        const used = () => cells.used(find(), valuesOnly);
        const place = () => {
          const zone = used();
          if (!zone) throw new ApiError("ItemNotFound", "The sheet has no used cells.");
          return { sheetId: find(), ...zone };
        };
        return rangeOf(batch, place, () => used() !== undefined);
      },
      activate: () => batch.enqueue(worksheet, () => void sheet().activate()),
      delete: () =>
        batch.enqueue(worksheet, () => {
          if (cells.workbook.getNumSheets() === 1)
            throw new ApiError("InvalidOperation", "The last sheet cannot be deleted.");
          cells.workbook.deleteSheet(sheet());
        }),
    },
  });
  return worksheet;
}

/** Adds a sheet at the end. */
export function addSheet(batch: Batch, name: string): string {
  const { workbook } = batch.engine.cells;
  refuseSheetName(
    name,
    workbook.getSheets().map((one) => one.getSheetName()),
  );
  return workbook.create(name, ROWS, COLUMNS).getSheetId();
}
