import { cubicFormulas } from "../core/log/cubic";
import { smalian } from "../core/log/cubic/smalian";
import { diameterRoundings, notToWhole, rounderFor } from "../core/log/diameterRounding";
import { logRule } from "../core/log/findLogRule";
import { grossScale } from "../core/log/grossScale";
import { netScale } from "../core/log/netScale";
import { ruleSelections, usualRules } from "../core/log/ruleSelections";
import { asTheRuleDoes, scaleRoundings } from "../core/log/scaleRounding";
import { answered, eachCell, sameShape, spilled } from "./shell/answers";
import { deductionOf, diameterOf, diameterOrNone, lengthOf, longestOf } from "./shell/logArguments";
import { chosenOr } from "./shell/measuredIn";
import { isLeftOut, oneText } from "./shell/readings";
import { unitSystem } from "./shell/unitSystem";

/**
 * Log rules that Excel offers while a formula is typed.
 * @customenum {string}
 */
export enum LogRuleName {
  /** (D - 4)^2 L / 16: scales small logs too low and large logs too high */
  doyle = "Doyle",
  /** A smooth formula through the Scribner diagrams, known from memory */
  scribner = "Scribner (from memory)",
  /** The printed table in tens of board feet, 6 to 40 in and 6 to 20 ft */
  scribnerDecimalC = "Scribner Decimal C",
  /** Sections of 4 ft with taper, sawn with a 1/4-in kerf */
  internationalQuarter = "International 1/4",
  /** Sections of 4 ft with taper, sawn with a 1/8-in kerf */
  internationalEighth = "International 1/8",
  /** Half the square of the diameter for 12 ft, by statute */
  vermont = "Vermont",
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
 * What is done with the fraction of a diameter, as Excel offers it while a formula is typed.
 * @customenum {string}
 */
export enum LogDiameterRounding {
  /** The diameter as it was measured */
  none = "None",
  /** To the nearest whole inch, an exact half up */
  halfUp = "Half up",
  /** To the nearest whole inch, an exact half down */
  halfDown = "Half down",
  /** To the nearest whole inch, exact halves of the column up and down by turns */
  halfAlternate = "Half alternate",
  /** The fraction dropped */
  alwaysDown = "Always down",
}

/**
 * Which log rules are set side by side.
 * @customenum {string}
 */
export enum RuleSelectionName {
  /** The rules that menus offer */
  usual = "Usual",
  /** Every rule on the small end, those known from memory too */
  all = "All",
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
  /** A cone with its tip cut off, from both ends */
  cone = "Cone",
  /** A butt that flares, from both ends */
  neiloid = "Neiloid",
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

/**
 * Net board feet in a log, or in each log of a column, under a log rule.
 * @customfunction LOGSCALE
 * @param diameter Diameter inside bark at the small end, in inches (cm); at the middle for the rule Two-thirds of middle diameter.
 * @param length Log length without trim, in feet (m).
 * @param rule Log rule: Doyle, Scribner, Scribner Decimal C, International 1/4, International 1/8, Vermont, or any other that SOURCEOF knows.
 * @param [deduction_pct] Deduction for defect, in percent of the gross scale: 15 for 15 percent. Left out: 0.
 * @param [round] "As the rule does" (its printed tables), or "None". Left out: as the rule does.
 * @param [longest_scaling_length] Longest length scaled as one piece, in feet (m). A longer log is scaled in segments. Left out: no limit.
 * @param [large_end] Diameter inside bark at the large end, in inches (cm): segments then taper as the log does. Left out: as the rule does, or not at all.
 * @param [diameter_rounding] "None", "Half up", "Half down", "Half alternate" or "Always down", to whole inches, for the log and each segment. Left out: none, but for what the rule does itself.
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
  large_end?: any[][],
  diameter_rounding?: LogDiameterRounding,
  units?: LogUnits,
): any[][] {
  return answered(() => {
    const system = unitSystem(units);
    const by = logRule(oneText(rule, "Rule"));
    const rounding = chosenOr("Round", round, scaleRoundings, asTheRuleDoes);
    const longest = longestOf(longest_scaling_length, system);
    const toWhole = chosenOr("Diameter rounding", diameter_rounding, diameterRoundings, notToWhole);
    const given = {
      diameter: diameterOf(diameter, "Diameter", system),
      length: lengthOf(length, system),
      deduction: deductionOf(deduction_pct),
    };
    if (isLeftOut(large_end) && toWhole === notToWhole) {
      return eachCell(given, (log) => netScale(by, grossScale(by, log, rounding, longest), log.deduction, rounding));
    }

    const logs = { ...given, largeEnd: diameterOrNone(large_end, "Large end", system) };
    const { rows, columns } = sameShape(Object.values(logs));
    const rounder = toWhole === notToWhole ? undefined : rounderFor(toWhole, rows * columns);
    return eachCell(logs, ({ deduction, largeEnd, ...ends }) => {
      const log = largeEnd === 0 ? ends : { ...ends, largeEnd };
      return netScale(by, grossScale(by, log, rounding, longest, rounder), deduction, rounding);
    });
  });
}

/**
 * Net board feet in a log under one log rule beside the other: a row of headings, then one row for each log.
 * @customfunction LOGSCALERULES
 * @param diameter Diameter inside bark at the small end, in inches.
 * @param length Log length without trim, in feet.
 * @param [deduction_pct] Deduction for defect, in percent of the gross scale: 15 for 15 percent. Left out: 0.
 * @param [rules] "Usual" (the rules that menus offer) or "All" (every rule on the small end, those known from memory too). Left out: usual.
 * @returns One column for each rule, in board feet, rounded as its printed tables are.
 */
export function logScaleRules(
  diameter: any[][],
  length: any[][],
  deduction_pct?: any[][],
  rules?: RuleSelectionName,
): any[][] {
  return answered(() => {
    const shownRules = chosenOr("Rules", rules, ruleSelections, usualRules).rules;
    const header = shownRules.map((rule) => `${rule.title} bf`);
    if (isLeftOut(diameter) || isLeftOut(length)) return spilled(header, [["No logs yet"]]);

    const logs = {
      diameter: diameterOf(diameter, "Diameter"),
      length: lengthOf(length),
      deduction: deductionOf(deduction_pct),
    };
    const columns = shownRules.map((rule) =>
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
        middle: diameterOrNone(middle, "Middle", system),
      },
      ({ middle, ...log }) => by.volume(middle === 0 ? log : { ...log, middle }) * system.cubic.perOurs,
    );
  });
}
