import { choiceNamed } from "../../src/core/basis/choices";
import { byLogs, checkHeight, heightsMeasured } from "../../src/core/cruise/checkHeight";
import { localFit } from "../../src/functions/localTables";
import { productTable } from "../../src/functions/products";
import { checkSpecies, speciesOf } from "../../src/functions/speciesList";
import { SummarySampling, standSummary } from "../../src/functions/standSummary";
import { stemVolume } from "../../src/functions/stem";
import type { CellValue, TableRow } from "../../src/workbook/plan";
import {
  felled,
  FELLED_TREES,
  named,
  out,
  plot,
  PLOTS,
  product,
  PRODUCTS,
  species,
  SPECIES,
  tree,
  TREES,
} from "../../src/workbook/tables";
import type { MemoryBook } from "./memoryHost";

const rowsOf = (book: MemoryBook, table: string) => book.tables.get(table)?.rows ?? [];
const measured = (book: MemoryBook) => choiceNamed(book.names.get(named.heightMeasured), heightsMeasured) ?? byLogs;

/** Number of a species in the national list, as the sheet Setup computes it; "" where it finds none. */
function nationalCode(code: CellValue | undefined, book: MemoryBook): CellValue {
  const line = rowsOf(book, SPECIES).find((one) => one[species.code] === code);
  const fact = line && listed(line, "FIA code");
  return typeof fact === "number" ? fact : "";
}

const listed = (line: TableRow, fact: string) =>
  speciesOf([[line[species.fia] ?? line[species.name]]], fact as never)[0]?.[0] as CellValue | Error;

/** The computed columns of the list of species that the pane reads. */
export function speciesFacts(row: TableRow): TableRow {
  const ratio = listed(row, "Bark ratio");
  const check = checkSpecies([[row[species.name]]], [[row[species.fia] ?? null]])[0]?.[0] as CellValue;
  return { [species.check]: check, [species.barkRatio]: typeof ratio === "number" ? ratio : "" };
}

/** Wood of a tree by its total height, as the sheet Trees computes it. */
export function woodOf(row: TableRow, book: MemoryBook): CellValue {
  const answer = stemVolume(
    [[nationalCode(row[tree.species], book)]],
    [[row[tree.dbh] ?? null]],
    [[row[tree.height] ?? null]],
  )[0]?.[0] as CellValue | Error;
  return typeof answer === "number" ? answer : "";
}

export function heightCheck(row: TableRow, book: MemoryBook): string {
  const number = (heading: string) => (typeof row[heading] === "number" ? row[heading] : undefined);
  return checkHeight({ dbh: number(tree.dbh), logs: number(tree.logs), height: number(tree.height) }, measured(book));
}

/** The fit of the sheet Local volume. */
const fitOf = (book: MemoryBook) => {
  const of = (heading: string) => rowsOf(book, FELLED_TREES).map((row) => [row[heading] ?? null]);
  return localFit(
    of(felled.dbh),
    of(felled.height),
    of(felled.volume),
    book.names.get(named.localForm) as never,
  ) as CellValue[][];
};

/** The answers of the sheets Products and Local volume, each made when it is asked for. */
export function productAnswers(book: MemoryBook): Readonly<Record<string, () => CellValue[][]>> {
  const of = (heading: string) => rowsOf(book, TREES).map((row) => [row[heading] ?? null]);
  const plots = rowsOf(book, PLOTS)
    .filter((row) => row[plot.visited] === "Yes" || row[plot.none] === "Yes")
    .map((row) => [row[plot.plot] ?? null]);
  const columns = Object.values(product).slice(0, 7);
  const products = rowsOf(book, PRODUCTS).map((row) => columns.map((heading) => row[heading] ?? null));
  const size = [[Number(book.names.get(named.size))]];
  const table = () =>
    productTable(
      of(tree.plot),
      rowsOf(book, TREES).map((row) => [nationalCode(row[tree.species], book)]),
      of(tree.dbh),
      of(tree.height),
      of(tree.logs),
      products,
      plots,
      "Point",
      size,
      String(book.names.get(named.productsBy) ?? "Logs"),
      of(tree.count),
    ) as CellValue[][];
  return {
    [out.localFit]: () => fitOf(book),
    [out.products]: table,
    [out.harvestProducts]: table,
    [out.wood]: () =>
      standSummary(
        of(tree.plot),
        of(tree.dbh),
        plots,
        SummarySampling.point,
        size,
        rowsOf(book, TREES).map((row) => [woodOf(row, book)]),
        of(tree.count),
      ) as CellValue[][],
  };
}
