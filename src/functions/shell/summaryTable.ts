import { weightedMean } from "../../core/basis/statistics";
import type { Percent } from "../../core/basis/units";
import { estimateBy } from "../../core/cruise/plotDesign";
import { plotTotals } from "../../core/cruise/plotTotals";
import { estimateQuadraticMeanDiameter, quadraticMeanDiameterOf } from "../../core/cruise/quadraticMeanDiameter";
import { areaName, diameterName, NO_TREES, treesName, volumeName } from "./amounts";
import { spilled } from "./answers";
import { estimated, marginAt } from "./margins";
import type { Cells } from "./readings";
import type { Tally } from "./tally";
import type { UnitSystem } from "./unitSystem";

/** Trees, basal area, mean diameter and volume of the stand, each with its margin of error. */
export function summaryTable({ cruise }: Tally, confidence: Percent, units: UnitSystem): Cells {
  const header = ["Measure", "Value", marginAt(confidence), "Margin %", "Low", "High"];
  if (cruise.dbh.length === 0) return spilled(header, NO_TREES);
  const totals = plotTotals(cruise);
  const perLand = units.perLand.perOurs;
  const line = (name: string, plots: ArrayLike<number>, factor: number) => [
    name,
    ...estimated(cruise.method, weightedMean(plots, totals.design.weight), factor, () =>
      estimateBy(totals.design, plots, confidence),
    ),
  ];
  return spilled(header, [
    line(treesName(units), totals.trees, perLand),
    line(areaName(units), totals.basalArea, units.areaPerLand.perOurs),
    [
      diameterName(units),
      ...estimated(cruise.method, quadraticMeanDiameterOf(totals), units.diameter.perOurs, () =>
        estimateQuadraticMeanDiameter(totals, confidence),
      ),
    ],
    totals.volume ? line(volumeName(units), totals.volume, perLand) : [volumeName(units)],
  ]);
}
