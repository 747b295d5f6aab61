import { answered } from "./shell/answers";
import { cutTable } from "./shell/cutTable";
import { unitSystem } from "./shell/unitSystem";

/**
 * How trees were picked for the tally.
 * @customenum {string}
 */
export enum CutSamplingName {
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
export enum CutUnits {
  /** Inches, square feet, acres */
  imperial = "imperial",
  /** Centimeters, square meters, hectares */
  metric = "metric",
}

/**
 * The stand per acre before a cut, what is cut and what is left.
 * @customfunction CUTSUMMARY
 * @param plot Plot of each tallied tree: name or number.
 * @param dbh Diameter at breast height of each tree, in inches (cm).
 * @param take Whether the tree is to be cut: Yes or No. Blank: No.
 * @param plots Every plot that was visited, those without trees too: names, or numbers other than 0.
 * @param method How trees were picked: "Point", "Fixed", "Strip", "All" or "Point and fixed".
 * @param size Basal area factor in square feet per acre (m2 per ha), or acres (ha) of a plot, strip or tract. One value, one for each plot, or two columns: least DBH and size of nested plots.
 * @param [volume] Volume of each tree, in any one unit such as board feet. Left out: no volume.
 * @param [count] Trees that each row stands for: number of trees. Blank or left out: 1.
 * @param [stratum] Stratum of each plot, beside the plot list: names or numbers. Left out: no strata.
 * @param [strata] Every stratum and its size: two columns, name and acres (ha). Left out: no strata.
 * @param [units] "imperial" or "metric". Left out: imperial.
 * @returns A table: before, cut and leave by trees, basal area, mean diameter, volume and share.
 */
export function cutSummary(
  plot: any[][],
  dbh: any[][],
  take: any[][],
  plots: any[][],
  method: CutSamplingName,
  size: any[][],
  volume?: any[][],
  count?: any[][],
  stratum?: any[][],
  strata?: any[][],
  units?: CutUnits,
): any[][] {
  return answered(() =>
    cutTable({ plot, dbh, take, plots, method, size, volume, count, stratum, strata }, unitSystem(units)),
  );
}
