import type { DiameterList } from "../../core/cruise/standDensity";
import { BadRows, column, numberAt, sharedRows } from "./columns";
import { isLeftOut, oneNumber } from "./readings";
import { dbhBounds } from "./tally";
import type { UnitSystem } from "./unitSystem";

/** Diameters in the user's unit and what each weighs; without weights every tree counts the same. */
export function diametersAndWeights(dbh: unknown, weight: unknown, units: UnitSystem) {
  const diameter = column(dbh, "DBH");
  const given = column(weight, "Weight");
  const equal = isLeftOut(weight);
  const rows = sharedRows([diameter, given]);
  const diameters = new Float64Array(rows);
  const weights = new Float64Array(rows);
  const bad = new BadRows();
  for (let row = 0; row < rows; row += 1) {
    bad.guard(row, () => {
      diameters[row] = numberAt(diameter, row, dbhBounds(units), 0);
      if (diameters[row] !== 0) weights[row] = equal ? 1 : numberAt(given, row, { unit: "", low: 0 }, 0);
    });
  }
  bad.settle();
  return { diameters, weights };
}

/** Trees per acre by diameter, in our own units; a row that lacks either is passed over, as the totals of a table are. */
export function treesByDiameter(trees: unknown, dbh: unknown, units: UnitSystem): DiameterList {
  const amount = column(trees, "Trees per acre");
  const diameter = column(dbh, "DBH");
  const rows = sharedRows([amount, diameter]);
  const kept: { dbh: number[]; trees: number[] } = { dbh: [], trees: [] };
  const bad = new BadRows();
  for (let row = 0; row < rows; row += 1) {
    bad.guard(row, () => {
      const inches = numberAt(diameter, row, dbhBounds(units), 0) / units.diameter.perOurs;
      const perAcre = numberAt(amount, row, { unit: "", low: 0, high: 1e6 }, 0) / units.perLand.perOurs;
      if (inches === 0 || perAcre === 0) return;
      kept.dbh.push(inches);
      kept.trees.push(perAcre);
    });
  }
  bad.settle();
  return kept;
}

/** Width of a diameter class in the user's unit; left out, the usual 2 inches or 5 cm. */
export const widthOfClass = (given: unknown, { diameter, metric }: UnitSystem): number =>
  oneNumber(
    given,
    "Class width",
    { unit: diameter.name, low: 0.5 * diameter.perOurs, high: 20 * diameter.perOurs },
    metric ? 5 : 2,
  );
