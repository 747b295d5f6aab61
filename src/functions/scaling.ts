import { combinedDeduction } from "../core/log/deduction";
import { defectPercent as percentOf } from "../core/log/defectPercent";
import { diameterRoundings, halfDown, rounderFor } from "../core/log/diameterRounding";
import { scalingLength as scalingLengthOf } from "../core/log/scalingLength";
import { answered, eachCell, sameShape } from "./shell/answers";
import { defectKind, defectUnits, extentOf, extentReadings } from "./shell/defectArguments";
import { deductionOf, diameterOf, lengthOf, LONGEST_LOG, WIDEST_LOG } from "./shell/logArguments";
import { boundsIn, chosenOr } from "./shell/measuredIn";
import { measured, oneNumber, optionalNumber } from "./shell/readings";
import { saidIn } from "./shell/saidIn";
import { unitSystem } from "./shell/unitSystem";

/**
 * What is done with the fraction of a diameter, as Excel offers it while a formula is typed.
 * @customenum {string}
 */
export enum DiameterRoundingName {
  /** The mean of the readings as it is */
  none = "None",
  /** To the nearest whole number, an exact half up */
  halfUp = "Half up",
  /** To the nearest whole number, an exact half down */
  halfDown = "Half down",
  /** To the nearest whole number, exact halves of the column up and down by turns */
  halfAlternate = "Half alternate",
  /** The fraction dropped */
  alwaysDown = "Always down",
}

/**
 * Kinds of defect that Excel offers while a formula is typed.
 * @customenum {string}
 */
export enum DefectKindName {
  /** A length lost over its whole cross section: affected_length */
  section = "Section",
  /** A slice of the round: affected_length and its angle in degrees as size */
  sector = "Sector",
  /** A bow along the whole log: the departure as size */
  sweep = "Sweep",
  /** A bend near one end: affected_length and the deflection as size */
  crook = "Crook",
  /** Rot or shake boxed in: affected_length, height as size, and width */
  interior = "Interior",
}

/**
 * Units of what is given.
 * @customenum {string}
 */
export enum ScalingUnits {
  /** Inches and feet */
  imperial = "imperial",
  /** Centimetres and metres */
  metric = "metric",
}

const plain = (value: number) => value;

/**
 * Scaling diameter of a log from one reading, or from two at right angles, rounded as the buyer does.
 * @customfunction SCALINGDIAMETER
 * @param diameter_1 Diameter inside bark at the small end, the narrowest way, in inches (cm).
 * @param [diameter_2] Second reading at right angles, in inches (cm); the two are averaged. Left out: the first alone.
 * @param [rounding] "None", "Half up", "Half down", "Half alternate" or "Always down", to whole inches (cm). Half alternate goes down the list and needs the whole column in one formula. Left out: half down.
 * @param [units] "imperial" (inches) or "metric" (cm). Left out: imperial.
 * @returns Inches (cm), in the shape that was given.
 */
export function scalingDiameter(
  diameter_1: any[][],
  diameter_2?: any[][],
  rounding?: DiameterRoundingName,
  units?: ScalingUnits,
): any[][] {
  return answered(() => {
    const { diameter } = unitSystem(units);
    const by = chosenOr("Rounding", rounding, diameterRoundings, halfDown);
    const readings = {
      first: measured(diameter_1, "Diameter 1", plain, boundsIn(diameter, 1, WIDEST_LOG)),
      second: optionalNumber(diameter_2, "Diameter 2", plain, boundsIn(diameter, 0, WIDEST_LOG)),
    };
    const { rows, columns } = sameShape(Object.values(readings));
    const toWhole = rounderFor(by, rows * columns);
    return eachCell(readings, ({ first, second }) => toWhole(second === 0 ? first : (first + second) / 2));
  });
}

/**
 * Scaling length of a log: its measured length less trim, dropped to the next lower step.
 * @customfunction SCALINGLENGTH
 * @param measured_length Length from end to end, in feet (m). A hundredth short is let pass: 16.33 for 16 ft 4 in.
 * @param [trim] Trim that the buyer asks for, in feet (m): 0.33 for 4 inches. Left out: 0.
 * @param [step] Step in which lengths are scaled, in feet (m): 2 for even feet. Left out: 1 ft (0.1 m).
 * @param [units] "imperial" (feet) or "metric" (m). Left out: imperial.
 * @returns Feet (m), in the shape that was given.
 */
export function scalingLength(measured_length: any[][], trim?: any, step?: any, units?: ScalingUnits): any[][] {
  return answered(() => {
    const { distance, metric } = unitSystem(units);
    const off = oneNumber(trim, "Trim", boundsIn(distance, 0, 2), 0);
    const by = oneNumber(step, "Step", boundsIn(distance, 0.1, 20), metric ? 0.1 : 1);
    return eachCell(
      { length: measured(measured_length, "Length", plain, boundsIn(distance, 1, LONGEST_LOG)) },
      ({ length }) => scalingLengthOf(length, off, by, distance.name),
    );
  });
}

/**
 * What a defect takes off a log, in percent of its gross scale under any log rule, after Grosenbaugh 1952 (formulas from memory).
 * @customfunction DEFECTPERCENT
 * @param kind Section, Sector, Sweep, Crook or Interior. Blank: no defect.
 * @param diameter Scaling diameter inside bark at the small end, in inches (cm).
 * @param length Log length without trim, in feet (m).
 * @param [affected_length] Length of the log that is affected, in feet (m): for every kind but Sweep.
 * @param [size] Sector: angle in degrees. Sweep: largest departure from straight, Crook: deflection of the end, Interior: height of the rot, in inches (cm).
 * @param [width] Interior: width of the rot, in inches (cm).
 * @param [units] "imperial" (inches, feet) or "metric" (cm, m). Left out: imperial.
 * @returns Percent, from 1 to 100; 0 for a defect below 1 percent. In the shape that was given.
 */
export function defectPercent(
  kind: DefectKindName,
  diameter: any[][],
  length: any[][],
  affected_length?: any[][],
  size?: any[][],
  width?: any[][],
  units?: ScalingUnits,
): any[][] {
  return answered(() => {
    const system = unitSystem(units);
    const by = defectKind(kind);
    const log = { diameter: diameterOf(diameter, "Diameter", system), length: lengthOf(length, system) };
    if (!by) return eachCell(log, () => "");
    const extents = extentReadings(by, { affectedLength: affected_length, size, width }, system);
    const percent = saidIn(system, percentOf);
    return eachCell({ ...log, ...extents }, ({ diameter: across, length: along, ...extent }) =>
      percent(by, { diameter: across, length: along }, extentOf(extent), defectUnits(system)),
    );
  });
}

/**
 * Deductions for several defects of one log, added, and never more than the whole log.
 * @customfunction TOTALDEDUCTION
 * @param deduction_1 Deduction for the first defect, in percent of the gross scale: 15 for 15 percent.
 * @param [deduction_2] Deduction for another defect, in percent. Left out: 0.
 * @param [deduction_3] Deduction for a third defect, in percent. Left out: 0.
 * @returns Percent, from 0 to 100, in the shape that was given.
 */
export function totalDeduction(deduction_1: any[][], deduction_2?: any[][], deduction_3?: any[][]): any[][] {
  return answered(() =>
    eachCell(
      {
        first: deductionOf(deduction_1, "Deduction 1"),
        second: deductionOf(deduction_2, "Deduction 2"),
        third: deductionOf(deduction_3, "Deduction 3"),
      },
      ({ first, second, third }) => combinedDeduction([first, second, third]),
    ),
  );
}
