import { answered } from "./shell/answers";
import { cutByClassTable, cutBySpeciesTable } from "./shell/cutParts";
import { classesBy } from "./shell/diameters";
import { confidenceOf } from "./shell/margins";
import { unitSystem } from "./shell/unitSystem";

/**
 * How trees were picked for the tally.
 * @customenum {string}
 */
export enum CutPartsSampling {
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
export enum CutPartsUnits {
  /** Inches, square feet, acres */
  imperial = "imperial",
  /** Centimeters, square meters, hectares */
  metric = "metric",
}

/**
 * Where the limits of diameter classes lie.
 * @customenum {string}
 */
export enum CutClassRule {
  /** Multiples of the width in the middle: the 2-inch class 12 holds 11.0 to under 13.0 */
  middle = "Middle",
  /** Multiples of the width at the edges: 16.0 to under 18.0 is called 17 */
  edge = "Edge",
}

/**
 * The stand per acre before a cut, what is cut and what is left, by diameter class.
 * @customfunction CUTBYCLASS
 * @param plot Plot of each tallied tree: name or number.
 * @param dbh Diameter at breast height of each tree, in inches (cm).
 * @param take Whether the tree is to be cut: Yes or No. Blank: No.
 * @param plots Every plot that was visited, those without trees too: names, or numbers other than 0.
 * @param method How trees were picked: "Point", "Fixed", "Strip", "All" or "Point and fixed".
 * @param size Basal area factor in square feet per acre (m2 per ha), or acres (ha) of a plot, strip or tract. One value, one for each plot, or two columns: least DBH and size of nested plots.
 * @param [volume] Volume of each tree, in any one unit such as board feet. Left out: no volume.
 * @param [class_width] Width of a diameter class, in inches (cm). Left out: 2 in (5 cm).
 * @param [count] Trees that each row stands for: number of trees. Blank or left out: 1.
 * @param [confidence_pct] Confidence of the margins, in percent. Left out: 95.
 * @param [class_rule] "Middle": a 2-inch class 12 holds 11.0 to under 13.0; "Edge": class 17 holds 16.0 to under 18.0. Left out: Middle.
 * @param [stratum] Stratum of each plot, beside the plot list: names or numbers. Left out: no strata.
 * @param [strata] Every stratum and its size: two columns, name and acres (ha). Left out: no strata.
 * @param [cluster] Cluster of each plot, beside the plot list, where plots were taken in groups: names or numbers. Left out: no clusters.
 * @param [population] How many plots would cover the tract, for fixed plots only: number of plots. Left out: no limit.
 * @param [units] "imperial" or "metric". Left out: imperial.
 * @returns A table: class; trees before, cut and left with margins; basal area and volume before, cut and left; all classes in the last row.
 */
export function cutByClass(
  plot: any[][],
  dbh: any[][],
  take: any[][],
  plots: any[][],
  method: CutPartsSampling,
  size: any[][],
  volume?: any[][],
  class_width?: any,
  count?: any[][],
  confidence_pct?: any,
  class_rule?: CutClassRule,
  stratum?: any[][],
  strata?: any[][],
  cluster?: any[][],
  population?: any,
  units?: CutPartsUnits,
): any[][] {
  return answered(() => {
    const system = unitSystem(units);
    return cutByClassTable(
      {
        plot,
        dbh,
        take,
        plots,
        method,
        size,
        volume,
        count,
        stratum,
        strata,
        cluster,
        population,
      },
      classesBy(class_width, class_rule, system),
      confidenceOf(confidence_pct),
      system,
    );
  });
}

/**
 * The stand per acre before a cut, what is cut and what is left, by species.
 * @customfunction CUTBYSPECIES
 * @param plot Plot of each tallied tree: name or number.
 * @param species Species of each tree: your own code or name.
 * @param dbh Diameter at breast height of each tree, in inches (cm).
 * @param take Whether the tree is to be cut: Yes or No. Blank: No.
 * @param plots Every plot that was visited, those without trees too: names, or numbers other than 0.
 * @param method How trees were picked: "Point", "Fixed", "Strip", "All" or "Point and fixed".
 * @param size Basal area factor in square feet per acre (m2 per ha), or acres (ha) of a plot, strip or tract. One value, one for each plot, or two columns: least DBH and size of nested plots.
 * @param [volume] Volume of each tree, in any one unit such as board feet. Left out: no volume.
 * @param [count] Trees that each row stands for: number of trees. Blank or left out: 1.
 * @param [confidence_pct] Confidence of the margins, in percent. Left out: 95.
 * @param [stratum] Stratum of each plot, beside the plot list: names or numbers. Left out: no strata.
 * @param [strata] Every stratum and its size: two columns, name and acres (ha). Left out: no strata.
 * @param [cluster] Cluster of each plot, beside the plot list, where plots were taken in groups: names or numbers. Left out: no clusters.
 * @param [population] How many plots would cover the tract, for fixed plots only: number of plots. Left out: no limit.
 * @param [units] "imperial" or "metric". Left out: imperial.
 * @returns A table: species; trees before, cut and left with margins; basal area and volume before, cut and left; all species in the last row.
 */
export function cutBySpecies(
  plot: any[][],
  species: any[][],
  dbh: any[][],
  take: any[][],
  plots: any[][],
  method: CutPartsSampling,
  size: any[][],
  volume?: any[][],
  count?: any[][],
  confidence_pct?: any,
  stratum?: any[][],
  strata?: any[][],
  cluster?: any[][],
  population?: any,
  units?: CutPartsUnits,
): any[][] {
  return answered(() => {
    const system = unitSystem(units);
    return cutBySpeciesTable(
      {
        plot,
        species,
        dbh,
        take,
        plots,
        method,
        size,
        volume,
        count,
        stratum,
        strata,
        cluster,
        population,
      },
      confidenceOf(confidence_pct),
      system,
    );
  });
}
