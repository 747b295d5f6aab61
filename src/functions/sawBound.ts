import { answered, spilled } from "./shell/answers";
import { boundRow } from "./shell/boundRow";
import { plannedOrder } from "./shell/plannedOrder";
import { unitSystem } from "./shell/unitSystem";

/**
 * Ways to open a log that Excel offers while a formula is typed.
 * @customenum {string}
 */
export enum BoundPattern {
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
export enum BoundTaper {
  /** Parallel to the pith: the small end is raised */
  split = "Split",
  /** Parallel to the bark that the log lies on */
  full = "Full",
}

/**
 * Units of what is given.
 * @customenum {string}
 */
export enum BoundUnits {
  /** Inches and feet */
  imperial = "imperial",
  /** Centimetres and metres */
  metric = "metric",
}

/**
 * How good the best sawing plan is: the most that any plan of the log could give by area and kerf, how much of that this one gives, and what it is the best of.
 * @customfunction SAWBOUND
 * @param small_end Diameter inside bark at the small end, in inches (cm); two cells for an oval end.
 * @param large_end Diameter inside bark at the large end, in inches (cm); two cells for an oval end.
 * @param length Log length without trim, in feet (m).
 * @param boards Boards to saw: a column of thickness and one of width, in inches (cm); a further last column may hold the price in $ per MBF. A heading row may name columns Length, Product (Board, Bevel siding, Shingles) and Price per piece; six columns without one are thickness, width, length, product, price per piece, price per MBF. A width may be "random" or "4 to 12 by 2".
 * @param kerf Width of wood that the saw turns to sawdust, in inches (cm).
 * @param pattern How the log is opened: Live, Cant, Around, Quarter, or Best for whichever of them gets the most.
 * @param [mill] Limits of the mill, a column of names and one of numbers: Largest diameter, Longest log, Shortest log, Blade above bed, Shortest board, Length step, Widest cut, Throat, Edger kerf, Scale step, in inches and feet (cm and m), Wane allowed in percent of the thickness. Left out: no limits, boards of 4 ft (1 m) and up.
 * @param [sweep] How far the log bends out of the straight line between its ends, in inches (cm), in the plane of the first diameters. Left out: straight.
 * @param [taper] "Split" saws parallel to the pith, "Full" parallel to the bark it lies on. Left out: Split.
 * @param [units] "imperial" (inches, feet) or "metric" (cm, m); board feet either way. Left out: imperial.
 * @returns A heading row, then the most board feet and dollars by area and kerf, the percent of it that the plan gives (of dollars when the boards are priced), the step of the settings among which the plan is the best, or "any", and what it is the best of.
 */
export function sawBound(
  small_end: any[][],
  large_end: any[][],
  length: any[][],
  boards: any[][],
  kerf: any,
  pattern: BoundPattern,
  mill?: any[][],
  sweep?: any,
  taper?: BoundTaper,
  units?: BoundUnits,
): any[][] {
  return answered(() => {
    const system = unitSystem(units);
    const header = ["Most bf", "Most $", "Plan gives %", `Settings ${system.diameter.name}`, "Best of"];
    const plan = plannedOrder({
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
    });
    return spilled(header, [plan ? boundRow(plan, system) : ["No log yet"]]);
  });
}
