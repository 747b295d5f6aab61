import { feet, inches } from "../core/basis/units";
import { biltmoreMark as markOf } from "../core/tree/biltmoreMark";
import { dbhFromGirth as dbhOf } from "../core/tree/dbhFromGirth";
import { heightScales, percentScale } from "../core/tree/heightScales";
import { horizontalDistance as levelDistance } from "../core/tree/horizontalDistance";
import { logsFromHeight as logsIn } from "../core/tree/logsFromHeight";
import { treeHeight as heightOf } from "../core/tree/treeHeight";
import { answered, eachCell } from "./shell/answers";
import { chosenOr, measuredDbh, measuredIn } from "./shell/measuredIn";
import { measured, oneNumber, optionalNumber } from "./shell/readings";
import { slopeReading, taped } from "./shell/taped";
import { unitSystem } from "./shell/unitSystem";

/**
 * Scale of the instrument that angles are read on.
 * @customenum {string}
 */
export enum AngleScale {
  /** Feet of rise in 100 feet. */
  Percent = "Percent",
  /** Degrees of angle. */
  Degrees = "Degrees",
  /** Feet of rise in 66 feet. */
  Topo = "Topo",
}

/**
 * Units of what is given and of the answer.
 * @customenum {string}
 */
export enum WoodsUnits {
  /** Inches, feet, square feet per acre. */
  Imperial = "imperial",
  /** Centimeters, meters, square meters per hectare. */
  Metric = "metric",
}

/**
 * Height of a tree from a distance and two readings of an angle instrument.
 * @customfunction TREEHEIGHT
 * @param distance Distance from the eye to the tree, in feet (meters when metric).
 * @param top Reading to the top, in units of the scale.
 * @param base Reading to the base, in units of the scale; negative when it lies below the eye.
 * @param [scale] Scale of the readings: Percent, Degrees or Topo (66 feet). Left out: Percent.
 * @param [slope_pct] Slope along which the distance was taped, in percent. Left out: 0.
 * @param [units] Units of distance and height: imperial or metric. Left out: imperial.
 * @returns Feet (meters when metric), in the shape that was given.
 */
export function treeHeight(
  distance: any[][],
  top: any[][],
  base: any[][],
  scale?: AngleScale,
  slope_pct?: any[][],
  units?: WoodsUnits,
): any[][] {
  return answered(() => {
    const system = unitSystem(units);
    const readOn = chosenOr("Scale", scale, heightScales, percentScale);
    const bounds = { unit: readOn.unit, low: -readOn.largestReading, high: readOn.largestReading };
    const sighting = {
      distance: taped(distance, "Distance", system),
      top: optionalNumber(top, "Top reading", Number, bounds),
      base: optionalNumber(base, "Base reading", Number, bounds),
      slope: slopeReading(slope_pct),
    };
    return eachCell(sighting, (one) => heightOf({ ...one, scale: readOn }) * system.distance.perOurs);
  });
}

/**
 * Level distance of one that was taped along a slope.
 * @customfunction HORIZONTALDISTANCE
 * @param slope_distance Distance along the slope, in feet, meters or any other unit.
 * @param slope_pct Slope, in percent.
 * @returns Level distance, in the unit and the shape that was given.
 */
export function horizontalDistance(slope_distance: any[][], slope_pct: any[][]): any[][] {
  return answered(() =>
    eachCell(
      {
        distance: measured(slope_distance, "Slope distance", feet, { unit: "", low: 0.001, high: 1e6 }),
        slope: slopeReading(slope_pct),
      },
      ({ distance, slope }) => levelDistance(distance, slope),
    ),
  );
}

/**
 * Number of logs in a merchantable height, to the nearest half log.
 * @customfunction LOGSFROMHEIGHT
 * @param merch_height Height from the stump to the merchantable top, in feet.
 * @param [log_length] Length of a log, in feet. Left out or 0: 16.
 * @param [trim] Trim left on each log, in feet. Left out: 0.3.
 * @param [step] What the count is rounded to, in logs. Left out or 0: 0.5.
 * @returns Logs, in the shape that was given.
 */
export function logsFromHeight(merch_height: any[][], log_length?: any, trim?: any, step?: any): any[][] {
  return answered(() => {
    const logLength = feet(oneNumber(log_length, "Log length", { unit: "ft", low: 1, high: 100 }, 16));
    const rounding = oneNumber(step, "Step", { unit: "logs", low: 0.01, high: 1 }, 0.5);
    const counted = {
      height: measured(merch_height, "Merchantable height", feet, { unit: "ft", low: 0.1, high: 400 }),
      trim: optionalNumber(trim, "Trim", feet, { unit: "ft", low: 0, high: 10 }, 0.3),
    };
    return eachCell(counted, ({ height, trim }) => logsIn({ height, logLength, trim, step: rounding }));
  });
}

/**
 * Diameter of a tree from its girth at breast height.
 * @customfunction DBHFROMGIRTH
 * @param circumference Girth at breast height, over bark, in inches or cm.
 * @returns Diameter, in the unit and the shape that was given.
 */
export function dbhFromGirth(circumference: any[][]): any[][] {
  return answered(() =>
    eachCell(
      { girth: measured(circumference, "Circumference", inches, { unit: "in or cm", low: 1, high: 800 }) },
      ({ girth }) => dbhOf(girth),
    ),
  );
}

/**
 * Where a diameter is marked on a Biltmore stick that is held level against the tree.
 * @customfunction BILTMOREMARK
 * @param dbh Diameter at breast height that the mark is for, in inches (cm when metric).
 * @param reach Distance from the eye to the stick, in inches (cm when metric); 25 inches is usual.
 * @param [units] Units: imperial or metric. Left out: imperial.
 * @returns Inches (cm when metric) from the end of the stick, in the shape that was given.
 */
export function biltmoreMark(dbh: any[][], reach: any[][], units?: WoodsUnits): any[][] {
  return answered(() => {
    const system = unitSystem(units);
    const held = {
      dbh: measuredDbh(dbh, system),
      reach: measuredIn(reach, "Reach", system.diameter, inches, 10, 60),
    };
    return eachCell(held, ({ dbh, reach }) => markOf(dbh, reach) * system.diameter.perOurs);
  });
}
