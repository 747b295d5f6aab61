import type { Choice } from "../basis/choices";
import type { Source } from "../basis/source";
import { boardFeet, inches, type BoardFeet, type Feet, type Inches } from "../basis/units";
import { boardMeasure, boardMeasureSources } from "./boardMeasure";
import { exactSurfaceMeasure, isHalf, surfaceMeasureSources } from "./surfaceMeasure";

const thinBoards: Source = {
  author: "The trade",
  year: "",
  title: "Board measure",
  where: "a board thinner than 1 in counts as 1 in thick",
  standing: "common practice",
};

/** Like boards of a tally. */
export interface BoardLine {
  readonly thickness: Inches;
  readonly width: Inches;
  readonly length: Feet;
  /** A whole number. */
  readonly pieces: number;
}

/** A convention by which a tally of boards is counted. */
export interface TallyMeasure extends Choice {
  readonly sources: readonly Source[];
  /** Starts a tally: what it returns is called line after line, since some conventions look back at earlier boards. */
  counter(): (line: BoardLine) => BoardFeet;
}

/** The very measures given, nothing rounded: nominal sizes give nominal board feet, actual sizes actual ones. */
export const asGiven: TallyMeasure = {
  title: "As given",
  aliases: ["Actual"],
  sources: boardMeasureSources,
  counter: () => (line) => boardMeasure(line.thickness, line.width, line.length, line.pieces),
};

/** Nominal sizes, a board thinner than 1 in counted as 1 in thick. */
export const softwoodNominal: TallyMeasure = {
  title: "Softwood nominal",
  aliases: ["Softwood", "Nominal"],
  sources: [...boardMeasureSources, thinBoards],
  counter: () => (line) => boardMeasure(atLeastAnInch(line.thickness), line.width, line.length, line.pieces),
};

/**
 * Surface measure of each board times its rough thickness, a board thinner than 1 in counted as 1 in thick. Where the
 * surface measure ends in an exact half, the boards of the tally are rounded turn about, the first one down.
 */
export const hardwoodMeasure: TallyMeasure = {
  title: "Hardwood",
  aliases: ["Surface measure"],
  sources: surfaceMeasureSources,
  counter() {
    let nextHalfUp = false;
    return ({ thickness, width, length, pieces }) => {
      const exact = exactSurfaceMeasure(width, length);
      const thick = atLeastAnInch(thickness);
      if (!isHalf(exact)) return boardFeet(thick * Math.round(exact) * pieces);
      const up = nextHalfUp ? Math.ceil(pieces / 2) : Math.floor(pieces / 2);
      if (pieces % 2 === 1) nextHalfUp = !nextHalfUp;
      return boardFeet(thick * (Math.floor(exact) * pieces + up));
    };
  },
};

/** Every convention for a tally of boards. Menus, messages and tests read this list. */
export const tallyMeasures: readonly TallyMeasure[] = [asGiven, softwoodNominal, hardwoodMeasure];

const atLeastAnInch = (thickness: Inches) => inches(Math.max(1, thickness));
