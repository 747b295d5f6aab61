import { cutSummary } from "../../src/functions/cut";
import { cutByClass, cutBySpecies } from "../../src/functions/cutParts";
import { densitySummary } from "../../src/functions/describe";
import type { CellValue } from "../../src/workbook/plan";
import { out, plot, PLOTS, tree, TREES } from "../../src/workbook/tables";

type Column = (CellValue | undefined)[][];

/** The answers of the sheet Cut over a book in memory. */
export function cutAnswers(
  of: (table: string, heading: string) => Column,
  size: number,
): Readonly<Record<string, () => CellValue[][]>> {
  const take = () => of(TREES, tree.take).map(([one]) => [one === "No" ? "No" : "Yes"]);
  const [trees, plots, point] = [() => of(TREES, tree.plot), () => of(PLOTS, plot.counted), "Point" as never];
  const [dbh, volume] = [() => of(TREES, tree.dbh), () => of(TREES, tree.volume)];
  return {
    [out.cut]: () => cutSummary(trees(), dbh(), take(), plots(), point, [[size]], volume()),
    [out.cutDensity]: () => densitySummary(trees(), dbh(), take(), plots(), point, [[size]]),
    [out.cutClasses]: () => cutByClass(trees(), dbh(), take(), plots(), point, [[size]], volume()),
    [out.cutSpecies]: () =>
      cutBySpecies(trees(), of(TREES, tree.species), dbh(), take(), plots(), point, [[size]], volume()),
  };
}
