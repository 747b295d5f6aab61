import { chosen } from "../../core/basis/choices";
import { classesInTheMiddle, classRules } from "../../core/cruise/classRules";
import type { DiameterList } from "../../core/cruise/standDensity";
import { BadRows } from "./badRows";
import { column, numbersOf, sharedRows } from "./columns";
import { isLeftOut, oneNumber, oneText } from "./readings";
import type { ClassesBy } from "./classesTable";
import { dbhBounds } from "./tally";
import type { UnitSystem } from "./unitSystem";

/** Diameters in the user's unit and what each weighs; without weights every tree counts the same. */
export function diametersAndWeights(dbh: unknown, weight: unknown, units: UnitSystem) {
  const diameter = column(dbh, "DBH");
  const given = column(weight, "Weight");
  const rows = sharedRows([diameter, given]);
  const bad = new BadRows();
  const diameters = numbersOf(diameter, rows, dbhBounds(units), 0, bad);
  const weights = isLeftOut(weight)
    ? diameters.map((one) => (one === 0 ? 0 : 1))
    : numbersOf(given, rows, { unit: "", low: 0 }, 0, bad, diameters);
  bad.settle();
  return { diameters, weights };
}

/** Trees per acre by diameter, in our own units; a row that lacks either is passed over, as the totals of a table are. */
export function treesByDiameter(trees: unknown, dbh: unknown, units: UnitSystem): DiameterList {
  const amount = column(trees, "Trees per acre");
  const diameter = column(dbh, "DBH");
  const rows = sharedRows([amount, diameter]);
  const bad = new BadRows();
  const diameters = numbersOf(diameter, rows, dbhBounds(units), 0, bad);
  const amounts = numbersOf(amount, rows, { unit: "", low: 0, high: 1e6 }, 0, bad, diameters);
  bad.settle();
  let kept = 0;
  for (let row = 0; row < rows; row += 1) {
    const [inches, perAcre] = [diameters[row] as number, amounts[row] as number];
    if (inches === 0 || perAcre === 0) continue;
    diameters[kept] = inches / units.diameter.perOurs;
    amounts[kept] = perAcre / units.perLand.perOurs;
    kept += 1;
  }
  return { dbh: diameters.subarray(0, kept), trees: amounts.subarray(0, kept) };
}

/** The diameter classes that are asked for; left out, the usual width with multiples of it in the middle. */
export const classesBy = (width: unknown, rule: unknown, units: UnitSystem): ClassesBy => ({
  width: widthOfClass(width, units),
  rule: chosen("Class rule", oneText(rule, "Class rule", classesInTheMiddle.title), classRules),
});

/** Width of a diameter class in the user's unit; left out, the usual 2 inches or 5 cm. */
const widthOfClass = (given: unknown, { diameter, metric }: UnitSystem): number =>
  oneNumber(
    given,
    "Class width",
    {
      unit: diameter.name,
      low: 0.5 * diameter.perOurs,
      high: 20 * diameter.perOurs,
    },
    metric ? 5 : 2,
  );

/** Heights, diameters and what each tree stands for, in our own units; a tree that lacks a height or a diameter is passed over. */
export function heightsAndDiameters(height: unknown, dbh: unknown, weight: unknown, units: UnitSystem) {
  const { distance, diameter } = units;
  const tall = column(height, "Height");
  const thick = column(dbh, "DBH");
  const given = column(weight, "Trees per acre");
  const rows = sharedRows([tall, thick, given]);
  const bad = new BadRows();
  const heightBounds = {
    unit: distance.name,
    low: distance.perOurs,
    high: 400 * distance.perOurs,
  };
  const measured = numbersOf(tall, rows, heightBounds, 0, bad);
  const across = numbersOf(thick, rows, dbhBounds(units), 0, bad, measured);
  const stands = isLeftOut(weight)
    ? new Float64Array(rows).fill(1)
    : numbersOf(given, rows, { unit: "", low: 0, high: 1e6 }, 0, bad, measured);
  bad.settle();
  let kept = 0;
  for (let row = 0; row < rows; row += 1) {
    const [tallness, thickness] = [measured[row] as number, across[row] as number];
    if (tallness === 0 || thickness === 0) continue;
    measured[kept] = tallness / distance.perOurs;
    across[kept] = thickness / diameter.perOurs;
    stands[kept] = stands[row] as number;
    kept += 1;
  }
  return {
    heights: measured.subarray(0, kept),
    diameters: across.subarray(0, kept),
    trees: stands.subarray(0, kept),
  };
}
