import { plotCsv } from "./csv";
import type { LineNote } from "./lineNote";
import type { CellValue, TableRow } from "./plan";
import { plainNumber } from "./plainNumber";
import { serialOfDay } from "./serialDay";
import { plot } from "./tables";

/** A pasted list of plots. */
export interface PastedPlots {
  readonly plots: readonly TableRow[];
  readonly rejects: readonly LineNote[];
}

const TEXTS: readonly string[] = [plot.crew, plot.note];
const YES_OR_NO: readonly string[] = [plot.visited, plot.none];

/**
 * Reads a list of plots, as this add-in writes it, found by its headings; undefined when the text is no such list. A
 * list of trees has diameters, so a text that has them is none.
 */
export function pastedPlots(data: readonly (readonly string[])[]): PastedPlots | undefined {
  const said = (data[0] ?? []).map(bare);
  const columns = plotCsv.flatMap(({ csv, heading }) => {
    const place = said.indexOf(csv);
    return place < 0 ? [] : [{ heading, place }];
  });
  const hasPlot = columns.some(({ heading }) => heading === plot.plot);
  const ofPlots = columns.some(({ heading }) => heading !== plot.plot && heading !== plot.note);
  if (!hasPlot || !ofPlots || said.some((name) => /^(dbh|diam|species|sp)/.test(name))) return undefined;

  const plots: TableRow[] = [];
  const rejects: LineNote[] = [];
  const seen = new Set<string>();
  data.slice(1).forEach((cells, at) => {
    const line = { line: at + 2, text: cells.join(", ") };
    if (cells.every((cell) => cell.trim() === "")) return;
    const row = Object.fromEntries(
      columns.map(({ heading, place }) => [heading, cellOf(heading, cells[place]?.trim() ?? "")]),
    );
    const name = String(row[plot.plot] ?? "").toLowerCase();
    const odd = YES_OR_NO.find((heading) => ![null, undefined, "Yes", "No"].includes(row[heading] as string | null));
    if (name === "") rejects.push({ ...line, says: "The plot is missing." });
    else if (seen.has(name)) rejects.push({ ...line, says: `Plot ${name} stands twice in this list.` });
    else if (odd !== undefined)
      rejects.push({ ...line, says: `${odd} should be Yes, No or blank. This line has "${String(row[odd])}".` });
    else plots.push(row);
    seen.add(name);
  });
  return { plots, rejects };
}

function cellOf(heading: string, text: string): CellValue {
  if (text === "") return null;
  if (TEXTS.includes(heading)) return text;
  if (heading === plot.date) return serialOfDay(text) ?? plainNumber(text) ?? text;
  if (/^(y|yes|true)$/i.test(text)) return "Yes";
  if (/^(n|no|false)$/i.test(text)) return "No";
  return plainNumber(text) ?? text;
}

const bare = (heading: string) =>
  heading
    .trim()
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, "_");
