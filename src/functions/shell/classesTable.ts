import type { ClassRule } from "../../core/cruise/classRules";
import { classTable, type Amount } from "../../core/cruise/classTable";
import { NO_TREES } from "./amounts";
import { spilled } from "./answers";
import type { Cells } from "./readings";
import { speciesByName } from "./speciesByName";
import type { Tally } from "./tally";
import type { UnitSystem } from "./unitSystem";

const ALL_SPECIES = "All species";

/** Into which diameter classes trees are sorted. */
export interface ClassesBy {
  /** In the user's unit. */
  readonly width: number;
  readonly rule: ClassRule;
}

/** What a class holds, in words, for the heading over the classes. */
export const classHeading = ({ width, rule }: ClassesBy, { diameter }: UnitSystem) =>
  `DBH class ${diameter.name}; ${rule.says(width, diameter.name)}`;

/** Trees or volume by diameter class and species, with totals both ways; species by name. */
export function classesTable(tally: Tally, amount: Amount, by: ClassesBy, units: UnitSystem): Cells {
  const { width, rule } = by;
  const order = speciesByName(tally.speciesNames);
  const what = amount === "trees" ? "Trees" : "Volume";
  const header = [
    `${what} ${units.perLand.name} by ${classHeading(by, units)}`,
    ...order.map((kind) => tally.speciesNames[kind] as string),
    ALL_SPECIES,
  ];
  if (tally.cruise.dbh.length === 0) return spilled(header, NO_TREES);
  const { classes, amounts } = classTable(
    tally.cruise,
    tally.species,
    tally.speciesNames.length,
    width / units.diameter.perOurs,
    amount,
    rule,
  );
  const rows = amounts.map((row) => order.map((kind) => (row[kind] as number) * units.perLand.perOurs));
  const columnSums = order.map((_, column) => sum(rows.map((row) => row[column] as number)));
  return spilled(header, [
    ...rows.map((row, k) => [rule.midpointOf(classes[k] as number, width), ...row, sum(row)]),
    ["All classes", ...columnSums, sum(columnSums)],
  ]);
}

const sum = (values: readonly number[]) => values.reduce((total, one) => total + one, 0);
