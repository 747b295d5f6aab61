import { OutOfRange } from "../basis/problem";
import type { Source } from "../basis/source";
import { boardFeet, type BoardFeet, type Inches } from "../basis/units";
import type { BoardSize } from "../sawing/boardSize";
import type { BoardLengths } from "../sawing/boardPieces";
import type { SawLog } from "../sawing/sawLog";
import { sawPlan } from "../sawing/sawPlan";
import { sawYield } from "../sawing/sawYield";
import type { SawingPattern } from "../sawing/sawingPattern";
import type { FormClassTree } from "../tree/formClassTree";
import { treeLogs } from "../tree/treeLogs";

/** How every log of every tree is to be sawn. */
export interface LumberOrder {
  readonly sizes: readonly BoardSize[];
  readonly kerf: Inches;
  readonly pattern: SawingPattern;
  readonly lengths: BoardLengths;
}

/**
 * Tells how much lumber standing trees should saw out to: each tree is built up log by log from its form class, each
 * log is sawn by the best plan for the boards wanted, and their board feet are added. The logs are taken as straight,
 * round and sound, so this is the most that can be had; what is really got is less by crook, rot and mishap.
 *
 * A log too thin for any board of the list gives none. The limits of a mill are not looked at: they are asked log by
 * log when the sawing is planned.
 *
 * Trees of a stand share their few log sizes, so a plan made once is kept for the next tree.
 *
 * @returns a function from a tree to board feet; it throws OutOfRange outside the form-class tables
 */
export function treeLumber(order: LumberOrder): (tree: FormClassTree) => BoardFeet {
  const ofLog = logLumber(order);
  return (tree) => boardFeet(treeLogs(tree).reduce((sum, log) => sum + ofLog(log), 0));
}

/** How much lumber one log should saw out to by the best plan; a plan made once is kept for the next log of its size. */
export function logLumber({ sizes, kerf, pattern, lengths }: LumberOrder): (log: SawLog) => number {
  const known = new Map<string, number>();
  return (log) => {
    const key = `${log.smallEnd} ${log.largeEnd} ${log.length}`;
    const before = known.get(key);
    if (before !== undefined) return before;
    const sawn = orNone(() => sawYield(sawPlan({ log, sizes, kerf, pattern, lengths })).boardFeet);
    known.set(key, sawn);
    return sawn;
  };
}

/** A plan without a mill is out of range for one reason only: no board of the list fits the log. */
function orNone(sawn: () => BoardFeet): number {
  try {
    return sawn();
  } catch (problem) {
    if (problem instanceof OutOfRange) return 0;
    throw problem;
  }
}

export const sources: readonly Source[] = [
  {
    author: "Woodlot Reckoner",
    year: "2026",
    title: "Sum of the best sawing plans of a tree's logs",
    where: "core/value/treeLumber",
    standing: "choice of ours",
  },
];
