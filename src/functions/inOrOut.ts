import { feet, squareFeetPerAcre } from "../core/basis/units";
import { inOrOut as verdictOn, USUAL_TOLERANCE } from "../core/cruise/inOrOut";
import { limitingDistance as limitOf } from "../core/cruise/limitingDistance";
import { measureTos, toCenter } from "../core/cruise/measureTo";
import { answered, eachCell } from "./shell/answers";
import { boundsIn, chosenOr, measuredDbh, measuredIn } from "./shell/measuredIn";
import { optionalNumber } from "./shell/readings";
import { slopeReading, taped } from "./shell/taped";
import { unitSystem, type UnitSystem } from "./shell/unitSystem";

/**
 * Where on the tree the tape ends.
 * @customenum {string}
 */
export enum TapeTo {
  /** The middle of the stem. */
  Center = "Center",
  /** The near side of the stem. */
  Face = "Face",
}

/**
 * Units of what is given and of the answer.
 * @customenum {string}
 */
export enum TapeUnits {
  /** Inches, feet, square feet per acre. */
  Imperial = "imperial",
  /** Centimeters, meters, square meters per hectare. */
  Metric = "metric",
}

const borderline = (dbh: unknown, baf: unknown, slope: unknown, units: UnitSystem) => ({
  dbh: measuredDbh(dbh, units),
  baf: measuredIn(baf, "BAF", units.areaPerLand, squareFeetPerAcre, 0.5, 500),
  slope: slopeReading(slope),
});

/**
 * Longest distance at which a tree still counts at a sampling point.
 * @customfunction LIMITINGDISTANCE
 * @param dbh Diameter at breast height, over bark, in inches (cm when metric).
 * @param baf Basal area factor of the gauge, in square feet per acre (square meters per hectare when metric).
 * @param [measure_to] Where the tape ends on the tree: Center or Face. Left out: Center.
 * @param [slope_pct] Slope along which the tape lies, in percent. Left out: 0.
 * @param [units] Units: imperial or metric. Left out: imperial.
 * @returns Feet (meters when metric) along the slope, in the shape that was given.
 */
export function limitingDistance(
  dbh: any[][],
  baf: any[][],
  measure_to?: TapeTo,
  slope_pct?: any[][],
  units?: TapeUnits,
): any[][] {
  return answered(() => {
    const system = unitSystem(units);
    const measureTo = chosenOr("Measure to", measure_to, measureTos, toCenter);
    return eachCell(
      borderline(dbh, baf, slope_pct, system),
      (tree) => limitOf({ ...tree, measureTo }) * system.distance.perOurs,
    );
  });
}

/**
 * Whether a taped tree is in or out at a sampling point.
 * @customfunction INOROUT
 * @param dbh Diameter at breast height, over bark, in inches (cm when metric).
 * @param distance Taped distance from the point to the tree, in feet (meters when metric).
 * @param baf Basal area factor of the gauge, in square feet per acre (square meters per hectare when metric).
 * @param [measure_to] Where the tape ends on the tree: Center or Face. Left out: Center.
 * @param [slope_pct] Slope along which the tape lies, in percent. Left out: 0.
 * @param [tolerance] How near to the limit calls for a second taping, in feet (meters when metric). Left out: 0.1 feet.
 * @param [units] Units: imperial or metric. Left out: imperial.
 * @returns "In", "Out" or "Too close - tape again", in the shape that was given.
 */
export function inOrOut(
  dbh: any[][],
  distance: any[][],
  baf: any[][],
  measure_to?: TapeTo,
  slope_pct?: any[][],
  tolerance?: any[][],
  units?: TapeUnits,
): any[][] {
  return answered(() => {
    const system = unitSystem(units);
    const { perOurs } = system.distance;
    const measureTo = chosenOr("Measure to", measure_to, measureTos, toCenter);
    const readings = {
      ...borderline(dbh, baf, slope_pct, system),
      distance: taped(distance, "Distance", system),
      tolerance: optionalNumber(
        tolerance,
        "Tolerance",
        (value) => feet(value / perOurs),
        boundsIn(system.distance, 0, 10),
        USUAL_TOLERANCE * perOurs,
      ),
    };
    return eachCell(readings, ({ distance, tolerance, ...tree }) =>
      verdictOn({ ...tree, measureTo }, distance, tolerance),
    );
  });
}
