import { planValue } from "../core/sawing/planValue";
import { whatIf } from "../core/sawing/whatIf";
import { answered, spilled } from "./shell/answers";
import { boardSizes } from "./shell/boardSizes";
import { choiceRows } from "./shell/choiceRows";
import { gradeShares, ratesOf } from "./shell/gradeShares";
import { plannedOrder } from "./shell/plannedOrder";
import { isLeftOut } from "./shell/readings";
import { sawOrder } from "./shell/sawingArguments";
import { unitSystem } from "./shell/unitSystem";

/**
 * Ways to open a log that Excel offers while a formula is typed.
 * @customenum {string}
 */
export enum ChoicePattern {
  /** All cuts parallel, the log turned over once near the middle */
  live = "Live",
  /** Two faces opened, the cant between them turned and sawn through */
  cant = "Cant",
  /** Turned by a quarter from face to face, a heart piece left */
  around = "Around",
  /** Split into quarters, boards with standing rings */
  quarter = "Quarter",
  /** Whichever of these gets the most out of the log */
  best = "Best",
}

/**
 * How the saw planes run along the log.
 * @customenum {string}
 */
export enum ChoiceTaper {
  /** Parallel to the pith: the small end is raised */
  split = "Split",
  /** Parallel to the bark that the log lies on */
  full = "Full",
}

/**
 * Units of what is given.
 * @customenum {string}
 */
export enum ChoiceUnits {
  /** Inches and feet */
  imperial = "imperial",
  /** Centimetres and metres */
  metric = "metric",
}

/**
 * What another kerf, or one product more, would make of the best sawing plan of a log.
 * @customfunction SAWWHATIF
 * @param small_end Diameter inside bark at the small end, in inches (cm); two cells for an oval end.
 * @param large_end Diameter inside bark at the large end, in inches (cm); two cells for an oval end.
 * @param length Log length without trim, in feet (m).
 * @param boards Boards to saw: a column of thickness and one of width, in inches (cm); a further last column may hold the price in $ per MBF. A heading row may name columns Length, Product (Board, Bevel siding, Shingles) and Price per piece; six columns without one are thickness, width, length, product, price per piece, price per MBF. A width may be "random" or "4 to 12 by 2".
 * @param kerf Width of wood that the saw turns to sawdust, in inches (cm).
 * @param pattern How the log is opened: Live, Cant, Around, Quarter, or Best for whichever of them gets the most.
 * @param [more] Products to try, one at a time, beside the boards: rows like theirs. Left out: kerfs only.
 * @param [mill] Limits of the mill, a column of names and one of numbers: Largest diameter, Longest log, Shortest log, Blade above bed, Shortest board, Length step, Widest cut, Throat, Edger kerf, Scale step, in inches and feet (cm and m), Wane allowed in percent of the thickness. Left out: no limits, boards of 4 ft (1 m) and up.
 * @param [sweep] How far the log bends out of the straight line between its ends, in inches (cm), in the plane of the first diameters. Left out: straight.
 * @param [taper] "Split" saws parallel to the pith, "Full" parallel to the bark it lies on. Left out: Split.
 * @param [units] "imperial" (inches, feet) or "metric" (cm, m); board feet either way. Left out: imperial.
 * @returns A heading row, then the plan as it is, at kerfs of 1/16, 1/8 and 1/4 in, and with each further product: pieces, board feet, value, and how much more that is.
 */
export function sawWhatIf(
  small_end: any[][],
  large_end: any[][],
  length: any[][],
  boards: any[][],
  kerf: any,
  pattern: ChoicePattern,
  more?: any[][],
  mill?: any[][],
  sweep?: any,
  taper?: ChoiceTaper,
  units?: ChoiceUnits,
): any[][] {
  return answered(() => {
    const system = unitSystem(units);
    const header = ["If", "Pieces", "Board feet", "Value $", "More board feet", "More $"];
    const given = {
      smallEnd: small_end,
      largeEnd: large_end,
      length,
      boards,
      kerf,
      pattern,
      mill,
      sweep,
      taper,
      units,
    };
    const order = sawOrder(given);
    if (!order) return spilled(header, [["No log yet"]]);
    const further = isLeftOut(more) ? [] : boardSizes(more, order.kerf, system);
    return spilled(header, choiceRows(whatIf(order, further), system));
  });
}

/**
 * What the best sawing plan of a log is worth by your own grade shares, with its slabs, its sawdust and your hours.
 * @customfunction SAWVALUE
 * @param small_end Diameter inside bark at the small end, in inches (cm); two cells for an oval end.
 * @param large_end Diameter inside bark at the large end, in inches (cm); two cells for an oval end.
 * @param length Log length without trim, in feet (m).
 * @param boards Boards to saw: a column of thickness and one of width, in inches (cm); a further last column may hold the price in $ per MBF. A heading row may name columns Length, Product (Board, Bevel siding, Shingles) and Price per piece; six columns without one are thickness, width, length, product, price per piece, price per MBF. A width may be "random" or "4 to 12 by 2".
 * @param kerf Width of wood that the saw turns to sawdust, in inches (cm).
 * @param pattern How the log is opened: Live, Cant, Around, Quarter, or Best for whichever of them gets the most.
 * @param grades Grades you expect: a column of names, one of shares in percent that add to 100, one of prices in $ per MBF.
 * @param [rates] A column of names and one of numbers: Slabs and Sawdust in $ per cubic foot of solid wood, Board feet per hour that you saw. Left out: not counted.
 * @param [mill] Limits of the mill, a column of names and one of numbers: Largest diameter, Longest log, Shortest log, Blade above bed, Shortest board, Length step, Widest cut, Throat, Edger kerf, Scale step, in inches and feet (cm and m), Wane allowed in percent of the thickness. Left out: no limits, boards of 4 ft (1 m) and up.
 * @param [sweep] How far the log bends out of the straight line between its ends, in inches (cm), in the plane of the first diameters. Left out: straight.
 * @param [taper] "Split" saws parallel to the pith, "Full" parallel to the bark it lies on. Left out: Split.
 * @param [units] "imperial" (inches, feet) or "metric" (cm, m); board feet either way. Left out: imperial.
 * @returns A heading row, then each grade, slabs, sawdust and the whole log: amount, unit, price and value; hours and value per hour where you state how fast you saw.
 */
export function sawValue(
  small_end: any[][],
  large_end: any[][],
  length: any[][],
  boards: any[][],
  kerf: any,
  pattern: ChoicePattern,
  grades: any[][],
  rates?: any[][],
  mill?: any[][],
  sweep?: any,
  taper?: ChoiceTaper,
  units?: ChoiceUnits,
): any[][] {
  return answered(() => {
    const header = ["Item", "Amount", "Unit", "Price $", "Value $"];
    const given = {
      smallEnd: small_end,
      largeEnd: large_end,
      length,
      boards,
      kerf,
      pattern,
      mill,
      sweep,
      taper,
      units,
    };
    const [shares, others] = [gradeShares(grades), ratesOf(rates)];
    const plan = plannedOrder(given);
    if (!plan) return spilled(header, [["No log yet"]]);
    return spilled(
      header,
      planValue(plan, shares, others).map(({ item, amount, unit, price, value }) => [item, amount, unit, price, value]),
    );
  });
}
