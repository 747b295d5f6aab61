import { feet, inches } from "../core/basis/units";
import { boardMeasure } from "../core/lumber/boardMeasure";
import { answered, eachCell } from "./shell/answers";
import { measuredIn } from "./shell/measuredIn";
import { optionalNumber } from "./shell/readings";
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

/** A blank number of pieces means one board, and some spreadsheets hand over a blank as 0. */
const oneBoardAtLeast = (pieces: number) => (pieces === 0 ? 1 : pieces);

/**
 * Board feet in a board, or in each line of a tally, of the very measures given.
 * @customfunction BOARDFEET
 * @param thickness Thickness, in inches (cm). Give the nominal size for nominal board feet, the actual size for actual ones.
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
    const { diameter: across, distance: along } = unitSystem(units);
    return eachCell(
      {
        thickness: measuredIn(thickness, "Thickness", across, inches, 0.01, 60),
        width: measuredIn(width, "Width", across, inches, 0.1, 120),
        length: measuredIn(length, "Length", along, feet, 0.1, 120),
        pieces: optionalNumber(pieces, "Pieces", oneBoardAtLeast, { unit: "boards", low: 0, high: 1e6 }, 1),
      },
      (board) => boardMeasure(board.thickness, board.width, board.length, board.pieces),
    );
  });
}
