import type { Source } from "../basis/source";
import { feet, inches, type Feet, type Inches } from "../basis/units";
import { upperLogTaper } from "../reference/upperLogTaper";
import { requireFormClassTree, TREE_LOG_LENGTH, type FormClassTree } from "./formClassTree";
import { firstTop, placeAmongRows, upperLogTapers } from "./upperLogTapers";

/** One log of a standing tree. Log 1 is the butt log. */
export interface TreeLog {
  readonly log: number;
  /** Inside bark. [in] */
  readonly smallEnd: Inches;
  /** Inside bark, but see `treeLogs` for the butt log. [in] */
  readonly largeEnd: Inches;
  /** Trim left out. [ft] */
  readonly length: Feet;
}

/**
 * The 16-foot logs of a standing tree, with the diameters that feed scaling and sawing.
 *
 *     d1     = FC D / 100, to a tenth
 *     d(k+1) = d(k) - t(D, n, k+1)
 *
 *     D   diameter at breast height, over bark                 [in]
 *     FC  Girard form class                                    [%]
 *     n   logs of 16 ft in the tree
 *     d   diameter inside bark at the top of a log             [in]
 *     t   average upper-log taper [1]                          [in]
 *
 * The large end of a log is the small end of the one below. Choices of ours, where the source is silent:
 * - Between the diameters and the whole logs of the taper table, tapers lie on a straight line.
 * - A part of a log at the top is that part of 16 feet and takes that part of the last taper.
 * - The large end of the butt log is taken as DBH: below breast height the swell of the butt about makes up for the
 *   bark. A saw that works to the small end loses nothing by it.
 *
 * @throws InvalidInput when a measure is not a number above 0
 * @throws OutOfRange outside the tables
 *
 * [1] C. Mesavage and J. W. Girard 1946, in core/reference/upperLogTaper.ts
 */
export function treeLogs(tree: FormClassTree): readonly TreeLog[] {
  requireFormClassTree(tree);
  const { dbh, logs, formClass } = tree;
  const whole = Math.floor(logs);
  const part = logs - whole;

  const found: TreeLog[] = [];
  let largeEnd: Inches = dbh;
  let top = firstTop(dbh, formClass);
  for (let log = 1; log <= Math.ceil(logs); log += 1) {
    const partial = log > whole;
    if (log > 1) top -= partial ? part * taper(dbh, log, log) : mixed(dbh, whole, part, log);
    const smallEnd = inches(top / 10);
    found.push({ log, smallEnd, largeEnd, length: feet(partial ? part * TREE_LOG_LENGTH : TREE_LOG_LENGTH) });
    largeEnd = smallEnd;
  }
  return found;
}

/** Taper of a whole log in a tree that stands part of the way from one number of logs to the next. */
function mixed(dbh: Inches, whole: number, part: number, log: number): number {
  const fewer = taper(dbh, whole, log);
  return part === 0 ? fewer : fewer + (taper(dbh, whole + 1, log) - fewer) * part;
}

/** Taper at a DBH, on a straight line between the rows of the table. [tenths of an inch] */
function taper(dbh: Inches, logs: number, log: number): number {
  const place = placeAmongRows(dbh);
  const row = Math.floor(place);
  const towardsNextRow = place - row;
  const below = taperInRow(row, logs, log);
  return towardsNextRow === 0 ? below : below + (taperInRow(row + 1, logs, log) - below) * towardsNextRow;
}

function taperInRow(row: number, logs: number, log: number): number {
  const found = upperLogTapers[row]?.[logs - 1]?.[log - 2];
  if (found === undefined) throw new RangeError(`no taper in row ${row} for log ${log} of ${logs}`);
  return found;
}

export const sources: readonly Source[] = [
  upperLogTaper.source,
  {
    author: "Woodlot Reckoner",
    year: "",
    title: "How the logs of a standing tree are read here",
    where: "tapers between the rows of the table, the half log at the top, the large end of the butt log taken as DBH",
    standing: "choice of ours",
  },
];
