import { feet, inches } from "../../core/basis/units";
import { boardMeasure } from "../../core/lumber/boardMeasure";
import { boardTally } from "../../core/lumber/boardTally";
import { asGiven } from "../../core/lumber/tallyMeasure";
import type { BoardLine } from "./boardLine";

/** Board feet of the very measures given. */
export const boardFeetOf = ({ thickness, width, length, pieces }: BoardLine): number =>
  boardMeasure(inches(thickness), inches(width), feet(length), pieces);

/** Pieces and board feet by size, as given; lines that lack a measure are left out. */
export const tallyBySize = (boards: readonly BoardLine[]) =>
  boardTally(
    boards
      .filter(({ thickness, width, length }) => thickness > 0 && width > 0 && length > 0)
      .map(({ thickness, width, length, pieces }) => ({
        name: `${thickness} x ${width} x ${length}`,
        thickness: inches(thickness),
        width: inches(width),
        length: feet(length),
        pieces,
      })),
    asGiven,
  );
