import { meet } from "../../../workbook/address";
import { cellData } from "../engine/cellData";
import type { Place } from "../engine/place";
import type { GridTable } from "../engine/tables";
import { ApiError, invalid, notImplemented } from "./apiError";
import { clientObject } from "./clientObject";
import { locates, placeOn } from "./places";
import { refuseHeadings } from "./refusals";
import type { Batch } from "./requestContext";
import { type FindTable, tableOf } from "./table";
import type { FindSheet } from "./places";

/** https://learn.microsoft.com/office/dev/add-ins/excel/excel-add-ins-tables */
export function tablesOf(batch: Batch, ofSheet?: FindSheet): Excel.TableCollection {
  const { tables } = batch.engine;
  const list = () => tables.list().filter((one) => !ofSheet || one.place.sheetId === ofSheet());
  const find = (name: string) => list().find((one) => one.name.toLowerCase() === name.toLowerCase() || one.id === name);
  const named = (name: string) => () => found(find(name), name);

  const collection: Excel.TableCollection = clientObject<Excel.TableCollection>(batch, {
    kind: "Excel.TableCollection",
    read: {
      items: () =>
        list().map(({ id }) =>
          tableOf(
            batch,
            byId(batch, () => id),
          ),
        ),
    },
    members: {
      add: (address, hasHeaders) => {
        let id: string | undefined;
        batch.enqueue(collection, async () => {
          if (!hasHeaders) throw notImplemented("Excel.TableCollection.add without headers");
          const sheetId = ofSheet ?? (() => batch.engine.cells.workbook.getActiveSheet().getSheetId());
          id = await add(batch, locatedPlace(address, sheetId));
        });
        return tableOf(
          batch,
          byId(batch, () => id),
        );
      },
      getItem: (name) => tableOf(batch, named(name)),
      getItemOrNullObject: (name) => tableOf(batch, named(name), () => find(name) !== undefined),
    },
  });
  return collection;
}

const locatedPlace = (address: string | Excel.Range, sheetId: () => string): Place => {
  if (typeof address !== "string") return locates.get(address)?.() as Place;
  return placeOn(sheetId(), address);
};

const found = (table: GridTable | undefined, name: string): GridTable => {
  if (!table) throw new ApiError("ItemNotFound", `There is no table "${name}".`);
  return table;
};

const byId =
  (batch: Batch, id: () => string | undefined): FindTable =>
  () =>
    found(batch.engine.tables.byId(id() ?? ""), "just added");

async function add({ engine }: Batch, given: Place): Promise<string> {
  const { cells, tables } = engine;
  const place: Place = given.rows === 1 ? { ...given, rows: 2 } : given;
  const other = tables.list().find((one) => one.place.sheetId === place.sheetId && meet(one.place, place));
  if (other) throw invalid(`A table cannot lie over another one: ${other.name}.`);
  const head: Place = { ...place, rows: 1 };
  const headings = (cells.values(head)[0] ?? []).map(String);
  refuseHeadings(headings);
  cells.write(head, (_, j) => cellData(headings[j] ?? ""));
  return tables.add(place, freeName(tables.list().map(({ name }) => name.toLowerCase())));
}

function freeName(taken: readonly string[]): string {
  let number = taken.length + 1;
  while (taken.includes(`table${number}`)) number += 1;
  return `Table${number}`;
}
