import { feet } from "../core/basis/units";
import { gridInOutline as pointsInside } from "../core/cruise/gridInOutline";
import { outlineAcres as acresOf } from "../core/cruise/outline";
import { startCorners, southWest } from "../core/cruise/startCorners";
import { answered, spilled } from "./shell/answers";
import { chosenOr } from "./shell/measuredIn";
import { cornersOf } from "./shell/outlineReading";
import { oneNumber } from "./shell/readings";
import { unitSystem } from "./shell/unitSystem";

/**
 * Corner of the tract where the walk begins.
 * @customenum {string}
 */
export enum WalkFrom {
  /** Lower left on the map. */
  SouthWest = "South-west",
  /** Lower right on the map. */
  SouthEast = "South-east",
  /** Upper left on the map. */
  NorthWest = "North-west",
  /** Upper right on the map. */
  NorthEast = "North-east",
}

/**
 * Units of what is given and of the answer.
 * @customenum {string}
 */
export enum OutlineUnits {
  /** Feet and acres. */
  Imperial = "imperial",
  /** Meters and hectares. */
  Metric = "metric",
}

/**
 * Points of a square grid that fall inside a tract, from a start picked by chance, in the order in which they are walked.
 * @customfunction GRIDINOUTLINE
 * @param corner_east Corners in order around the tract: how far east each lies, in feet, meters or any one unit.
 * @param corner_north How far north each corner lies, in the same unit.
 * @param spacing Distance between points and between lines, in the same unit.
 * @param [seed] Whole number that picks the start; the same seed gives the same points. Left out or 0: 1.
 * @param [lines_bearing] Direction of the lines, in degrees from north over east. Left out: 0, north and south.
 * @param [walk_from] Corner where the walk begins: South-west, South-east, North-west or North-east. Left out: South-west.
 * @returns A table: point, distance east and distance north on the map of the corners.
 */
export function gridInOutline(
  corner_east: any[][],
  corner_north: any[][],
  spacing: any,
  seed?: any,
  lines_bearing?: any,
  walk_from?: WalkFrom,
): any[][] {
  return answered(() => {
    const points = pointsInside(cornersOf(corner_east, corner_north), {
      spacing: feet(oneNumber(spacing, "Spacing", { unit: "", low: 0.01, high: 1e6 })),
      seed: oneNumber(seed, "Seed", { unit: "", low: 0, high: 2 ** 31 - 1 }, 1),
      bearing: oneNumber(lines_bearing, "Bearing of the lines", { unit: "degrees", low: 0, high: 360 }, 0),
      from: chosenOr("Walk from", walk_from, startCorners, southWest),
    });
    return spilled(
      ["Point", "East", "North"],
      points.map(({ east, north }, at) => [at + 1, east, north]),
    );
  });
}

/**
 * Level area of a tract from its corners.
 * @customfunction OUTLINEACRES
 * @param corner_east Corners in order around the tract: how far east each lies, in feet (meters when metric).
 * @param corner_north How far north each corner lies, in feet (meters when metric).
 * @param [units] Units: imperial or metric. Left out: imperial.
 * @returns Acres (hectares when metric).
 */
export function outlineAcres(corner_east: any[][], corner_north: any[][], units?: OutlineUnits): number {
  return answered(() => {
    const { distance, area } = unitSystem(units);
    return acresOf(cornersOf(corner_east, corner_north, distance.perOurs)) * area.perOurs;
  });
}
