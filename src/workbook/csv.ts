import Papa from "papaparse";
import type { CellValue, TableRow } from "./plan";
import { dayOfSerial } from "./serialDay";
import { plotEntries } from "./sheets/points";
import { plot, tree } from "./tables";

/** A column of the text and of the table it comes from. */
export interface CsvColumn {
  readonly csv: string;
  readonly heading: string;
}

/** Columns of a tally, after the stand. Units stand in the names. */
export const treeCsv: readonly CsvColumn[] = [
  { csv: "plot", heading: tree.plot },
  { csv: "species", heading: tree.species },
  { csv: "dbh_in", heading: tree.dbh },
  { csv: "logs_16ft", heading: tree.logs },
  { csv: "height_ft", heading: tree.height },
  { csv: "count", heading: tree.count },
  { csv: "take", heading: tree.take },
  { csv: "cull_pct", heading: tree.cull },
  { csv: "note", heading: tree.note },
  { csv: "distance_ft", heading: tree.distance },
  { csv: "accepted_because", heading: tree.accepted },
];

/** Everything that is typed on the sheet Points, under names made of its headings: "East ft" is east_ft. */
export const plotCsv: readonly CsvColumn[] = plotEntries.map((heading) => ({
  csv: heading.toLowerCase().replace(/[^a-z0-9]+/g, "_"),
  heading,
}));

/** Columns that tell names and places on the map. */
const PRIVATE: readonly string[] = [plot.east, plot.north, plot.crew];

/** Rows that tell of a tree, or count some. One with nothing but a plot would read back as a plot that was found empty. */
export const rowsWithTrees = (rows: readonly TableRow[]): readonly TableRow[] =>
  rows.filter((row) =>
    treeCsv.some(({ heading }) => heading !== tree.plot && !["", null, undefined].includes(row[heading] as null)),
  );

/**
 * A table as CSV text: a first line of names, commas, point decimals, quotes where they are needed. Rows that are blank
 * throughout are left out; blanks stay blank.
 *
 * @param stand in the first column of every row; "" keeps it to oneself
 */
export function csvText(stand: string, columns: readonly CsvColumn[], rows: readonly TableRow[]): string {
  return csvOf(csvRows(stand, columns, rows));
}

export const csvOf = (rows: string[][]): string => Papa.unparse(rows, { newline: "\n" });

/** The same as rows of cells, the first one the names. */
export const csvRows = (stand: string, columns: readonly CsvColumn[], rows: readonly TableRow[]): string[][] => [
  ["stand", ...columns.map(({ csv }) => csv)],
  ...rows
    .map((row) => columns.map(({ heading }) => cellText(heading, row[heading])))
    .filter((cells) => cells.some((cell) => cell !== ""))
    .map((cells) => [stand, ...cells]),
];

export const withoutPrivateColumns = (columns: readonly CsvColumn[]): readonly CsvColumn[] =>
  columns.filter(({ heading }) => !PRIVATE.includes(heading));

function cellText(heading: string, value: CellValue | undefined): string {
  if (value === null || value === undefined) return "";
  if (heading === plot.date && typeof value === "number") return dayOfSerial(value);
  return typeof value === "boolean" ? (value ? "Yes" : "No") : String(value).trim();
}
