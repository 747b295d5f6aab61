import { readFileSync } from "node:fs";
import Papa from "papaparse";

/** A table as print has it, with where it was read. */
export interface PublishedTable {
  readonly source: string;
  readonly url: string;
  /** The step to which the values are printed; half of it is the tolerance. */
  readonly printedTo: number;
  /** "read", "from memory" or "computed", for the whole table; a column `standing` overrules it row by row. */
  readonly standing: string;
  readonly notes: readonly string[];
  readonly rows: readonly PublishedRow[];
}

/** Column headings lose their unit: "diameter [in]" is read as "diameter". */
export type PublishedRow = Readonly<Record<string, string>>;

/** Reads test/published/<path>; throws unless the file states its source, its standing and its printed step. */
export function published(path: string): PublishedTable {
  const text = readFileSync(new URL(`../published/${path}`, import.meta.url), "utf8");
  const head = text.split("\n").filter((line) => line.startsWith("#"));
  const stated = (key: string) =>
    head
      .find((line) => line.startsWith(`# ${key}:`))
      ?.slice(key.length + 3)
      .trim();
  const source = stated("source");
  const printedTo = Number(stated("printed to"));
  const standing = stated("standing");
  if (!source || !(printedTo > 0) || !standing) {
    throw new Error(`${path} must state "# source:", "# standing:" and "# printed to:"`);
  }
  const { data } = Papa.parse<Record<string, string>>(text, {
    header: true,
    comments: "#",
    skipEmptyLines: true,
    transformHeader: (heading) => heading.replace(/\s*\[.*\]$/, "").trim(),
  });
  const notes = head.filter((line) => line.startsWith("# note:")).map((line) => line.slice(7).trim());
  return { source, url: stated("url") ?? "", printedTo, standing, notes, rows: data };
}

/** The number in a column of a published row; a missing or unreadable one fails the test rather than pass as NaN. */
export function numberIn(row: PublishedRow, column: string): number {
  const text = row[column];
  const value = Number(text);
  if (text === undefined || text.trim() === "" || !Number.isFinite(value))
    throw new Error(`no number under "${column}": ${JSON.stringify(row)}`);
  return value;
}
