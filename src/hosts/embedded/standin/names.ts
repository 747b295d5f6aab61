import { ApiError, invalid } from "./apiError";
import { clientObject } from "./clientObject";
import type { Engine } from "./engine";
import { locates, quoted, fixedAddress } from "./places";
import { rangeOf } from "./range";
import { referencedPlace } from "./reference";
import { refuseName } from "./refusals";
import type { Batch } from "./requestContext";
import type { FindSheet } from "./places";

/**
 * Defined names of the workbook, or of one sheet alone.
 * https://learn.microsoft.com/office/dev/add-ins/excel/excel-add-ins-ranges-named
 */
export function namesOf(batch: Batch, ofSheet?: FindSheet): Excel.NamedItemCollection {
  const { engine } = batch;
  const scope = () => ofSheet?.();
  const names: Excel.NamedItemCollection = clientObject<Excel.NamedItemCollection>(batch, {
    kind: "Excel.NamedItemCollection",
    read: { items: () => defined(engine, scope()).map((one) => nameOf(batch, one.getName(), scope)) },
    members: {
      add: (name, reference) => {
        batch.enqueue(names, () => add(engine, name, reference, scope()));
        return nameOf(batch, name, scope);
      },
      getItem: (name) => nameOf(batch, name, scope),
      getItemOrNullObject: (name) => nameOf(batch, name, scope, () => find(engine, name, scope()) !== undefined),
    },
  });
  return names;
}

function nameOf(batch: Batch, name: string, scope: () => string | undefined, exists?: () => boolean): Excel.NamedItem {
  const { engine } = batch;
  const existing = () => {
    const found = find(engine, name, scope());
    if (!found) throw new ApiError("ItemNotFound", `There is no name "${name}".`);
    return found;
  };
  const item: Excel.NamedItem = clientObject<Excel.NamedItem>(batch, {
    kind: "Excel.NamedItem",
    ...(exists && { exists }),
    read: { name: () => existing().getName() },
    members: {
      getRange: () =>
        rangeOf(batch, () => {
          const place = referencedPlace(engine.cells, existing().getFormulaOrRefString());
          if (!place) throw invalid(`The name "${name}" does not point to cells.`);
          return place;
        }),
      delete: () => batch.enqueue(item, () => existing().delete()),
    },
  });
  return item;
}

const defined = ({ cells }: Engine, sheetId: string | undefined) =>
  cells.workbook
    .getDefinedNames()
    .filter((one) => (sheetId ? one.getLocalSheetId() === sheetId : one.isWorkbookScope()));

const find = (engine: Engine, name: string, sheetId: string | undefined) =>
  defined(engine, sheetId).find((one) => one.getName().toLowerCase() === name.toLowerCase());

function add(engine: Engine, name: string, reference: Excel.Range | string, sheetId: string | undefined): void {
  const { cells, tables } = engine;
  const taken = [...defined(engine, sheetId).map((one) => one.getName()), ...tables.list().map((one) => one.name)];
  refuseName(name, taken);
  const text = typeof reference === "string" ? reference.replace(/^=/, "") : referenceTo(engine, reference);
  if (sheetId) cells.worksheet(sheetId).insertDefinedName(name, text);
  else cells.workbook.insertDefinedName(name, text);
  if (!find(engine, name, sheetId)) throw invalid(`The grid refuses the name "${name}"; it may be a function's name.`);
}

function referenceTo({ cells }: Engine, range: Excel.Range): string {
  const place = locates.get(range)?.();
  if (!place) throw invalid("A name needs a range or a text.");
  return `${quoted(cells.worksheet(place.sheetId).getSheetName())}!${fixedAddress(place)}`;
}
