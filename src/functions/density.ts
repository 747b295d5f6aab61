import { chosen } from "../core/basis/choices";
import { densityMeasures } from "../core/cruise/densities";
import { standDensity as densityOf } from "../core/cruise/standDensity";
import { answered } from "./shell/answers";
import { treesByDiameter } from "./shell/diameters";
import { oneText } from "./shell/readings";
import { unitSystem } from "./shell/unitSystem";

/**
 * Ways of saying how crowded a stand is.
 * @customenum {string}
 */
export enum DensityMeasureName {
  /** Trees of 10 in that would be as crowded, by the mean diameter. */
  Sdi = "SDI",
  /** The same, tree by tree, for stands of many sizes. */
  SdiBySummation = "SDI by summation",
  /** Basal area over the root of the mean diameter. */
  RelativeDensity = "Relative density",
  /** Percent of the growing space; coefficients from memory. */
  UplandOakStocking = "Upland oak stocking",
}

/**
 * Units of what is given and of the answer.
 * @customenum {string}
 */
export enum DensityUnits {
  /** Inches, acres */
  imperial = "imperial",
  /** Centimeters, hectares */
  metric = "metric",
}

/**
 * How crowded a stand is, from the columns of its stand table.
 * @customfunction STANDDENSITY
 * @param trees_per_acre Trees per acre (per ha) of each row.
 * @param dbh Diameter at breast height of each row, in inches (cm).
 * @param [measure] SDI, SDI by summation, Relative density or Upland oak stocking. Left out: SDI.
 * @param [units] "imperial" or "metric". Left out: imperial.
 * @returns Trees per acre (per ha) of 10 inches for SDI, percent for stocking; relative density is in ft2/ac and inches always.
 */
export function standDensity(
  trees_per_acre: any[][],
  dbh: any[][],
  measure?: DensityMeasureName,
  units?: DensityUnits,
): number {
  return answered(() => {
    const system = unitSystem(units);
    const by = chosen("Measure", oneText(measure, "Measure", DensityMeasureName.Sdi), densityMeasures);
    const density = densityOf(treesByDiameter(trees_per_acre, dbh, system), by);
    return by.perLand ? density * system.perLand.perOurs : density;
  });
}
