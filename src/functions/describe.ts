import { feet, inches } from "../core/basis/units";
import { loreysHeight as heightOf } from "../core/cruise/loreysHeight";
import { basalArea } from "../core/tree/basalArea";
import { answered } from "./shell/answers";
import { densityTable } from "./shell/densityTable";
import { heightsAndDiameters } from "./shell/diameters";
import { importanceTable } from "./shell/importanceTable";
import { unitSystem } from "./shell/unitSystem";

/**
 * How trees were picked for the tally.
 * @customenum {string}
 */
export enum DescribeSampling {
  /** Points with a prism or an angle gauge; the size is the basal area factor */
  point = "Point",
  /** Plots laid out by area; the size is that of one plot */
  fixed = "Fixed",
  /** Strips across the tract; the size is the acres of each strip */
  strip = "Strip",
  /** Every tree of the tract; the size is its acres */
  all = "All",
  /** Thick trees by the gauge, thin ones on a fixed plot; the size is two columns, least DBH and size */
  nested = "Point and fixed",
}

/**
 * Units of what is given and of the answer.
 * @customenum {string}
 */
export enum DescribeUnits {
  /** Inches, square feet, acres */
  imperial = "imperial",
  /** Centimeters, square meters, hectares */
  metric = "metric",
}

/**
 * How crowded the stand is by each measure, before a cut and after it.
 * @customfunction DENSITYSUMMARY
 * @param plot Plot of each tallied tree: name or number.
 * @param dbh Diameter at breast height of each tree, in inches (cm).
 * @param take Whether the tree is to be cut: Yes or No. Blank: No.
 * @param plots Every plot that was visited, those without trees too: names, or numbers other than 0.
 * @param method How trees were picked: "Point", "Fixed", "Strip", "All" or "Point and fixed".
 * @param size Basal area factor in square feet per acre (m2 per ha), or acres (ha) of a plot, strip or tract. One value, one for each plot, or two columns: least DBH and size of nested plots.
 * @param [count] Trees that each row stands for: number of trees. Blank or left out: 1.
 * @param [stratum] Stratum of each plot, beside the plot list: names or numbers. Left out: no strata.
 * @param [strata] Every stratum and its size: two columns, name and acres (ha). Left out: no strata.
 * @param [units] "imperial" or "metric". Left out: imperial.
 * @returns A table: measure, before, after the cut, and what the number is.
 */
export function densitySummary(
  plot: any[][],
  dbh: any[][],
  take: any[][],
  plots: any[][],
  method: DescribeSampling,
  size: any[][],
  count?: any[][],
  stratum?: any[][],
  strata?: any[][],
  units?: DescribeUnits,
): any[][] {
  return answered(() =>
    densityTable({ plot, dbh, take, plots, method, size, count, stratum, strata }, unitSystem(units)),
  );
}

/**
 * What each species is to the stand: its share of plots, of trees and of basal area, and the three together.
 * @customfunction IMPORTANCEVALUE
 * @param plot Plot of each tallied tree: name or number.
 * @param species Species of each tree: your own code or name.
 * @param dbh Diameter at breast height of each tree, in inches (cm).
 * @param plots Every plot that was visited, those without trees too: names, or numbers other than 0.
 * @param method How trees were picked: "Point", "Fixed", "Strip", "All" or "Point and fixed".
 * @param size Basal area factor in square feet per acre (m2 per ha), or acres (ha) of a plot, strip or tract. One value, one for each plot, or two columns: least DBH and size of nested plots.
 * @param [count] Trees that each row stands for: number of trees. Blank or left out: 1.
 * @param [stratum] Stratum of each plot, beside the plot list: names or numbers. Left out: no strata.
 * @param [strata] Every stratum and its size: two columns, name and acres (ha). Left out: no strata.
 * @param [units] "imperial" or "metric". Left out: imperial.
 * @returns A table: species, relative frequency, density and dominance in percent, and importance of 300 and of 100.
 */
export function importanceValue(
  plot: any[][],
  species: any[][],
  dbh: any[][],
  plots: any[][],
  method: DescribeSampling,
  size: any[][],
  count?: any[][],
  stratum?: any[][],
  strata?: any[][],
  units?: DescribeUnits,
): any[][] {
  return answered(() =>
    importanceTable({ plot, species, dbh, plots, method, size, count, stratum, strata }, unitSystem(units)),
  );
}

/**
 * Mean height of the stand with each tree weighed by its basal area, as Lorey has it.
 * @customfunction LOREYSHEIGHT
 * @param height Total height of each tree, in feet (m). A blank is passed over.
 * @param dbh Diameter at breast height of each tree, in inches (cm).
 * @param [trees_per_acre] Trees per acre (per ha) that each stands for. Left out: every tree counts the same.
 * @param [units] "imperial" or "metric". Left out: imperial.
 * @returns Feet (m).
 */
export function loreysHeight(height: any[][], dbh: any[][], trees_per_acre?: any[][], units?: DescribeUnits): number {
  return answered(() => {
    const system = unitSystem(units);
    const { heights, diameters, trees } = heightsAndDiameters(height, dbh, trees_per_acre, system);
    const areas = diameters.map((one, row) => basalArea(inches(one)) * (trees[row] as number));
    return feet(heightOf(heights, areas)) * system.distance.perOurs;
  });
}
