import Papa from "papaparse";
import { cutAtCommas, looksCut, saidOfCommas, withPoint } from "./decimalCommas";
import type { LineNote } from "./lineNote";
import { matchColumns, type ColumnMatch, type PastedField } from "./pastedColumns";
import { pastedDoubts } from "./pastedDoubts";
import { pastedPlots } from "./pastedPlots";
import { plainNumber } from "./plainNumber";
import type { CellValue, TableRow } from "./plan";
import { plot as plotHeading, tree } from "./tables";

export type { LineNote } from "./lineNote";

/** A pasted tally, read but not yet written anywhere. */
export interface PastedTally {
  /** A list of plots has no trees; it is known by its headings. */
  readonly kind: "trees" | "points";
  readonly match: ColumnMatch;
  /** Rows for the table of trees. */
  readonly trees: readonly TableRow[];
  /** Rows for the table of plots, one for each plot named; a plot without trees is marked as empty. */
  readonly plots: readonly TableRow[];
  /** Lines that were left out, each with the reason. */
  readonly rejects: readonly LineNote[];
  /** Lines that were taken, but look odd; line 0 speaks of the whole text. */
  readonly warnings: readonly LineNote[];
}

/** A line that cannot be read as a tree; its message is the reason. */
class Unreadable extends Error {}

/**
 * Reads a tally pasted from a spreadsheet or a text file: columns parted by tabs, commas or semicolons, found by
 * their headings or else by their order: plot, species, DBH, logs, count; total height by its heading only. A line with a plot and nothing else is a
 * plot without trees, which counts.
 */
export function pastedTally(text: string): PastedTally {
  const { data, mark } = pastedCells(text);
  const match = matchColumns(data);
  const list = pastedPlots(data);
  if (list) return { kind: "points", match: { ...match, headingRows: 1 }, trees: [], ...list, warnings: [] };
  const trees: { readonly line: number; readonly text: string; readonly row: TableRow }[] = [];
  const rejects: LineNote[] = [];
  const plots = new Map<string, { readonly name: CellValue; hasTrees: boolean }>();

  data.forEach((cells, i) => {
    if (i < match.headingRows || cells.every((cell) => cell.trim() === "")) return;
    const line = { line: i + 1, text: cells.join(", ") };
    try {
      if (cutAtCommas(cells, mark, match)) throw new Unreadable(saidOfCut(cells, match));
      const { name, row } = readLine((field) => cells[match.columns[field] ?? -1]?.trim() ?? "");
      const key = String(name).toLowerCase();
      const known = plots.get(key);
      plots.set(key, { name: known?.name ?? name, hasTrees: (known?.hasTrees ?? false) || row !== undefined });
      if (row) trees.push({ ...line, row });
    } catch (problem) {
      if (!(problem instanceof Unreadable)) throw problem;
      rejects.push({ ...line, says: problem.message });
    }
  });

  return {
    kind: "trees",
    match,
    trees: trees.map(({ row }) => row),
    plots: [...plots.values()].map(({ name, hasTrees }) => ({
      [plotHeading.plot]: name,
      [plotHeading.visited]: "Yes",
      [plotHeading.none]: hasTrees ? null : "Yes",
    })),
    rejects,
    warnings: [
      ...doubtsOfCommas(data.slice(match.headingRows), mark, match),
      ...pastedDoubts(
        { dbh: match.headings[match.columns.dbh ?? -1], height: match.headings[match.columns.height ?? -1] },
        trees,
      ),
    ],
  };
}

function doubtsOfCommas(rows: readonly (readonly string[])[], delimiter: string, match: ColumnMatch): LineNote[] {
  const said = saidOfCommas(rows, match);
  const cut = looksCut(rows, delimiter, match) ? CUT : undefined;
  return [said, cut].flatMap((says) => (says === undefined ? [] : [{ line: 0, text: "", says }]));
}

const APART = "Part the columns with tabs or semicolons, or write decimals with a point.";
const CUT = `Many trees have over 5 logs and no number has a decimal point. Were decimals written with a comma, as in 12,5? ${APART}`;
const saidOfCut = (cells: readonly string[], { headings }: ColumnMatch) =>
  `This line has ${cells.length} cells under ${headings.length} headings. Are decimals written with a comma? ${APART}`;

/**
 * The cells of a pasted text, line by line. Headings that are known under one mark between them tell the mark; a text
 * without such headings is looked over for the mark that parts its lines alike.
 */
export function pastedCells(text: string): { readonly data: string[][]; readonly mark: string } {
  const first = text.split("\n", 1)[0] ?? "";
  const known = MARKS.find((delimiter) => {
    const headings = Papa.parse<string[]>(first, { delimiter }).data;
    return matchColumns(headings).by === "headings" || pastedPlots(headings) !== undefined;
  });
  const { data, meta } = Papa.parse<string[]>(
    text.trimEnd(),
    known ? { delimiter: known } : { delimitersToGuess: MARKS },
  );
  return { data, mark: meta.delimiter };
}

const MARKS = ["\t", ",", ";"];

/** The plot of a line, and its tree when it has one. */
function readLine(cell: (field: PastedField) => string): { readonly name: CellValue; readonly row?: TableRow } {
  const plot = cell("plot");
  if (plot === "") throw new Unreadable("The plot is missing.");
  const name = plainNumber(plot) ?? plot;
  const dbh = cell("dbh");
  if (dbh === "" && cell("species") === "" && cell("logs") === "" && cell("height") === "") return { name };
  if (dbh === "") throw new Unreadable("The DBH is missing.");

  return {
    name,
    row: {
      [tree.plot]: name,
      [tree.species]: cell("species") || null,
      [tree.dbh]: above0("DBH", dbh, "inches"),
      [tree.logs]: atLeast0("Logs", cell("logs"), "16-ft logs"),
      ...(cell("height") !== "" && { [tree.height]: above0("Height", cell("height"), "feet") }),
      [tree.count]: cell("count") === "" ? null : above0("Count", cell("count"), "trees"),
      [tree.take]: yesNo(cell("take")),
      [tree.cull]: percent(cell("cull")),
      [tree.note]: cell("note") || null,
    },
  };
}

function number(what: string, text: string, unit: string): number {
  const value = plainNumber(withPoint(text));
  if (value !== undefined) return value;
  const hint = /^\d+,\d+$/.test(text) ? ` Write ${text.replace(",", "")} or ${text.replace(",", ".")}.` : "";
  throw new Unreadable(`${what} needs a number of ${unit}, but this line has "${text.slice(0, 40)}".${hint}`);
}

function above0(what: string, text: string, unit: string): number {
  const value = number(what, text, unit);
  if (value > 0) return value;
  throw new Unreadable(`${what} should be above 0 ${unit}. This line has ${text}.`);
}

function atLeast0(what: string, text: string, unit: string): number | null {
  if (text === "") return null;
  const value = number(what, text, unit);
  if (value >= 0) return value;
  throw new Unreadable(`${what} should be 0 or more ${unit}. This line has ${text}.`);
}

function percent(text: string): number | null {
  const value = atLeast0("Cull", text, "percent");
  if (value !== null && value > 100) throw new Unreadable(`Cull should be at most 100 percent. This line has ${text}.`);
  return value;
}

function yesNo(text: string): string | null {
  if (text === "") return null;
  if (/^(y|yes|true)$/i.test(text)) return "Yes";
  if (/^(n|no|false)$/i.test(text)) return "No";
  throw new Unreadable(`Take should be Yes, No or blank. This line has "${text.slice(0, 40)}".`);
}
