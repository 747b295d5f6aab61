import { readXlsx, writeXlsx, type Cell, type WriteSheet } from "hucre/xlsx";
import { addressOf, fixed, zoneAt } from "../address";
import { pageSetup } from "./pageSetup";
import type { PortableCell, PortableSheet, ReadFormulas, WriteFile } from "./portableSheet";

/** Writes sheets with a library; nothing else in the project knows which. */
export const writeXlsxFile: WriteFile = (sheets) =>
  writeXlsx({
    sheets: sheets.map(written),
    namedRanges: sheets.flatMap(({ name: sheet, names }) =>
      names.map(({ name, at }) => ({ name, range: `'${sheet.replaceAll("'", "''")}'!${fixed(at)}` })),
    ),
  });

/** Every formula of a file, as a reader of it finds them. */
export const formulasInXlsx: ReadFormulas = async (file) => {
  const { sheets } = await readXlsx(file);
  return sheets.flatMap(({ cells }) => [...(cells?.values() ?? [])].flatMap(({ formula }) => formula ?? []));
};

function written({ name, cells, widths, tables, page }: PortableSheet): WriteSheet {
  const dressed = cells.flatMap((row, r) =>
    row.flatMap((cell, c): [string, Partial<Cell>][] => (cell.value === null ? [] : [[`${r},${c}`, cellOf(cell)]])),
  );
  return {
    name,
    rows: cells.map((row) => row.map(({ value }) => value)),
    cells: new Map(dressed),
    columns: widths.map((width) => ({ width })),
    ...(page && { pageSetup: pageSetup(page), headerFooter: { oddFooter: "&C&A - page &P of &N" } }),
    tables: tables.map((table) => ({
      name: table.name,
      range: addressOf(zoneAt(table.address)),
      columns: table.headings.map((heading) => ({ name: heading })),
      style: "TableStyleLight1",
      showRowStripes: false,
    })),
  };
}

/** The type is stated so that a text that begins with an equals sign stays a text. */
function cellOf({ value, format, bold }: PortableCell): Partial<Cell> {
  const style = {
    ...(format !== undefined && format !== "General" && { numFmt: format }),
    ...(bold && { font: { bold: true } }),
  };
  const type = typeof value === "number" ? "number" : typeof value === "boolean" ? "boolean" : "string";
  return { value, type, style };
}
