import { importanceValues } from "../../core/cruise/importanceValue";
import { partTotals } from "../../core/cruise/plotTotals";
import { NO_TREES } from "./amounts";
import { spilled } from "./answers";
import type { Cells } from "./readings";
import { readTally, type TallyArguments } from "./tally";
import type { UnitSystem } from "./unitSystem";

const HEADER = [
  "Species",
  "Relative frequency %",
  "Relative density %",
  "Relative dominance %",
  "Importance, of 300",
  "Importance, of 100",
];

/** What each species is to the stand, the most important first. */
export function importanceTable(given: TallyArguments, units: UnitSystem): Cells {
  const { cruise, species, speciesNames } = readTally(given, units);
  if (cruise.dbh.length === 0) return spilled(HEADER, NO_TREES);
  const values = importanceValues(partTotals(cruise, species, speciesNames.length));
  const rows = values.map(({ frequency, density, dominance, value }, kind) => ({
    value,
    cells: [speciesNames[kind], frequency, density, dominance, value, value / 3],
  }));
  return spilled(
    HEADER,
    rows.sort((one, other) => other.value - one.value).map(({ cells }) => cells),
  );
}
