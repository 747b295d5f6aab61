import { coefficientRow } from "../../../../src/core/tree/national/coefficientRows";
import { findSpecies } from "../../../../src/core/tree/national/findSpecies";
import type { Species } from "../../../../src/core/tree/national/species";
import { naturalStand, standOrigins, type StandOrigin } from "../../../../src/core/tree/national/standOrigins";
import { numberIn, published, type PublishedRow } from "../../../support/published";
import { speciesRows, tableNames, type TableName } from "../../../support/national/packedTables";

export const COEFFICIENTS = ["a", "b", "c", "a1", "b1", "c1", "alpha", "beta"] as const;

/** The stand origin that a printed row is for; most rows are for any. */
export const originOf = ({ STDORGCD = "" }: PublishedRow): StandOrigin =>
  (STDORGCD === "1" ? standOrigins[1] : standOrigins[0]) ?? naturalStand;

export interface PrintedRow {
  readonly table: TableName;
  readonly species: Species;
  readonly division: string;
  readonly origin: StandOrigin;
  readonly row: PublishedRow;
}

export const printedSpeciesRows: readonly PrintedRow[] = tableNames.flatMap((table) =>
  speciesRows(table).map((row) => ({
    table,
    species: findSpecies(row.SPCD ?? ""),
    division: row.DIVISION ?? "",
    origin: originOf(row),
    row,
  })),
);

export const printedGroupRows = tableNames.flatMap((table) =>
  published(`tree/national/${table}.group.csv`).rows.map((row) => ({
    table,
    row,
    group: numberIn(row, "JENKINS_SPGRPCD"),
  })),
);

export const nameOf = ({ species, division, origin, row }: PrintedRow) =>
  [species.name, division, row.STDORGCD === "" ? "" : origin.title.toLowerCase()]
    .filter((part) => part !== "")
    .join(" ");

/** What a printed row says, in the words of a coefficient row. */
export function printedValues(row: PublishedRow): Record<string, number> {
  const filled = COEFFICIENTS.filter((name) => (row[name] ?? "") !== "");
  const values = filled.map((name) => [name, numberIn(row, name)] as const);
  return Object.fromEntries<number>([["model", numberIn(row, "model")], ...values]);
}

export const found = ({ table, species, division, origin }: PrintedRow) =>
  coefficientRow(table, species, division, origin);
