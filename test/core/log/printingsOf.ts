import { readdirSync } from "node:fs";
import type { LogRule } from "../../../src/core/log/logRule";
import { numberIn, published, type PublishedRow, type PublishedTable } from "../../support/published";

const tables = readdirSync(new URL("../../published/log/", import.meta.url));

/**
 * What print says of a rule: its own table, test/published/log/<id>.csv, then every further one, <id>.<which>.csv.
 * Each printing is a file of its own, so that each names its source, and read and recalled cells stay apart.
 */
export function printingsOf({ id }: LogRule): readonly PublishedTable[] {
  const further = tables.filter((name) => name.startsWith(`${id}.`) && name !== `${id}.csv`).sort();
  return [`${id}.csv`, ...further].map((name) => published(`log/${name}`));
}

/** How far a rule may be from a printed cell: half the printed step, or what the row says, with its reason. */
export function toleranceOf(row: PublishedRow, { printedTo }: PublishedTable): number {
  if (!row["tolerance"]) return printedTo / 2;
  if (!row["reason"]) throw new Error(`a looser tolerance needs its reason: ${JSON.stringify(row)}`);
  return numberIn(row, "tolerance");
}
