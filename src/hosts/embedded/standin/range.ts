import { addressOf, type Zone } from "../../../workbook/address";
import { cellData } from "../engine/cellData";
import type { Place } from "../engine/place";
import { ApiError, invalid, notImplemented } from "./apiError";
import { clientObject } from "./clientObject";
import { conditionalFormatsOf } from "./conditionalFormats";
import { dataValidationOf } from "./dataValidation";
import { locates, type Locate, onSheet, quoted } from "./places";
import { rangeFormatOf } from "./rangeFormat";
import { refuseFormula } from "./refusals";
import type { Batch } from "./requestContext";
import { applyStyle } from "./styles";
import { asTyped } from "./typed";

/** https://learn.microsoft.com/office/dev/add-ins/excel/excel-add-ins-ranges-set-get-values */
export function rangeOf(batch: Batch, locate: Locate, exists?: () => boolean): Excel.Range {
  const { cells } = batch.engine;
  const moved = (change: (place: Place) => Zone) => rangeOf(batch, () => onSheet({ ...locate(), ...change(locate()) }));
  const writeCells = (given: unknown) => {
    const place = locate();
    const formats = cells.formats(place);
    const tables = batch.engine.tables.list().map(({ name }) => name);
    const value = matrix(given, place);
    cells.write(place, (i, j) => {
      const cell = value(i, j);
      if (cell === null) return undefined;
      if (typeof cell === "string" && /^=./.test(cell)) {
        refuseFormula(cell, tables);
        return cellData(cell);
      }
      return cellData(asTyped(cell, formats[i]?.[j] ?? "General"));
    });
  };

  const range: Excel.Range = clientObject<Excel.Range>(batch, {
    kind: "Excel.Range",
    ...(exists && { exists }),
    read: {
      address: () => `${quoted(cells.worksheet(locate().sheetId).getSheetName())}!${addressOf(locate())}`,
      values: () => cells.values(locate()),
      formulas: () => cells.formulas(locate()),
      text: () => cells.texts(locate()),
      numberFormat: () => cells.formats(locate()),
      rowIndex: () => locate().row,
      columnIndex: () => locate().column,
      rowCount: () => locate().rows,
      columnCount: () => locate().columns,
    },
    write: {
      values: writeCells,
      formulas: writeCells,
      numberFormat: (given) => {
        const place = locate();
        const format = matrix(given, place);
        cells.dress(place, (i, j) => ({ n: { pattern: formatGiven(format(i, j)) } }));
      },
      style: (name) => applyStyle(batch.engine, locate(), String(name)),
    },
    members: {
      get format() {
        return rangeFormatOf(batch, locate);
      },
      get conditionalFormats() {
        return conditionalFormatsOf(batch, locate);
      },
      get dataValidation() {
        return dataValidationOf(batch, locate);
      },
      get worksheet() {
        return batch.worksheet(batch, () => locate().sheetId);
      },
      getCell: (row, column) =>
        moved((place) => ({ row: place.row + row, column: place.column + column, rows: 1, columns: 1 })),
      getOffsetRange: (rows, columns) =>
        moved((place) => ({ ...place, row: place.row + rows, column: place.column + columns })),
      getResizedRange: (rows, columns) =>
        moved((place) => ({ ...place, rows: place.rows + rows, columns: place.columns + columns })),
      getSpillingToRangeOrNullObject: () => spilling(batch, locate),
      select: () =>
        batch.enqueue(range, () => {
          cells.worksheet(locate().sheetId).activate();
          cells.range(locate()).activate();
        }),
      clear: (applyTo = "All") => batch.enqueue(range, () => clear(batch, locate(), applyTo)),
    },
  });
  locates.set(range, locate);
  return range;
}

/** https://learn.microsoft.com/javascript/api/excel/excel.range#excel-excel-range-getspillingtorangeornullobject-member(1) */
function spilling(batch: Batch, locate: Locate): Excel.Range {
  const { cells } = batch.engine;
  const spill = () => cells.spillFrom(locate().sheetId, locate().row, locate().column);
  const found = () => {
    const zone = spill();
    if (!zone) throw new ApiError("ItemNotFound", "The cell does not spill.");
    return { sheetId: locate().sheetId, ...zone };
  };
  const range = rangeOf(batch, found, () => spill() !== undefined);
  return range;
}

function clear(batch: Batch, place: Place, applyTo: string): void {
  const { cells } = batch.engine;
  if (!["All", "Contents", "Formats"].includes(applyTo)) throw notImplemented(`Excel.ClearApplyTo.${applyTo}`);
  if (applyTo !== "Formats") cells.empty(place);
  if (applyTo !== "Contents") cells.undress(place);
}

/** Rows and columns as given, or one value for all; the sizes must agree. */
function matrix(given: unknown, { rows, columns }: Place): (row: number, column: number) => unknown {
  if (!Array.isArray(given)) return () => given;
  const lines = given as readonly unknown[];
  const fits = lines.length === rows && lines.every((line) => Array.isArray(line) && line.length === columns);
  if (!fits) {
    throw invalid(
      `The number of rows or columns given does not match the range, which has ${rows} x ${columns} cells.`,
    );
  }
  return (row, column) => (lines[row] as readonly unknown[])[column];
}

function formatGiven(format: unknown): string {
  if (typeof format !== "string") throw invalid(`A number format is a text, not ${String(format)}.`);
  return format === "" ? "General" : format;
}
