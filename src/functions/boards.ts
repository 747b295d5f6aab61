import { feet, inches } from "../core/basis/units";
import { boardMeasure } from "../core/lumber/boardMeasure";
import { surfaceMeasure as measureOfSurface } from "../core/lumber/surfaceMeasure";
import { asGiven, tallyMeasures } from "../core/lumber/tallyMeasure";
import { answered, eachCell } from "./shell/answers";
import { chosenOr, measuredIn } from "./shell/measuredIn";
import { measured, optionalNumber } from "./shell/readings";
import { tallyOfBoards } from "./shell/tallyOfBoards";
import { quarterScale } from "./shell/quarterScale";
import { unitSystem } from "./shell/unitSystem";

/**
 * Units of what is given.
 * @customenum {string}
 */
export enum BoardUnits {
  /** Inches and feet */
  imperial = "imperial",
  /** Centimetres and metres */
  metric = "metric",
}

/**
 * How a tally of boards is counted.
 * @customenum {string}
 */
export enum TallyMeasureName {
  /** The very measures given, nothing rounded: nominal sizes give nominal board feet, actual sizes actual ones */
  asGiven = "As given",
  /** Nominal sizes; a board under 1 in thick counts as 1 in */
  softwoodNominal = "Softwood nominal",
  /** Surface measure of each board in whole square feet, times its thickness; under 1 in counts as 1 in */
  hardwood = "Hardwood",
}

/** A blank number of pieces means one board, and some spreadsheets hand over a blank as 0. */
const oneBoardAtLeast = (pieces: number) => (pieces === 0 ? 1 : pieces);

/**
 * Board feet in a board, or in each line of a tally, of the very measures given.
 * @customfunction BOARDFEET
 * @param thickness Thickness, in inches (cm), or as a text in quarters of an inch such as "5/4". Give the nominal size for nominal board feet, the actual size for actual ones.
 * @param width Width, in inches (cm).
 * @param length Length, in feet (m).
 * @param [pieces] How many such boards. Left out: 1.
 * @param [units] "imperial" (inches, feet) or "metric" (cm, m); the answer is in board feet either way. Left out: imperial.
 * @returns Board feet, not rounded, in the shape that was given.
 */
export function boardFeet(
  thickness: any[][],
  width: any[][],
  length: any[][],
  pieces?: any[][],
  units?: BoardUnits,
): any[][] {
  return answered(() => {
    const system = unitSystem(units);
    const { diameter: across, distance: along } = system;
    return eachCell(
      {
        thickness: measuredIn(quarterScale(thickness, system), "Thickness", across, inches, 0.01, 60),
        width: measuredIn(width, "Width", across, inches, 0.1, 120),
        length: measuredIn(length, "Length", along, feet, 0.1, 120),
        pieces: optionalNumber(pieces, "Pieces", oneBoardAtLeast, { unit: "boards", low: 0, high: 1e6 }, 1),
      },
      (board) => boardMeasure(board.thickness, board.width, board.length, board.pieces),
    );
  });
}

/**
 * Pieces and board feet of a tally of boards, by size or by group, with all boards in the last row.
 * @customfunction BOARDTALLY
 * @param thickness Thickness of each line's boards, in inches (cm), or as a text in quarters such as "5/4": nominal or rough for a nominal tally, actual for an actual one.
 * @param width Width of each line's boards, in inches (cm).
 * @param length Length of each line's boards, in feet (m).
 * @param pieces How many such boards each line has, a whole number. Blank: 1.
 * @param [group] Group of each line, such as a grade, a species or an order. Left out: by size.
 * @param [measure] "As given", "Softwood nominal" (under 1 inch counts as 1 inch) or "Hardwood" (whole square feet of surface measure, exact halves down and up in turn). Left out: as given.
 * @param [units] "imperial" (inches, feet) or "metric" (cm, m); the answer is in board feet either way. Left out: imperial.
 * @returns A table: size or group, pieces, board feet.
 */
export function boardTally(
  thickness: any[][],
  width: any[][],
  length: any[][],
  pieces: any[][],
  group?: any[][],
  measure?: TallyMeasureName,
  units?: BoardUnits,
): any[][] {
  return answered(() => {
    const system = unitSystem(units);
    return tallyOfBoards(
      { thickness: quarterScale(thickness, system), width, length, pieces, group },
      chosenOr("Measure", measure, tallyMeasures, asGiven),
      system,
    );
  });
}

/**
 * Surface measure of a hardwood board, in whole square feet: its length in feet loses its fraction, its width keeps it.
 * @customfunction SURFACEMEASURE
 * @param width Width, in inches.
 * @param length Length, in feet; a fraction of a foot is dropped.
 * @returns Square feet, to the nearest whole number, an exact half to the even one; in the shape that was given.
 */
export function surfaceMeasure(width: any[][], length: any[][]): any[][] {
  return answered(() =>
    eachCell(
      {
        width: measured(width, "Width", inches, { unit: "in", low: 0.1, high: 120 }),
        length: measured(length, "Length", feet, { unit: "ft", low: 1, high: 120 }),
      },
      (board) => measureOfSurface(board.width, board.length),
    ),
  );
}
