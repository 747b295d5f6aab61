import { cellData } from "../engine/cellData";
import type { PlainValue } from "../engine/plainValue";
import type { Place } from "../engine/place";
import type { GridTable } from "../engine/tables";
import { BANDED, PLAIN } from "../engine/tableThemes";
import { invalid, notImplemented } from "./apiError";
import { clientObject } from "./clientObject";
import { rangeOf } from "./range";
import { refuseFormula, refuseName } from "./refusals";
import type { Batch } from "./requestContext";
import { asTyped } from "./typed";

export type FindTable = () => GridTable;

/** https://learn.microsoft.com/javascript/api/excel/excel.table */
export function tableOf(batch: Batch, find: FindTable, exists?: () => boolean): Excel.Table {
  const { cells, tables } = batch.engine;
  const part = (choose: (place: Place) => Place) => rangeOf(batch, () => choose(find().place));
  const theme = (style: string) => cells.run("sheet.command.set-table-config", { tableId: find().id, theme: style });

  const table: Excel.Table = clientObject<Excel.Table>(batch, {
    kind: "Excel.Table",
    ...(exists && { exists }),
    read: { name: () => find().name, id: () => find().id },
    write: {
      name: async (name) => {
        const { id } = find();
        const others = tables.list().filter((one) => one.id !== id);
        const names = cells.workbook.getDefinedNames().map((one) => one.getName());
        refuseName(name, [...others.map((one) => one.name), ...names]);
        await tables.rename(find(), name);
      },
      style: (style) => {
        if (!/^TableStyle(?:Light|Medium|Dark)\d{1,2}$/.test(style))
          throw invalid(`There is no table style "${style}".`);
      },
      showBandedRows: async (shown) => void (await theme(shown ? BANDED : PLAIN)),
    },
    members: {
      get worksheet() {
        return batch.worksheet(batch, () => find().place.sheetId);
      },
      get rows() {
        return rowsOf(batch, find);
      },
      getRange: () => part((place) => place),
      getHeaderRowRange: () => part((place) => ({ ...place, rows: 1 })),
      getDataBodyRange: () => part((place) => ({ ...place, row: place.row + 1, rows: place.rows - 1 })),
      delete: () =>
        batch.enqueue(table, async () => {
          const found = find();
          await tables.remove(found);
          cells.write(found.place, () => ({ ...cellData(""), s: null }));
        }),
    },
  });
  return table;
}

/** https://learn.microsoft.com/javascript/api/excel/excel.tablerowcollection: rows are counted from 0 below the heading. */
function rowsOf(batch: Batch, find: FindTable): Excel.TableRowCollection {
  const { tables } = batch.engine;
  const rows: Excel.TableRowCollection = clientObject<Excel.TableRowCollection>(batch, {
    kind: "Excel.TableRowCollection",
    members: {
      getCount: () => counted(batch, rows, () => find().place.rows - 1),
      add: (index, values) => {
        batch.enqueue(rows, () => tables.append(find(), rowsGiven(batch, find(), index, values)));
        return clientObject<Excel.TableRow>(batch, { kind: "Excel.TableRow" });
      },
      getItemAt: (index) => {
        const row: Excel.TableRow = clientObject<Excel.TableRow>(batch, {
          kind: "Excel.TableRow",
          members: { delete: () => batch.enqueue(row, () => tables.deleteRow(find(), rowWithin(find(), index))) },
        });
        return row;
      },
    },
  });
  return rows;
}

/** A count, known after the next sync: https://learn.microsoft.com/javascript/api/office/officeextension.clientresult */
export function counted(batch: Batch, owner: object, count: () => number): OfficeExtension.ClientResult<number> {
  let known: number | undefined;
  batch.enqueue(owner, () => {
    known = count();
  });
  return {
    get value() {
      if (known === undefined) throw invalid("A count is known only after context.sync().");
      return known;
    },
  };
}

function rowWithin({ place, name }: GridTable, index: number): number {
  if (!Number.isInteger(index) || index < 0 || index >= place.rows - 1) throw invalid(`${name} has no row ${index}.`);
  return index;
}

function rowsGiven(
  { engine }: Batch,
  { name, place }: GridTable,
  index: number | null | undefined,
  values: unknown,
): (PlainValue | null)[][] {
  if (index != null && index !== -1 && index !== place.rows - 1) {
    throw notImplemented("Excel.TableRowCollection.add between rows");
  }
  const lines = (Array.isArray(values) && !Array.isArray(values[0]) ? [values] : values) as unknown[][];
  if (!Array.isArray(lines) || lines.some((line) => !Array.isArray(line) || line.length !== place.columns)) {
    throw invalid(`A row of ${name} needs ${place.columns} cells.`);
  }
  const [formats = []] = engine.cells.formats({ ...place, row: place.row + place.rows - 1, rows: 1 });
  const known = engine.tables.list().map((one) => one.name);
  return lines.map((line) =>
    line.map((cell, j) => {
      if (cell === null) return null;
      if (typeof cell !== "string" || !/^=./.test(cell)) return asTyped(cell, formats[j] ?? "General");
      refuseFormula(cell, known);
      return cell;
    }),
  );
}
