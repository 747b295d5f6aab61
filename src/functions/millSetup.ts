import { inches } from "../core/basis/units";
import { headSettings as settingsOf } from "../core/sawing/headSettings";
import { largestCant as cantIn } from "../core/sawing/largestCant";
import { whyItDoesNotFit } from "../core/sawing/millLimits";
import { requireSawLog } from "../core/sawing/sawLog";
import { feet } from "../core/basis/units";
import { answered, eachCell, spilled } from "./shell/answers";
import { measuredIn, single } from "./shell/measuredIn";
import { isLeftOut, measured, oneNumber } from "./shell/readings";
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
 * Scale readings of the head for a run of like boards, each cut a board and a kerf below the one before.
 * @customfunction HEADSETTINGS
 * @param start Reading at which the top face was opened, in inches or any other unit.
 * @param thickness Rough green thickness of a board, in the same unit.
 * @param kerf Width of wood that the saw turns to sawdust, in the same unit.
 * @param pieces Number of boards.
 * @returns A heading row, then the number and the reading of each cut.
 */
export function headSettings(start: any, thickness: any, kerf: any, pieces: any): any[][] {
  return answered(() => {
    const readings = settingsOf(
      inches(oneNumber(start, "Start", { unit: "", low: 0.01, high: 1000 })),
      inches(oneNumber(thickness, "Thickness", { unit: "", low: 0.01, high: 1000 })),
      inches(oneNumber(kerf, "Kerf", { unit: "", low: 0, high: 100 }, 0)),
      oneNumber(pieces, "Pieces", { unit: "", low: 1, high: 1000 }),
    );
    return spilled(
      ["Cut", "Head reading"],
      readings.map((reading, i) => [i + 1, reading]),
    );
  });
}
