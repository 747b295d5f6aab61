import { answered } from "./shell/answers";
import { confidenceOf } from "./shell/margins";
import { plotsTable } from "./shell/plotsTable";
import { speciesTable as tableOfSpecies } from "./shell/speciesTable";
import { summaryTable } from "./shell/summaryTable";
import { readTally } from "./shell/tally";
import { unitSystem } from "./shell/unitSystem";

/**
 * How trees are picked for the tally.
 * @customenum {string}
 */
export enum SummarySampling {
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
export enum SummaryUnits {
  /** Inches, square feet, acres */
  imperial = "imperial",
  /** Centimeters, square meters, hectares */
  metric = "metric",
}

/**
 * Trees, basal area, mean diameter and volume of the stand per acre, each with its margin of error.
 * @customfunction STANDSUMMARY
 * @param plot Plot of each tallied tree: name or number.
 * @param dbh Diameter at breast height of each tree, in inches (cm).
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
 * @returns A table: measure, value, margin, margin in percent, low and high. Low is below 0 where the margin is larger than the value: too few plots.
 */
export function standSummary(
  plot: any[][],
  dbh: any[][],
  plots: any[][],
  method: SummarySampling,
  size: any[][],
  volume?: any[][],
  count?: any[][],
  confidence_pct?: any,
  stratum?: any[][],
  strata?: any[][],
  cluster?: any[][],
  population?: any,
  units?: SummaryUnits,
): any[][] {
  return answered(() => {
    const system = unitSystem(units);
    return summaryTable(
      readTally(
        {
          plot,
          dbh,
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
        system,
      ),
      confidenceOf(confidence_pct),
      system,
    );
  });
}

/**
 * What each species adds to the stand per acre, with a margin of error of its own.
 * @customfunction SPECIESTABLE
 * @param plot Plot of each tallied tree: name or number.
 * @param species Species of each tree: your own code or name.
 * @param dbh Diameter at breast height of each tree, in inches (cm).
 * @param volume Volume of each tree, in any one unit such as board feet; blank for none.
 * @param plots Every plot that was visited, those without trees too: names, or numbers other than 0.
 * @param method How trees were picked: "Point", "Fixed", "Strip", "All" or "Point and fixed".
 * @param size Basal area factor in square feet per acre (m2 per ha), or acres (ha) of a plot, strip or tract. One value, one for each plot, or two columns: least DBH and size of nested plots.
 * @param [count] Trees that each row stands for: number of trees. Blank or left out: 1.
 * @param [confidence_pct] Confidence of the margins, in percent. Left out: 95.
 * @param [stratum] Stratum of each plot, beside the plot list: names or numbers. Left out: no strata.
 * @param [strata] Every stratum and its size: two columns, name and acres (ha). Left out: no strata.
 * @param [cluster] Cluster of each plot, beside the plot list, where plots were taken in groups: names or numbers. Left out: no clusters.
 * @param [population] How many plots would cover the tract, for fixed plots only: number of plots. Left out: no limit.
 * @param [units] "imperial" or "metric". Left out: imperial.
 * @returns A table: species, trees, basal area, mean diameter, volume, share and margin; all species in the last row.
 */
export function speciesTable(
  plot: any[][],
  species: any[][],
  dbh: any[][],
  volume: any[][],
  plots: any[][],
  method: SummarySampling,
  size: any[][],
  count?: any[][],
  confidence_pct?: any,
  stratum?: any[][],
  strata?: any[][],
  cluster?: any[][],
  population?: any,
  units?: SummaryUnits,
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
        cluster,
        population,
      },
      system,
    );
    return tableOfSpecies(tally, confidenceOf(confidence_pct), system);
  });
}

/**
 * What each plot says of an acre, plots without trees included.
 * @customfunction PLOTTABLE
 * @param plot Plot of each tallied tree: name or number.
 * @param dbh Diameter at breast height of each tree, in inches (cm).
 * @param volume Volume of each tree, in any one unit such as board feet; blank for none.
 * @param plots Every plot that was visited, those without trees too: names, or numbers other than 0.
 * @param method How trees were picked: "Point", "Fixed", "Strip", "All" or "Point and fixed".
 * @param size Basal area factor in square feet per acre (m2 per ha), or acres (ha) of a plot, strip or tract. One value, one for each plot, or two columns: least DBH and size of nested plots.
 * @param [count] Trees that each row stands for: number of trees. Blank or left out: 1.
 * @param [units] "imperial" or "metric". Left out: imperial.
 * @returns A table: plot, trees tallied, trees, basal area and volume per acre.
 */
export function plotTable(
  plot: any[][],
  dbh: any[][],
  volume: any[][],
  plots: any[][],
  method: SummarySampling,
  size: any[][],
  count?: any[][],
  units?: SummaryUnits,
): any[][] {
  return answered(() => {
    const system = unitSystem(units);
    return plotsTable(readTally({ plot, dbh, volume, plots, method, size, count }, system), system);
  });
}
