import { inches } from "../core/basis/units";
import { headSettings as settingsOf } from "../core/sawing/headSettings";
import { largestCant as cantIn } from "../core/sawing/largestCant";
import { whyItDoesNotFit } from "../core/sawing/millLimits";
import { requireSawLog } from "../core/sawing/sawLog";
import { onTheScale } from "../core/sawing/scale";
import { feet } from "../core/basis/units";
import { answered, eachCell, spilled } from "./shell/answers";
import { measuredIn, single } from "./shell/measuredIn";
import { isLeftOut, measured, oneNumber } from "./shell/readings";
import { saidIn } from "./shell/saidIn";
import { millOf, sayIn } from "./shell/sawingArguments";
import { unitSystem } from "./shell/unitSystem";

/**
 * Units of what is given.
 * @customenum {string}
 */
export enum MillUnits {
  /** Inches and feet */
  imperial = "imperial",
  /** Centimetres and metres */
  metric = "metric",
}

/**
 * Whether a log fits the mill, or why not.
 * @customfunction MILLFITS
 * @param small_end Diameter inside bark at the small end, in inches (cm).
 * @param large_end Diameter inside bark at the large end, in inches (cm).
 * @param length Log length without trim, in feet (m).
 * @param mill Limits of the mill, a column of names and one of numbers: Largest diameter, Longest log, Shortest log, in inches and feet (cm and m); others are read and do not concern a log.
 * @param [units] "imperial" (inches, feet) or "metric" (cm, m). Left out: imperial.
 * @returns "Fits", or every limit that is overstepped and by how much, in the shape that was given.
 */
export function millFits(
  small_end: any[][],
  large_end: any[][],
  length: any[][],
  mill: any[][],
  units?: MillUnits,
): any[][] {
  return answered(() => {
    const system = unitSystem(units);
    const limits = millOf(mill, system);
    const say = sayIn(system);
    return eachCell(
      {
        smallEnd: measuredIn(small_end, "Small end", system.diameter, inches, 1, 120),
        largeEnd: measuredIn(large_end, "Large end", system.diameter, inches, 1, 120),
        length: measuredIn(length, "Length", system.distance, feet, 1, 120),
      },
      (log) => {
        requireSawLog(log);
        return whyItDoesNotFit(log, limits, say) ?? "Fits";
      },
    );
  });
}

/**
 * The largest full-edged cant in a log: the largest square, or the thickest one of a wanted width.
 * @customfunction LARGESTCANT
 * @param small_end Diameter inside bark at the small end, in inches or any other unit.
 * @param [width] Wanted width of the cant, in the same unit. Left out: the square.
 * @returns A heading row, then thickness and width in the unit that was given.
 */
export function largestCant(small_end: any[][], width?: any): any[][] {
  return answered(() => {
    const header = ["Thickness", "Width"];
    const diameter = single(measured(small_end, "Small end", inches, { unit: "", low: 0.01, high: 1000 }));
    if (diameter === undefined) return spilled(header, [["No log yet"]]);
    const wanted = isLeftOut(width)
      ? undefined
      : inches(oneNumber(width, "Width", { unit: "", low: 0.01, high: diameter }));
    const cant = cantIn(diameter, wanted);
    return spilled(header, [[cant.thickness, cant.width]]);
  });
}

/**
 * Scale readings of the head for a run of like boards, each cut a board and a kerf below the one before, on the marks of the mill's scale where it has one.
 * @customfunction HEADSETTINGS
 * @param start Reading at which the top face was opened, in inches (cm).
 * @param thickness Rough green thickness of a board, in inches (cm).
 * @param kerf Width of wood that the saw turns to sawdust, in inches (cm).
 * @param pieces Number of boards.
 * @param [mill] Limits of the mill, a column of names and one of numbers: Scale step and Blade above bed, in inches (cm); others are read and do not concern a run of boards. Left out: the head stops anywhere, down to the bed.
 * @param [units] "imperial" (inches) or "metric" (cm). Left out: imperial.
 * @returns A heading row, then the number and the reading of each cut. With a scale step, what the scale shows and how thick the board comes out besides: never thinner than asked, thicker by less than a step.
 */
export function headSettings(
  start: any,
  thickness: any,
  kerf: any,
  pieces: any,
  mill?: any[][],
  units?: MillUnits,
): any[][] {
  return answered(() => {
    const system = unitSystem(units);
    const { name, perOurs } = system.diameter;
    const length = (given: unknown, what: string, low: number, high: number, leftOut?: number) =>
      inches(oneNumber(given, what, { unit: name, low, high }, leftOut) / perOurs);
    const { scaleStep, bladeAboveBed } = millOf(mill, system);
    const settings = saidIn(
      system,
      settingsOf,
    )({
      start: length(start, "Start", 0.01, 1000),
      thickness: length(thickness, "Thickness", 0.01, 1000),
      kerf: length(kerf, "Kerf", 0, 100, 0),
      pieces: oneNumber(pieces, "Pieces", { unit: "", low: 1, high: 1000 }),
      scaleStep,
      bladeAboveBed,
    });
    const onMarks = (reading: number, board: number) =>
      scaleStep === undefined ? [] : [onTheScale(reading * perOurs, scaleStep * perOurs), board * perOurs];
    return spilled(
      ["Cut", `Head reading ${name}`, ...(scaleStep === undefined ? [] : ["On the scale", `Board comes out ${name}`])],
      settings.map(({ reading, thickness: board }, i) => [i + 1, reading * perOurs, ...onMarks(reading, board)]),
    );
  });
}
