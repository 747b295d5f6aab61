import { inches, type Inches } from "../basis/units";
import type { Placed } from "./bestStack";
import type { SawLog } from "./sawLog";

/** One pass of the blade, in the order of work. */
export interface Cut {
  /** How the log is turned before this cut. */
  readonly turn: "none" | "half turn";
  /** Height above the bed of what stays below the blade. [in] */
  readonly headReading: Inches;
  /** What the cut sets free. */
  readonly frees: Placed | "slab";
}

export interface CutList {
  /** How far the small end is raised so that the pith lies level (split taper). [in] */
  readonly smallEndRaised: Inches;
  readonly cuts: readonly Cut[];
  /** The board that is left on the bed when the last cut is made. */
  readonly lastOnBed: Placed;
}

/**
 * The cuts that saw a stack of boards out of a log, turned over once near the middle.
 *
 * First half: the small end is raised by half the taper, so that the pith lies level at half the large end's
 * diameter above the bed. A plane at y from the pith then stands at
 *
 *     z = y + Db / 2
 *
 * Half turn: the log lies on its sawn face, the lower faces now look up, and settings are counted up from the bed,
 *
 *     z = b + sum of (t + k)
 *
 * from the last board b, so that it comes out at its thickness. Without the turn the last cut would pass within a
 * slab's depth of the bed, lower than a mill can go.
 *
 * @param boards from the lowest to the highest, one kerf apart; at least one as thick as the blade stands above the bed
 * @param bladeAboveBed the lowest the blade can be set [in]
 */
export function cutList(log: SawLog, boards: readonly Placed[], kerf: Inches, bladeAboveBed: Inches): CutList {
  const last = lastBoard(boards, bladeAboveBed);
  const lastOnBed = boards[last] as Placed;
  const fromTop = boards.slice(last + 1).reverse();
  const afterTurn = boards.slice(0, last);
  const highest = boards.at(-1) as Placed;
  const pithHeight = log.largeEnd / 2;

  const firstHalf: Cut[] = [{ turn: "none", headReading: inches(upper(highest) + pithHeight), frees: "slab" }];
  for (const board of fromTop) {
    firstHalf.push({ turn: "none", headReading: inches(board.lower - kerf + pithHeight), frees: board });
  }

  const bed = upper(lastOnBed);
  const outermost = boards[0] as Placed;
  const secondHalf: Cut[] = [{ turn: "half turn", headReading: inches(bed - outermost.lower), frees: "slab" }];
  for (const board of afterTurn) {
    secondHalf.push({ turn: "none", headReading: inches(bed - upper(board) - kerf), frees: board });
  }
  return {
    smallEndRaised: inches((log.largeEnd - log.smallEnd) / 2),
    cuts: [...firstHalf, ...secondHalf],
    lastOnBed,
  };
}

const upper = ({ lower, piece }: Placed) => lower + piece.thickness;

/** The board nearest the pith among those that the blade can still be set above. */
function lastBoard(boards: readonly Placed[], bladeAboveBed: number): number {
  const fromPith = (i: number) => Math.abs((boards[i] as Placed).lower + (boards[i] as Placed).piece.thickness / 2);
  const possible = [...boards.keys()].filter((i) => (boards[i] as Placed).piece.thickness >= bladeAboveBed);
  return possible.reduce((nearest, i) => (fromPith(i) < fromPith(nearest) ? i : nearest));
}
