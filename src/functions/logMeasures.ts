import { feet, boardFeet, percent } from "../core/basis/units";
import { cords, solidInPile } from "../core/log/cordVolume";
import { logTaper as taperOf } from "../core/log/logTaper";
import { logWeight as weightOf } from "../core/log/logWeight";
import { overrun as overrunOf } from "../core/log/overrun";
import { answered, eachCell } from "./shell/answers";
import { diameterOf, lengthOf } from "./shell/logArguments";
import { measuredIn } from "./shell/measuredIn";
import { measured, optionalNumber } from "./shell/readings";
import { saidIn } from "./shell/saidIn";
import { unitSystem } from "./shell/unitSystem";

/**
 * Units of what is given and of the answer.
 * @customenum {string}
 */
export enum LogMeasureUnits {
  /** Inches, feet, pounds */
  imperial = "imperial",
  /** Centimetres, metres, kilograms */
  metric = "metric",
}

const BOARD_FEET = { unit: "bf", low: 0, high: 1e9 };

// Densities that green wood can have, with room to spare. [lb/ft3] A choice of ours.
const LIGHTEST = 10;
const HEAVIEST = 100;

/**
 * How much thicker a log gets for each foot towards the butt.
 * @customfunction LOGTAPER
 * @param small_end Diameter at the small end, in inches (cm).
 * @param large_end Diameter at the large end, in inches (cm).
 * @param length Log length, in feet (m).
 * @param [units] "imperial" (inches, feet) or "metric" (cm, m). Left out: imperial.
 * @returns Inches per foot (cm per m), in the shape that was given.
 */
export function logTaper(small_end: any[][], large_end: any[][], length: any[][], units?: LogMeasureUnits): any[][] {
  return answered(() => {
    const system = unitSystem(units);
    const { diameter, distance } = system;
    return eachCell(
      {
        smallEnd: diameterOf(small_end, "Small end", system),
        largeEnd: diameterOf(large_end, "Large end", system),
        length: lengthOf(length, system),
      },
      saidIn(system, (log) => (taperOf(log.smallEnd, log.largeEnd, log.length) * diameter.perOurs) / distance.perOurs),
    );
  });
}

/**
 * Weight of a green log by its cubic volume after Smalian. Read CAUTIONOF("Log weight") before you lift or haul.
 * @customfunction LOGWEIGHT
 * @param small_end Diameter at the small end, in inches (cm).
 * @param large_end Diameter at the large end, in inches (cm).
 * @param length Log length with its trim, in feet (m).
 * @param green_density Weight of green wood, in pounds per cubic foot (kg per cubic metre).
 * @param [units] "imperial" (inches, feet, pounds) or "metric" (cm, m, kg). Left out: imperial.
 * @returns Pounds (kg), in the shape that was given.
 */
export function logWeight(
  small_end: any[][],
  large_end: any[][],
  length: any[][],
  green_density: any[][],
  units?: LogMeasureUnits,
): any[][] {
  return answered(() => {
    const system = unitSystem(units);
    const { density, weight } = system;
    return eachCell(
      {
        smallEnd: diameterOf(small_end, "Small end", system),
        largeEnd: diameterOf(large_end, "Large end", system),
        length: lengthOf(length, system),
        density: measuredIn(green_density, "Green density", density, (value) => value, LIGHTEST, HEAVIEST),
      },
      ({ density: green, ...log }) => weightOf(log, green) * weight.perOurs,
    );
  });
}

/**
 * Standard cords in a stacked pile, 128 cubic feet of wood, bark and air each; or the solid wood in it.
 * @customfunction CORDVOLUME
 * @param width Width of the pile, the length of its sticks, in feet.
 * @param height Height of the pile, in feet.
 * @param length Length of the pile, in feet.
 * @param [solid_share] Solid wood in the room that the pile takes up, in percent: 62 on average. Left out: cords are answered.
 * @returns Cords, or cubic feet of solid wood where solid_share is given, in the shape that was given.
 */
export function cordVolume(width: any[][], height: any[][], length: any[][], solid_share?: any[][]): any[][] {
  return answered(() => {
    const { distance } = unitSystem(null);
    const side = (given: unknown, what: string) => measuredIn(given, what, distance, feet, 0.1, 10_000);
    return eachCell(
      {
        width: side(width, "Width"),
        height: side(height, "Height"),
        length: side(length, "Length"),
        share: optionalNumber(solid_share, "Solid share", percent, { unit: "%", low: 0, high: 100 }),
      },
      ({ share, ...pile }) => (share === 0 ? cords(pile) : solidInPile(pile, share)),
    );
  });
}

/**
 * How much more lumber was sawn than the logs had scaled, in percent.
 * @customfunction OVERRUN
 * @param lumber Lumber tally, in board feet.
 * @param scale Net log scale of the same logs, in board feet.
 * @returns Percent; below 0 where less was sawn. In the shape that was given.
 */
export function overrun(lumber: any[][], scale: any[][]): any[][] {
  return answered(() =>
    eachCell(
      {
        lumber: measured(lumber, "Lumber", boardFeet, BOARD_FEET),
        scale: optionalNumber(scale, "Scale", boardFeet, BOARD_FEET),
      },
      (sawn) => overrunOf(sawn.lumber, sawn.scale),
    ),
  );
}
