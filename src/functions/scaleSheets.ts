import { dollarsPerMbf } from "../core/basis/units";
import { measuredAtSmallEnd } from "../core/log/measuredAtSmallEnd";
import { rulePrice as priceByRule } from "../core/value/rulePrice";
import { answered, eachCell } from "./shell/answers";
import { diameterOf, lengthOf } from "./shell/logArguments";
import { logReadings, netScales } from "./shell/netScales";
import { measured } from "./shell/readings";
import { saidIn } from "./shell/saidIn";
import { cardOf, ruleOrCard } from "./shell/scaleCard";
import { conventionsOf } from "./shell/scaleConventions";
import { sheetBySpecies } from "./shell/scaleSheet";
import { unitSystem } from "./shell/unitSystem";

/**
 * Units of what is given.
 * @customenum {string}
 */
export enum ScaleSheetUnits {
  /** Inches and feet */
  imperial = "imperial",
  /** Centimetres and metres */
  metric = "metric",
}

/**
 * Roundings of a log scale that Excel offers while a formula is typed.
 * @customenum {string}
 */
export enum SheetRoundingName {
  /** As the printed tables of the rule round it */
  asTheRuleDoes = "As the rule does",
  /** The exact figure of the rule */
  none = "None",
}

/**
 * What is done with the fraction of a diameter, as Excel offers it while a formula is typed.
 * @customenum {string}
 */
export enum SheetDiameterRounding {
  /** The diameter as it was measured */
  none = "None",
  /** To the nearest whole inch, an exact half up */
  halfUp = "Half up",
  /** To the nearest whole inch, an exact half down */
  halfDown = "Half down",
  /** To the nearest whole inch, exact halves of the list up and down by turns */
  halfAlternate = "Half alternate",
  /** The fraction dropped */
  alwaysDown = "Always down",
}

const PRICE = { unit: "$ per MBF", low: 0, high: 1e6 };

/**
 * Logs of a load added up by species under one log rule: how many, gross scale, net scale and defect.
 * @customfunction SCALESHEET
 * @param species Species of each log.
 * @param diameter Diameter inside bark at the small end of each log, in inches (cm). Lines without it are passed over.
 * @param length Length of each log without trim, in feet (m).
 * @param rule Log rule: one name, or a column of names that are all the same. Or a buyer's card: a range with lengths in its first row and diameters in its first column.
 * @param [deduction_pct] Deduction for defect of each log, in percent of its gross scale. Left out: 0.
 * @param [round] "As the rule does" (its printed tables), or "None". Left out: as the rule does.
 * @param [longest_scaling_length] Longest length scaled as one piece, in feet (m). Left out: no limit.
 * @param [large_end] Diameter inside bark at the large end of each log, in inches (cm). Left out: taper as the rule does, or none.
 * @param [diameter_rounding] "None", "Half up", "Half down", "Half alternate" or "Always down", to whole inches. Left out: none, but for what the rule does itself.
 * @param [units] "imperial" (inches, feet) or "metric" (cm, m); the answer is in board feet either way. Left out: imperial.
 * @returns A heading row, one row for each species, and the sum of all: logs, gross and net board feet, defect in percent of gross.
 */
export function scaleSheet(
  species: any[][],
  diameter: any[][],
  length: any[][],
  rule: any[][],
  deduction_pct?: any[][],
  round?: SheetRoundingName,
  longest_scaling_length?: any,
  large_end?: any[][],
  diameter_rounding?: SheetDiameterRounding,
  units?: ScaleSheetUnits,
): any[][] {
  return answered(() =>
    sheetBySpecies({
      species,
      diameter,
      length,
      rule,
      deduction: deduction_pct,
      largeEnd: large_end,
      round,
      longest: longest_scaling_length,
      diameterRounding: diameter_rounding,
      units,
    }),
  );
}

/**
 * Net board feet in a log, or in each log of a column, by a buyer's own printed card.
 * @customfunction CARDSCALE
 * @param diameter Diameter inside bark at the small end, in inches (cm). It is read at the nearest row of the card, half way between two at the lower one.
 * @param length Log length without trim, in feet (m). It is read at the next lower column of the card.
 * @param card The card as a range: lengths in its first row, diameters in its first column, board feet between them. The corner is ignored; a blank or 0 means no value.
 * @param [deduction_pct] Deduction for defect, in percent of the gross scale: 15 for 15 percent. Left out: 0.
 * @param [round] "As the rule does" (to whole board feet after a deduction), or "None". Left out: as the rule does.
 * @param [longest_scaling_length] Longest length scaled as one piece, in feet (m). A longer log is scaled in segments. Left out: no limit.
 * @param [large_end] Diameter inside bark at the large end, in inches (cm): segments then taper as the log does. Left out: every segment is as thick as the small end.
 * @param [diameter_rounding] "None", "Half up", "Half down", "Half alternate" or "Always down", to whole inches, for the log and each segment. Left out: none, but for what the card does itself.
 * @param [units] "imperial" (inches, feet) or "metric" (cm, m) of the log and of the card; board feet either way. Left out: imperial.
 * @returns Board feet, in the shape that was given.
 */
export function cardScale(
  diameter: any[][],
  length: any[][],
  card: any[][],
  deduction_pct?: any[][],
  round?: SheetRoundingName,
  longest_scaling_length?: any,
  large_end?: any[][],
  diameter_rounding?: SheetDiameterRounding,
  units?: ScaleSheetUnits,
): any[][] {
  return answered(() => {
    const system = unitSystem(units);
    const by = cardOf(card, system);
    const conventions = conventionsOf(
      { round, longest: longest_scaling_length, diameterRounding: diameter_rounding },
      system,
    );
    const logs = logReadings({ diameter, length, deduction: deduction_pct, largeEnd: large_end }, system);
    return netScales(by, logs, conventions, system);
  });
}

/**
 * Price by another log rule that brings the same money for a log. It holds for logs of that size alone.
 * @customfunction RULEPRICE
 * @param price Price that is offered, in dollars per thousand board feet by from_rule.
 * @param diameter Diameter inside bark at the small end, in inches (cm).
 * @param length Log length without trim, in feet (m).
 * @param from_rule Log rule of the price offered, such as Doyle; or a buyer's card as a range.
 * @param to_rule Log rule of the price wanted, such as International 1/4; or a buyer's card as a range.
 * @param [units] "imperial" (inches, feet) or "metric" (cm, m). Left out: imperial.
 * @returns Dollars per thousand board feet by to_rule, in the shape that was given.
 */
export function rulePrice(
  price: any[][],
  diameter: any[][],
  length: any[][],
  from_rule: any[][],
  to_rule: any[][],
  units?: ScaleSheetUnits,
): any[][] {
  return answered(() => {
    const system = unitSystem(units);
    const from = measuredAtSmallEnd(ruleOrCard(from_rule, system));
    const to = measuredAtSmallEnd(ruleOrCard(to_rule, system));
    return eachCell(
      {
        price: measured(price, "Price", dollarsPerMbf, PRICE),
        diameter: diameterOf(diameter, "Diameter", system),
        length: lengthOf(length, system),
      },
      saidIn(system, ({ price: offered, ...log }) => priceByRule(offered, log, from, to)),
    );
  });
}
