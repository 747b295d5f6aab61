import { logRule } from "../core/log/findLogRule";
import { ruleSelections, usualRules } from "../core/log/ruleSelections";
import { answered, spilled } from "./shell/answers";
import { saidOnce } from "./shell/saidOnce";
import { chosenOr } from "./shell/measuredIn";
import { logReadings, netScales } from "./shell/netScales";
import { isLeftOut, oneText } from "./shell/readings";
import { conventionsOf } from "./shell/scaleConventions";
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
    const conventions = conventionsOf(
      { round, longest: longest_scaling_length, diameterRounding: diameter_rounding },
      system,
    );
    const logs = logReadings({ diameter, length, deduction: deduction_pct, largeEnd: large_end }, system);
    return netScales(by, logs, conventions, system);
  });
}

/**
 * Net board feet in a log under one log rule beside the other: a row of headings, then one row for each log.
 * @customfunction LOGSCALERULES
 * @param diameter Diameter inside bark at the small end, in inches (cm).
 * @param length Log length without trim, in feet (m).
 * @param [deduction_pct] Deduction for defect, in percent of the gross scale: 15 for 15 percent. Left out: 0.
 * @param [rules] "Usual" (the rules that menus offer) or "All" (every rule on the small end, those known from memory too). Left out: usual.
 * @param [round] "As the rule does" (its printed tables), or "None". Left out: as the rule does.
 * @param [longest_scaling_length] Longest length scaled as one piece, in feet (m). Left out: no limit.
 * @param [large_end] Diameter inside bark at the large end, in inches (cm). Left out: taper as the rule does, or none.
 * @param [diameter_rounding] "None", "Half up", "Half down", "Half alternate" or "Always down", to whole inches. Left out: none, but for what the rule does itself.
 * @param [units] "imperial" (inches, feet) or "metric" (cm, m); the answer is in board feet either way. Left out: imperial.
 * @returns One column for each rule, in board feet. A log whose measures cannot be used has its error in the first column only.
 */
export function logScaleRules(
  diameter: any[][],
  length: any[][],
  deduction_pct?: any[][],
  rules?: RuleSelectionName,
  round?: ScaleRoundingName,
  longest_scaling_length?: any,
  large_end?: any[][],
  diameter_rounding?: LogDiameterRounding,
  units?: LogUnits,
): any[][] {
  return answered(() => {
    const system = unitSystem(units);
    const shownRules = chosenOr("Rules", rules, ruleSelections, usualRules).rules;
    const header = shownRules.map((rule) => `${rule.title} bf`);
    if (isLeftOut(diameter) || isLeftOut(length)) return spilled(header, [["No logs yet"]]);

    const conventions = conventionsOf(
      { round, longest: longest_scaling_length, diameterRounding: diameter_rounding },
      system,
    );
    const logs = logReadings({ diameter, length, deduction: deduction_pct, largeEnd: large_end }, system);
    const columns = shownRules.map((rule) => netScales(rule, logs, conventions, system).flat());
    const rows = columns[0]?.map((_, row) => columns.map((column) => column[row] as unknown)) ?? [];
    return spilled(header, rows.map(saidOnce));
  });
}
