import { cubicFormulas } from "../core/log/cubic";
import { smalian } from "../core/log/cubic/smalian";
import { answered, eachCell } from "./shell/answers";
import { diameterOf, diameterOrNone, lengthOf } from "./shell/logArguments";
import { chosenOr } from "./shell/measuredIn";
import { unitSystem } from "./shell/unitSystem";

/**
 * Formulas for cubic volume that Excel offers while a formula is typed.
 * @customenum {string}
 */
export enum CubicFormulaName {
  /** Mean of both end areas, times the length */
  smalian = "Smalian",
  /** Area at the middle, times the length */
  huber = "Huber",
  /** Both ends and four times the middle, over 6, times the length */
  newton = "Newton",
  /** A cone with its tip cut off, from both ends */
  cone = "Cone",
  /** A butt that flares, from both ends */
  neiloid = "Neiloid",
}

/**
 * Units of what is given.
 * @customenum {string}
 */
export enum CubicUnits {
  /** Inches, feet, cubic feet */
  imperial = "imperial",
  /** Centimetres, metres, cubic metres */
  metric = "metric",
}

/**
 * Cubic volume of a log, or of each log of a column, inside bark if the diameters are.
 * @customfunction LOGCUBIC
 * @param small_end Diameter at the small end, in inches (cm).
 * @param large_end Diameter at the large end, in inches (cm).
 * @param length Log length, in feet (m).
 * @param [formula] Smalian, Huber, Newton, Cone or Neiloid. Left out: Smalian.
 * @param [middle] Diameter half way between the ends, in inches (cm); Huber and Newton need it.
 * @param [units] "imperial" (inches, feet, cubic feet) or "metric" (cm, m, cubic metres). Left out: imperial.
 * @returns Cubic feet (cubic metres), in the shape that was given.
 */
export function logCubic(
  small_end: any[][],
  large_end: any[][],
  length: any[][],
  formula?: CubicFormulaName,
  middle?: any[][],
  units?: CubicUnits,
): any[][] {
  return answered(() => {
    const system = unitSystem(units);
    const by = chosenOr("Formula", formula, cubicFormulas, smalian);

    return eachCell(
      {
        smallEnd: diameterOf(small_end, "Small end", system),
        largeEnd: diameterOf(large_end, "Large end", system),
        length: lengthOf(length, system),
        middle: diameterOrNone(middle, "Middle", system),
      },
      ({ middle, ...log }) => by.volume(middle === 0 ? log : { ...log, middle }) * system.cubic.perOurs,
    );
  });
}
