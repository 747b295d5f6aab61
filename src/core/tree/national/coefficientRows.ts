import { OutOfRange } from "../../basis/problem";
import { groupCoefficients } from "../../reference/national/groupCoefficients";
import { speciesCoefficients } from "../../reference/national/speciesCoefficients";
import type { Coefficients } from "./forms/volumeForm";
import type { Species } from "./species";
import type { StandOrigin } from "./standOrigins";

export type TableName = keyof typeof speciesCoefficients.tables;

/** One row of a table: its model and the coefficients that this model has. The two ratio tables have alpha and beta. */
export interface CoefficientRow extends Partial<Coefficients> {
  readonly model: number;
  readonly alpha?: number;
  readonly beta?: number;
}

/** What each model has, in any order. */
const COEFFICIENTS_OF_MODEL: Readonly<Record<number, readonly string[]>> = {
  1: ["a", "b", "c"],
  2: ["a", "b", "b1", "c"],
  3: ["a", "a1", "b", "c", "c1"],
  4: ["a", "b", "b1", "c"],
  6: ["alpha", "beta"],
};

const BILLION = 1e9;

let unpacked: Readonly<Record<TableName, ReadonlyMap<string, CoefficientRow>>> | undefined;

/**
 * The row of a table for a species: that of its division, else that of the species at large, else that of its group.
 *
 * @throws OutOfRange for woodland trees, whose group has no rows
 */
export function coefficientRow(
  table: TableName,
  { code, name, group }: Species,
  division: string,
  origin: StandOrigin,
): CoefficientRow {
  unpacked ??= unpackedTables();
  const rows = unpacked[table];
  const [plain, ofOrigin] = [String(code), `${code}${origin.letter}`];
  const found =
    rows.get(`${ofOrigin} ${division}`) ??
    rows.get(`${plain} ${division}`) ??
    rows.get(`${ofOrigin} `) ??
    rows.get(`${plain} `) ??
    groupCoefficients[table].find((row) => row.group === group);
  if (found) return found;
  throw new OutOfRange(`The national equations as published have no row for ${name}, a woodland tree.`);
}

function unpackedTables() {
  const keys = speciesCoefficients.keys.split(";").flatMap((ofSpecies) => {
    const [species = "", ...rows] = ofSpecies.split(" ");
    return rows.map((row) => {
      const [division = "", models = ""] = row.split(":");
      return { key: `${species} ${division}`, models };
    });
  });
  const names = Object.keys(speciesCoefficients.tables) as TableName[];
  const tables = names.map((name, place) => [
    name,
    unpackedTable(
      name,
      keys.map(({ key, models }) => [key, Number(models[place])]),
    ),
  ]);
  return Object.fromEntries(tables) as Readonly<Record<TableName, ReadonlyMap<string, CoefficientRow>>>;
}

/** How the numbers are packed is told beside them. */
function unpackedTable(table: TableName, keys: readonly (readonly [string, number])[]) {
  const { columns, packed } = speciesCoefficients.tables[table];
  const { digits } = speciesCoefficients;
  const rows = new Map<string, CoefficientRow>();
  let at = 0;
  const number = (least: number, width: number): number => {
    let count = 0;
    for (const end = at + width; at < end; at += 1)
      count = count * digits.length + digits.indexOf(packed[at] as string);
    return (Math.round(least * BILLION) + count) / BILLION;
  };
  for (const [key, model] of keys) {
    const needed = COEFFICIENTS_OF_MODEL[model];
    if (!needed) continue;
    const row: Record<string, number> = { model };
    for (const { name, least, width } of columns) if (needed.includes(name)) row[name] = number(least, width);
    rows.set(key, row as unknown as CoefficientRow);
  }
  return rows;
}
