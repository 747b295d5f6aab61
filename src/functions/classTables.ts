import { answered } from "./shell/answers";
import { classesBy } from "./shell/diameters";
import { classesTable } from "./shell/classesTable";
import { readTally } from "./shell/tally";
import { unitSystem } from "./shell/unitSystem";

/**
 * How trees are picked for the tally.
 * @customenum {string}
 */
export enum ClassTableSampling {
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
 * Where the limits of diameter classes lie.
 * @customenum {string}
 */
export enum ClassRuleName {
  /** Multiples of the width in the middle: the 2-inch class 12 holds 11.0 to under 13.0 */
  middle = "Middle",
  /** Multiples of the width at the edges: 16.0 to under 18.0 is called 17 */
  edge = "Edge",
}

/**
 * Units of what is given and of the answer.
 * @customenum {string}
 */
export enum ClassTableUnits {
  /** Inches, square feet, acres */
  imperial = "imperial",
  /** Centimeters, square meters, hectares */
  metric = "metric",
}

/**
 * Trees per acre by diameter class and species.
 * @customfunction STANDTABLE
 * @param plot Plot of each tallied tree: name or number.
 * @param species Species of each tree: your own code or name.
 * @param dbh Diameter at breast height of each tree, in inches (cm).
 * @param plots Every plot that was visited, those without trees too: names, or numbers other than 0.
 * @param method How trees were picked: "Point", "Fixed", "Strip", "All" or "Point and fixed".
 * @param size Basal area factor in square feet per acre (m2 per ha), or acres (ha) of a plot, strip or tract. One value, one for each plot, or two columns: least DBH and size of nested plots.
 * @param [class_width] Width of a diameter class, in inches (cm). Left out: 2 in (5 cm).
 * @param [count] Trees that each row stands for: number of trees. Blank or left out: 1.
 * @param [class_rule] "Middle": a 2-inch class 12 holds 11.0 to under 13.0; "Edge": class 17 holds 16.0 to under 18.0. Left out: Middle.
 * @param [stratum] Stratum of each plot, beside the plot list: names or numbers. Left out: no strata.
 * @param [strata] Every stratum and its size: two columns, name and acres (ha). Left out: no strata.
 * @param [units] "imperial" or "metric". Left out: imperial.
 * @returns A table: diameter class by species, with totals.
 */
export function standTable(
  plot: any[][],
  species: any[][],
  dbh: any[][],
  plots: any[][],
  method: ClassTableSampling,
  size: any[][],
  class_width?: any,
  count?: any[][],
  class_rule?: ClassRuleName,
  stratum?: any[][],
  strata?: any[][],
  units?: ClassTableUnits,
): any[][] {
  return answered(() => {
    const system = unitSystem(units);
    const tally = readTally({ plot, species, dbh, plots, method, size, count, stratum, strata }, system);
    return classesTable(tally, "trees", classesBy(class_width, class_rule, system), system);
  });
}

/**
 * Volume per acre by diameter class and species.
 * @customfunction STOCKTABLE
 * @param plot Plot of each tallied tree: name or number.
 * @param species Species of each tree: your own code or name.
 * @param dbh Diameter at breast height of each tree, in inches (cm).
 * @param volume Volume of each tree, in any one unit such as board feet.
 * @param plots Every plot that was visited, those without trees too: names, or numbers other than 0.
 * @param method How trees were picked: "Point", "Fixed", "Strip", "All" or "Point and fixed".
 * @param size Basal area factor in square feet per acre (m2 per ha), or acres (ha) of a plot, strip or tract. One value, one for each plot, or two columns: least DBH and size of nested plots.
 * @param [class_width] Width of a diameter class, in inches (cm). Left out: 2 in (5 cm).
 * @param [count] Trees that each row stands for: number of trees. Blank or left out: 1.
 * @param [class_rule] "Middle": a 2-inch class 12 holds 11.0 to under 13.0; "Edge": class 17 holds 16.0 to under 18.0. Left out: Middle.
 * @param [stratum] Stratum of each plot, beside the plot list: names or numbers. Left out: no strata.
 * @param [strata] Every stratum and its size: two columns, name and acres (ha). Left out: no strata.
 * @param [units] "imperial" or "metric". Left out: imperial.
 * @returns A table: diameter class by species, with totals.
 */
export function stockTable(
  plot: any[][],
  species: any[][],
  dbh: any[][],
  volume: any[][],
  plots: any[][],
  method: ClassTableSampling,
  size: any[][],
  class_width?: any,
  count?: any[][],
  class_rule?: ClassRuleName,
  stratum?: any[][],
  strata?: any[][],
  units?: ClassTableUnits,
): any[][] {
  return answered(() => {
    const system = unitSystem(units);
    const tally = readTally(
      {
        plot,
        species,
        dbh,
        volume,
        plots,
        method,
        size,
        count,
        stratum,
        strata,
      },
      system,
    );
    return classesTable(tally, "volume", classesBy(class_width, class_rule, system), system);
  });
}
