import { withPoint } from "./decimalCommas";
import type { PastedField } from "./pastedColumns";
import { plainNumber } from "./plainNumber";
import type { CellValue, TableRow } from "./plan";
import { tree } from "./tables";

/** A line that cannot be read as a tree; its message is the reason. */
export class Unreadable extends Error {}

/** What a line tells: its plot, and the row of a tree or of trees that were only counted when it has them. */
export interface PastedLine {
  readonly name: CellValue;
  readonly row?: TableRow;
}

/**
 * Reads one line by its cells. A count without a diameter or a height is one of trees that were counted and not
 * measured; a plot and nothing else is a plot without trees.
 */
export function readPastedLine(cell: (field: PastedField) => string): PastedLine {
  const plot = cell("plot");
  if (plot === "") throw new Unreadable("The plot is missing.");
  const name = plainNumber(plot) ?? plot;
  const [dbh, count] = [cell("dbh"), cell("count")];
  const unmeasured = dbh === "" && cell("logs") === "" && cell("height") === "";
  if (unmeasured && count === "" && cell("species") === "") return { name };
  if (dbh === "" && !(unmeasured && count !== "")) throw new Unreadable("The DBH is missing.");

  return {
    name,
    row: {
      [tree.plot]: name,
      [tree.species]: cell("species") || null,
      [tree.dbh]: dbh === "" ? null : above0("DBH", dbh, "inches"),
      [tree.logs]: atLeast0("Logs", cell("logs"), "16-ft logs"),
      ...(cell("height") !== "" && { [tree.height]: above0("Height", cell("height"), "feet") }),
      [tree.count]: count === "" ? null : above0("Count", count, "trees"),
      [tree.take]: yesNo(cell("take")),
      [tree.cull]: percent(cell("cull")),
      [tree.note]: cell("note") || null,
      ...(cell("distance") !== "" && { [tree.distance]: above0("Distance", cell("distance"), "feet") }),
      ...(cell("accepted") !== "" && { [tree.accepted]: cell("accepted") }),
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
