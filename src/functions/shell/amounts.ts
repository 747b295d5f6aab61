import { weightedMean } from "../../core/basis/statistics";
import type { PlotTotals } from "../../core/cruise/plotTotals";
import { quadraticMeanDiameterOf } from "../../core/cruise/quadraticMeanDiameter";
import type { UnitSystem } from "./unitSystem";

/** Trees, basal area, mean diameter and volume on an acre, in the user's units; no trees have no mean diameter. */
export function amountsOf(totals: PlotTotals, units: UnitSystem): (number | undefined)[] {
  const { trees, basalArea, volume } = totals;
  const { weight } = totals.design;
  const diameter = quadraticMeanDiameterOf(totals);
  return [
    weightedMean(trees, weight) * units.perLand.perOurs,
    weightedMean(basalArea, weight) * units.areaPerLand.perOurs,
    diameter && diameter * units.diameter.perOurs,
    volume && weightedMean(volume, weight) * units.perLand.perOurs,
  ];
}

/** Headings of these four. */
export const amountNames = (units: UnitSystem): string[] => [
  treesName(units),
  areaName(units),
  diameterName(units),
  volumeName(units),
];

export const treesName = ({ perLand }: UnitSystem) => `Trees ${perLand.name}`;
export const areaName = ({ areaPerLand }: UnitSystem) => `Basal area ${areaPerLand.name}`;
export const diameterName = ({ diameter }: UnitSystem) => `Quadratic mean diameter ${diameter.name}`;
export const volumeName = ({ perLand }: UnitSystem) => `Volume ${perLand.name}`;

/** What a table of the stand says while nothing has been tallied. */
export const NO_TREES = [["No trees yet"]];
