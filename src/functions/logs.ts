import { feet, inches, percent } from "../core/basis/units";
import { cubicFormulas } from "../core/log/cubic";
import { smalian } from "../core/log/cubic/smalian";
import { logRule } from "../core/log/findLogRule";
import { grossScale } from "../core/log/grossScale";
import { netScale } from "../core/log/netScale";
import { logRules } from "../core/log/rules";
import { asTheRuleDoes, scaleRoundings } from "../core/log/scaleRounding";
import { answered, eachCell, spilled } from "./shell/answers";
import { boundsIn, chosenOr, measuredIn } from "./shell/measuredIn";
import { isLeftOut, oneNumber, oneText, optionalNumber } from "./shell/readings";
import { unitSystem } from "./shell/unitSystem";

/**
 * Log rules that Excel offers while a formula is typed.
 * @customenum {string}
 */
export enum LogRuleName {
  /** (D - 4)^2 L / 16: scales small logs too low and large logs too high */
  doyle = "Doyle",
  /** A smooth formula through the Scribner diagrams */
  scribner = "Scribner (from memory)",
  /** The printed table in tens of board feet, 6 to 40 in and 6 to 20 ft */
  scribnerDecimalC = "Scribner Decimal C",
  /** Sections of 4 ft with taper, sawn with a 1/4-in kerf */
  internationalQuarter = "International 1/4",
  /** Sections of 4 ft with taper, sawn with a 1/8-in kerf */
  internationalEighth = "International 1/8",
}

/**
 * Roundings of a log scale that Excel offers while a formula is typed.
 * @customenum {string}
 */
export enum ScaleRoundingName {
  /** As the printed tables of the rule round it */
  asTheRuleDoes = "As the rule does",
  /** The exact figure of the rule */
  none = "None",
}

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
}

/**
 * Units of what is given.
 * @customenum {string}
 */
export enum LogUnits {
  /** Inches, feet, cubic feet */
  imperial = "imperial",
  /** Centimetres, metres, cubic metres */
  metric = "metric",
}

const IMPERIAL = unitSystem(null);

// Bounds are a choice of ours: wide enough for any log, narrow enough to catch a slip of the keyboard.
const diameterOf = (given: unknown, what: string, { diameter } = IMPERIAL) =>
  measuredIn(given, what, diameter, inches, 1, 120);
const lengthOf = (given: unknown, { distance } = IMPERIAL) => measuredIn(given, "Length", distance, feet, 1, 120);
const deductionOf = (given: unknown) => optionalNumber(given, "Deduction", percent, { unit: "%", low: 0, high: 100 });

/**
 * Net board feet in a log, or in each log of a column, under a log rule.
 * @customfunction LOGSCALE
 * @param diameter Diameter inside bark at the small end, in inches (cm).
 * @param length Log length without trim, in feet (m).
 * @param rule Log rule: Doyle, Scribner, Scribner Decimal C, International 1/4 or International 1/8.
 * @param [deduction_pct] Deduction for defect, in percent of the gross scale: 15 for 15 percent. Left out: 0.
 * @param [round] "As the rule does" (its printed tables), or "None". Left out: as the rule does.
 * @param [longest_scaling_length] Longest length scaled as one piece, in feet (m). A longer log is scaled in segments, each as thick at its top as the rule's own taper makes it, or as the small end where the rule has none. Left out: no limit.
 * @param [units] "imperial" (inches, feet) or "metric" (cm, m); the answer is in board feet either way. Left out: imperial.
 * @returns Board feet, in the shape that was given.
 */
export function logScale(
  diameter: any[][],
  length: any[][],
  rule: LogRuleName,
  deduction_pct?: any[][],
  round?: ScaleRoundingName,
  longest_scaling_length?: any,
  units?: LogUnits,
): any[][] {
  return answered(() => {
    const system = unitSystem(units);
    const by = logRule(oneText(rule, "Rule"));
    const rounding = chosenOr("Round", round, scaleRoundings, asTheRuleDoes);
    const limit = oneNumber(
      longest_scaling_length,
      "Longest scaling length",
      boundsIn(system.distance, 4, 120),
      Infinity,
    );
    const longest = feet(limit / system.distance.perOurs);

    return eachCell(
      {
        diameter: diameterOf(diameter, "Diameter", system),
        length: lengthOf(length, system),
        deduction: deductionOf(deduction_pct),
      },
      (log) => netScale(by, grossScale(by, log, rounding, longest), log.deduction, rounding),
    );
  });
}

/**
 * Net board feet in a log under every log rule, side by side: a row of headings, then one row for each log.
 * @customfunction LOGSCALERULES
 * @param diameter Diameter inside bark at the small end, in inches.
 * @param length Log length without trim, in feet.
 * @param [deduction_pct] Deduction for defect, in percent of the gross scale: 15 for 15 percent. Left out: 0.
 * @returns One column for each rule, in board feet, rounded as its printed tables are.
 */
export function logScaleRules(diameter: any[][], length: any[][], deduction_pct?: any[][]): any[][] {
  return answered(() => {
    const header = logRules.map((rule) => `${rule.title} bf`);
    if (isLeftOut(diameter) || isLeftOut(length)) return spilled(header, [["No logs yet"]]);

    const logs = {
      diameter: diameterOf(diameter, "Diameter"),
      length: lengthOf(length),
      deduction: deductionOf(deduction_pct),
    };
    const columns = logRules.map((rule) =>
      eachCell(logs, (log) => netScale(rule, grossScale(rule, log), log.deduction)).flat(),
    );
    const rows = columns[0]?.map((_, row) => columns.map((column) => column[row] as unknown)) ?? [];
    return spilled(header, rows);
  });
}

/**
 * Cubic volume of a log, or of each log of a column, inside bark if the diameters are.
 * @customfunction LOGCUBIC
 * @param small_end Diameter at the small end, in inches (cm).
 * @param large_end Diameter at the large end, in inches (cm).
 * @param length Log length, in feet (m).
 * @param [formula] Smalian, Huber or Newton. Left out: Smalian.
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
  units?: LogUnits,
): any[][] {
  return answered(() => {
    const system = unitSystem(units);
    const by = chosenOr("Formula", formula, cubicFormulas, smalian);

    return eachCell(
      {
        smallEnd: diameterOf(small_end, "Small end", system),
        largeEnd: diameterOf(large_end, "Large end", system),
        length: lengthOf(length, system),
        middle: optionalNumber(
          middle,
          "Middle",
          (value) => inches(value / system.diameter.perOurs),
          boundsIn(system.diameter, 0, 120),
        ),
      },
      ({ middle, ...log }) => by.volume(middle === 0 ? log : { ...log, middle }) * system.cubic.perOurs,
    );
  });
}
