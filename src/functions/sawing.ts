import { inches } from "../core/basis/units";
import { gainFromThinnerKerf, kerfRecovery as recovery } from "../core/lumber/kerfRecovery";
import { sawYield as yieldOf } from "../core/sawing/sawYield";
import { answered, eachCell, spilled } from "./shell/answers";
import { cutRows } from "./shell/cutRows";
import { layoutRows } from "./shell/layoutRows";
import { plannedOrder } from "./shell/plannedOrder";
import { measured, optionalNumber } from "./shell/readings";
import { unitSystem } from "./shell/unitSystem";

/**
 * Ways to open a log that Excel offers while a formula is typed.
 * @customenum {string}
 */
export enum SawingPatternName {
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
 * Units of what is given.
 * @customenum {string}
 */
export enum SawingUnits {
  /** Inches and feet */
  imperial = "imperial",
  /** Centimetres and metres */
  metric = "metric",
}

/**
 * How the saw planes run along the log.
 * @customenum {string}
 */
export enum SawingTaper {
  /** Parallel to the pith: the small end is raised */
  split = "Split",
  /** Parallel to the bark that the log lies on */
  full = "Full",
}

/**
 * Percent of the wood under the saw that becomes board, or how many percent more boards than with another kerf.
 * @customfunction KERFRECOVERY
 * @param thickness Rough green thickness of a board, in inches.
 * @param kerf Width of wood that the saw turns to sawdust, in inches.
 * @param [compare_kerf] Kerf of another saw, in inches. Given: the answer is the percent more boards than with that saw.
 * @returns Percent, in the shape that was given.
 */
export function kerfRecovery(thickness: any[][], kerf: any[][], compare_kerf?: any[][]): any[][] {
  return answered(() =>
    eachCell(
      {
        board: measured(thickness, "Thickness", inches, { unit: "in", low: 0.1, high: 60 }),
        own: optionalNumber(kerf, "Kerf", inches, { unit: "in", low: 0, high: 1 }),
        other: optionalNumber(compare_kerf, "Kerf to compare", inches, { unit: "in", low: 0, high: 1 }),
      },
      ({ board, own, other }) => (other === 0 ? recovery(board, own) : gainFromThinnerKerf(board, own, other)),
    ),
  );
}

/**
 * The cut list that gets the most out of a log: the most dollars when the boards are priced, else the most board feet.
 * @customfunction SAWPLAN
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
 * @returns Step, turn, head reading, piece, board feet and value of each cut, from the first to the board left on the bed; then the flitches that are edged alike, and the boards of each grain where quarters are sawn. With a scale step, what the scale shows besides.
 */
export function sawPlan(
  small_end: any[][],
  large_end: any[][],
  length: any[][],
  boards: any[][],
  kerf: any,
  pattern: SawingPatternName,
  mill?: any[][],
  sweep?: any,
  taper?: SawingTaper,
  units?: SawingUnits,
): any[][] {
  return answered(() => {
    const system = unitSystem(units);
    const { diameter, distance } = system;
    const header = [
      "Step",
      "Turn",
      `Head reading ${diameter.name}`,
      `Piece ${diameter.name} x ${diameter.name} x ${distance.name}`,
      "Board feet",
      "Value $",
    ];
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
    const scale = plan?.scaleStep === undefined ? [] : ["On the scale"];
    return spilled([...header, ...scale], plan ? cutRows(plan, system) : [["No log yet"]]);
  });
}

/**
 * What the best sawing plan gets out of a log: the shares are of its solid wood and add to 100 percent.
 * @customfunction SAWYIELD
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
 * @returns A heading row, then pieces, board feet, value, lumber percent, sawdust percent and slab percent. A board with wane counts whole in board feet, and in lumber percent with the wood that is in it.
 */
export function sawYield(
  small_end: any[][],
  large_end: any[][],
  length: any[][],
  boards: any[][],
  kerf: any,
  pattern: SawingPatternName,
  mill?: any[][],
  sweep?: any,
  taper?: SawingTaper,
  units?: SawingUnits,
): any[][] {
  return answered(() => {
    const header = ["Pieces", "Board feet", "Value $", "Lumber %", "Sawdust %", "Slab %"];
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
    if (!plan) return spilled(header, [[]]);
    const { pieces, boardFeet, value, lumber, sawdust, slab } = yieldOf(plan);
    return spilled(header, [[pieces, boardFeet, value, lumber, sawdust, slab]]);
  });
}

/**
 * The end view of the best sawing plan: outlines of the log's ends and of every board, point by point, for a chart.
 * @customfunction SAWLAYOUT
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
 * @returns A table of X, Y, piece and grain (quarter, rift or flat), the pith at 0, 0; #N/A parts one outline from the next.
 */
export function sawLayout(
  small_end: any[][],
  large_end: any[][],
  length: any[][],
  boards: any[][],
  kerf: any,
  pattern: SawingPatternName,
  mill?: any[][],
  sweep?: any,
  taper?: SawingTaper,
  units?: SawingUnits,
): any[][] {
  return answered(() => {
    const system = unitSystem(units);
    const header = [`X ${system.diameter.name}`, `Y ${system.diameter.name}`, "Piece", "Grain"];
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
    return spilled(header, plan ? layoutRows(plan, system) : [["No log yet"]]);
  });
}
