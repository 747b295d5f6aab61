import { chosen, textOf } from "../core/basis/choices";
import { InvalidInput } from "../core/basis/problem";
import { acres as inAcres, inches } from "../core/basis/units";
import { samplingMethods } from "../core/cruise/methods";
import { quadraticMeanDiameter } from "../core/cruise/quadraticMeanDiameter";
import { tractTotal as totalOfTract } from "../core/cruise/tractTotal";
import { answered, eachCell } from "./shell/answers";
import { diametersAndWeights } from "./shell/diameters";
import { NOT_APPLICABLE } from "./shell/margins";
import { asCells, measured, oneNumber, optionalNumber } from "./shell/readings";
import { sizeOf } from "./shell/plotSizes";
import { dbhBounds } from "./shell/tally";
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
