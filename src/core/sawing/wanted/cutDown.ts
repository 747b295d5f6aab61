import type { BoardPiece } from "../boardSize";
import { HAIR } from "../filling/hair";

/** A piece that is had too often can be resawn, ripped and cut into smaller ones. */
export interface CutDown {
  readonly from: number;
  readonly to: number;
  /** How many smaller pieces one gives. */
  readonly gives: number;
}

/** Which pieces can be cut from which others, a kerf between those that lie side by side. */
export function cutDowns(pieces: readonly BoardPiece[], kerf: number): readonly CutDown[] {
  const times = (from: number, to: number, between: number) => Math.floor((from + between) / (to + between) + HAIR);
  return pieces.flatMap((from, i) =>
    pieces.flatMap((to, j): CutDown[] => {
      const gives =
        times(from.thickness, to.thickness, kerf) *
        times(from.width, to.width, kerf) *
        times(from.length, to.length, 0);
      const alike = from.thickness === to.thickness && from.width === to.width && from.length === to.length;
      // Two lines of one size can stand in for each other; one direction is enough, or they would go round in circles.
      return i === j || gives === 0 || (alike && i > j) ? [] : [{ from: i, to: j, gives }];
    }),
  );
}
