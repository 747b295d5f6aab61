import { chosen, textOf } from "../core/basis/choices";
import { InvalidInput } from "../core/basis/problem";
import { acres as inAcres, inches } from "../core/basis/units";
import { samplingMethods } from "../core/cruise/methods";
import { quadraticMeanDiameter } from "../core/cruise/quadraticMeanDiameter";
import { tractTotal as totalOfTract } from "../core/cruise/tractTotal";
import { answered, eachCell } from "./shell/answers";
import { classesBy, diametersAndWeights } from "./shell/diameters";
import { asCells, measured, oneNumber, optionalNumber } from "./shell/readings";
import {
  classesTable,
  confidenceOf,
  NOT_APPLICABLE,
  plotsTable,
  speciesTable as tableOfSpecies,
  summaryTable,
} from "./shell/standTables";
import { sizeOf } from "./shell/plots";
import { dbhBounds, readTally } from "./shell/tally";
import { unitSystem } from "./shell/unitSystem";

/**
 * How trees are picked for the tally.
 * @customenum {string}
 */
export enum SamplingMethodName {
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
export enum StandUnits {
  /** Inches, square feet, acres */
  imperial = "imperial",
  /** Centimeters, square meters, hectares */
  metric = "metric",
}

/**
 * Trees per acre that each tallied tree stands for on its plot.
 * @customfunction TREESPERACRE
 * @param dbh Diameter at breast height, in inches (cm).
 * @param method How trees were picked: "Point", "Fixed", "Strip", "All" or "Point and fixed".
 * @param size Basal area factor in square feet per acre (m2 per ha) for points, or acres (ha) of the plot, strip or tract.
 * @param [units] "imperial" or "metric". Left out: imperial.
 * @returns Trees per acre (per ha), in the shape that was given.
 */
export function treesPerAcre(dbh: any[][], method: SamplingMethodName, size: any[][], units?: StandUnits): any[][] {
  return answered(() => {
    const system = unitSystem(units);
    const picked = chosen("Method", method, samplingMethods);
    if (picked.thinTrees)
      throw new InvalidInput("One tree is picked by the gauge or on the fixed plot. Say Point or Fixed for it.");
    const sized = sizeOf(picked, system);
    const tag = (value: number) => inches(value / system.diameter.perOurs);
    const tree = {
      dbh: measured(dbh, "DBH", tag, dbhBounds(system)),
      size: optionalNumber(size, picked.size.what, sized.tag, sized.bounds, NaN),
    };
    return eachCell(tree, ({ dbh: across, size: of }) => {
      if (Number.isNaN(of)) {
        throw new InvalidInput(`${picked.size.what} needs a number in ${sized.bounds.unit}, but the cell is blank.`);
      }
      return picked.treesPerAcre(across, of) * system.perLand.perOurs;
    });
  });
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
  method: SamplingMethodName,
  size: any[][],
  volume?: any[][],
  count?: any[][],
  confidence_pct?: any,
  stratum?: any[][],
  strata?: any[][],
  cluster?: any[][],
  population?: any,
  units?: StandUnits,
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
  method: SamplingMethodName,
  size: any[][],
  class_width?: any,
  count?: any[][],
  class_rule?: ClassRuleName,
  stratum?: any[][],
  strata?: any[][],
  units?: StandUnits,
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
  method: SamplingMethodName,
  size: any[][],
  class_width?: any,
  count?: any[][],
  class_rule?: ClassRuleName,
  stratum?: any[][],
  strata?: any[][],
  units?: StandUnits,
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
  method: SamplingMethodName,
  size: any[][],
  count?: any[][],
  confidence_pct?: any,
  stratum?: any[][],
  strata?: any[][],
  cluster?: any[][],
  population?: any,
  units?: StandUnits,
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
  method: SamplingMethodName,
  size: any[][],
  count?: any[][],
  units?: StandUnits,
): any[][] {
  return answered(() => {
    const system = unitSystem(units);
    return plotsTable(readTally({ plot, dbh, volume, plots, method, size, count }, system), system);
  });
}

/**
 * Quadratic mean diameter: the diameter of the tree of mean basal area.
 * @customfunction QMD
 * @param dbh Diameters at breast height, in inches (cm).
 * @param [weight] Trees per acre that each diameter stands for; a blank counts as 0. Left out: every tree counts the same.
 * @param [units] "imperial" or "metric". Left out: imperial.
 * @returns Inches (cm).
 */
export function qmd(dbh: any[][], weight?: any[][], units?: StandUnits): number {
  return answered(() => {
    const { diameters, weights } = diametersAndWeights(dbh, weight, unitSystem(units));
    return quadraticMeanDiameter(diameters, weights);
  });
}

/**
 * Total of the tract from the amount on an acre, with its margin of error.
 * @customfunction TRACTTOTAL
 * @param per_acre Amount per acre (per ha), such as board feet.
 * @param margin Margin of error of that amount, in the same unit; or "not applicable" as a tally of every tree has it.
 * @param acres Size of the tract, in acres (ha).
 * @param [acres_margin] Margin of error of the size, in acres (ha). Left out: 0.
 * @returns One row: total, margin, low and high, in the unit of the amount. Low is below 0 where the margin is larger than the total.
 */
export function tractTotal(per_acre: any, margin: any, acres: any, acres_margin?: any): any[][] {
  return answered(() => {
    const tract = inAcres(oneNumber(acres, "Acres", { unit: "ac (ha)", low: 0.01, high: 1e7 }));
    const amount = oneNumber(per_acre, "Amount per acre", { unit: "", low: 0 }, 0);
    if (textOf(asCells(margin)[0]?.[0]).toLowerCase() === NOT_APPLICABLE)
      return [[amount * tract, ...Array<string>(3).fill(NOT_APPLICABLE)]];
    const total = totalOfTract(
      amount,
      oneNumber(margin, "Margin", { unit: "", low: 0 }, 0),
      tract,
      inAcres(oneNumber(acres_margin, "Margin of the acres", { unit: "ac (ha)", low: 0, high: 1e7 }, 0)),
    );
    return [[total.value, total.margin, total.low, total.high]];
  });
}
