import Papa from "papaparse";
import { cutAtCommas, looksCut, saidOfCommas } from "./decimalCommas";
import type { LineNote } from "./lineNote";
import { matchColumns, type ColumnMatch } from "./pastedColumns";
import { pastedDoubts } from "./pastedDoubts";
import { readPastedLine, Unreadable } from "./pastedLine";
import { pastedPlots } from "./pastedPlots";
import type { CellValue, TableRow } from "./plan";
import { plot as plotHeading, tree as treeHeading } from "./tables";

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
  const plots = new Map<string, FoundPlot>();

  data.forEach((cells, i) => {
    if (i < match.headingRows || cells.every((cell) => cell.trim() === "")) return;
    const line = { line: i + 1, text: cells.join(", ") };
    try {
      if (cutAtCommas(cells, mark, match)) throw new Unreadable(saidOfCut(cells, match));
      const { name, row } = readPastedLine((field) => cells[match.columns[field] ?? -1]?.trim() ?? "");
      const key = String(name).toLowerCase();
      const known = plots.get(key);
      plots.set(key, {
        name: known?.name ?? name,
        trees: (known?.trees ?? 0) + (row ? 1 : 0),
        measured: (known?.measured ?? 0) + (row && row[treeHeading.dbh] !== null ? 1 : 0),
      });
      if (row) trees.push({ ...line, row });
    } catch (problem) {
      if (!(problem instanceof Unreadable)) throw problem;
      rejects.push({ ...line, says: problem.message });
    }
  });

  // On a point with measured trees, a count without a diameter is a tree whose diameter was forgotten.
  const isForgotten = ({ row }: { readonly row: TableRow }) =>
    row[treeHeading.dbh] === null && (plots.get(String(row[treeHeading.plot]).toLowerCase())?.measured ?? 0) > 0;
  for (const { line, text, ...tree } of trees)
    if (isForgotten(tree)) rejects.push({ line, text, says: "The DBH is missing." });
  rejects.sort((one, other) => one.line - other.line);

  return {
    kind: "trees",
    match,
    trees: trees.filter((tree) => !isForgotten(tree)).map(({ row }) => row),
    plots: [...plots.values()].map(plotRow),
    rejects,
    warnings: [
      ...takenAsEmpty([...plots.values()]),
      ...doubtsOfCommas(data.slice(match.headingRows), mark, match),
      ...pastedDoubts(
        { dbh: match.headings[match.columns.dbh ?? -1], height: match.headings[match.columns.height ?? -1] },
        trees.filter(({ row }) => row[treeHeading.dbh] !== null),
      ),
    ],
  };
}

/** A plot as the lines of a text tell of it. */
interface FoundPlot {
  readonly name: CellValue;
  readonly trees: number;
  readonly measured: number;
}

/** A plot whose lines give counts and no diameter was only counted. */
const plotRow = ({ name, trees, measured }: FoundPlot): TableRow => ({
  [plotHeading.plot]: name,
  [plotHeading.visited]: "Yes",
  [plotHeading.none]: trees > 0 ? null : "Yes",
  ...(trees > 0 && measured === 0 && { [plotHeading.kind]: "Count" }),
});

/** A plot that is named and nothing else counts as 0 in every mean, so it is said which ones were taken so. */
function takenAsEmpty(plots: readonly FoundPlot[]): LineNote[] {
  const names = plots.filter(({ trees }) => trees === 0).map(({ name }) => String(name));
  if (names.length === 0) return [];
  const [one] = names;
  const says =
    names.length === 1
      ? `Point ${one} has a line without a tree, so it counts as visited and empty. If nobody was there, take that line out.`
      : `Points ${names.slice(0, -1).join(", ")} and ${names.at(-1)} have lines without a tree, so they count as visited and empty. If nobody was there, take those lines out.`;
  return [{ line: 0, text: "", says }];
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
