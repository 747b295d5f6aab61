import { sawnBoardFeet, type BoardPiece } from "../boardSize";
import type { CutDown } from "./cutDown";
import type { SourcePlan } from "./woodSource";

/** One log or tree that is to be sawn. */
export interface Taken {
  /** Its place in the list of sources. */
  readonly source: number;
  readonly plan: SourcePlan;
}

export interface Allotted {
  /** Of each that is taken, the pieces that are counted, by number. */
  readonly gives: readonly (readonly number[])[];
  /** Of each piece, how many are still missing. */
  readonly missing: readonly number[];
}

/**
 * Which pieces each taken log gives towards the list: its own first, as long as they are missing; then what was had too
 * often is cut down to what is still missing, the largest missing pieces first, each from the smallest that will do.
 */
export function allot(
  taken: readonly Taken[],
  counts: readonly number[],
  pieces: readonly BoardPiece[],
  cuts: readonly CutDown[],
): Allotted {
  const missing = [...counts];
  const spare = taken.map(({ plan }) => [...plan.gives]);
  const gives = taken.map(() => counts.map(() => 0));
  /** Counts what a log has too much of, as far as it is missing. */
  const count = (at: number, piece: number) => {
    const [spares, given] = [spare[at] as number[], gives[at] as number[]];
    const used = Math.min(spares[piece] as number, missing[piece] as number);
    spares[piece] = (spares[piece] as number) - used;
    given[piece] = (given[piece] as number) + used;
    missing[piece] = (missing[piece] as number) - used;
  };
  spare.forEach((row, at) => row.forEach((_, piece) => count(at, piece)));

  const volume = (piece: number) => sawnBoardFeet(pieces[piece] as BoardPiece);
  const inOrder = [...cuts].sort((a, b) => volume(b.to) - volume(a.to) || volume(a.from) - volume(b.from));
  for (const { from, to, gives: each } of inOrder) {
    if ((missing[to] as number) === 0) continue;
    for (const [at, row] of spare.entries()) {
      while ((row[from] as number) > 0 && (missing[to] as number) > 0) {
        row[from] = (row[from] as number) - 1;
        row[to] = (row[to] as number) + each; // what is over of them can be cut down further
        count(at, to);
      }
    }
  }
  return { gives, missing };
}
