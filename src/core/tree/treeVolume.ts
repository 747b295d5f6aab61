import { OutOfRange } from "../basis/problem";
import type { Source } from "../basis/source";
import { told } from "../basis/telling";
import { boardFeet, inches, type BoardFeet } from "../basis/units";
import type { LogRule } from "../log/logRule";
import { upperLogTaper } from "../reference/upperLogTaper";
import { requireFormClassTree, TREE_LOG_LENGTH, type FormClassTree } from "./formClassTree";
import { dbhOfRow, firstTop, placeAmongRows, upperLogTapers } from "./upperLogTapers";

/**
 * Board feet in a standing tree by form class: each of its 16-foot logs scaled by a log rule, and added up.
 *
 *     d1     = FC D / 100, to a tenth
 *     d(k+1) = d(k) - t(D, n, k+1)
 *     V      = sum of the rule's volume at d1 ... dn, 16 ft
 *
 *     V   volume of the tree                                        [bf]
 *     D   diameter at breast height, over bark                      [in]
 *     FC  Girard form class                                         [%]
 *     n   logs of 16 ft in the tree
 *     d   diameter inside bark at the top of a log                  [in]
 *     t   average upper-log taper [1]                               [in]
 *
 * That build holds at the even diameters and the whole logs of the tables. Between them this takes straight lines, as
 * the tables themselves do: their half-log columns are the plain mean of the two neighbours and their odd diameters
 * the mean of the even ones. (Building at the odd diameter itself, with tapers in between, comes out worse: against
 * the Scribner table it is off by 1.7 bf on average instead of 0.7, and a tree could lose volume as it grows, because
 * d1 moves in steps.)
 *
 * Valid for 10 to 40 in and 1 to 3 logs, 12 to 32 in up to 4 logs, form class 65 to 90.
 *
 * @throws InvalidInput when a measure is not a number above 0
 * @throws OutOfRange outside the tables, or where the log rule has no value for one of the logs
 *
 * [1] C. Mesavage and J. W. Girard 1946, in core/reference/upperLogTaper.ts
 */
export function treeVolume(tree: FormClassTree, rule: LogRule): BoardFeet {
  requireFormClassTree(tree);
  const { dbh, logs, formClass } = tree;
  const cells = cellsOf(rule);
  const place = placeAmongRows(dbh);
  const row = Math.floor(place);
  const below = inRow(cells, rule, row, logs, formClass);
  if (row === place) return boardFeet(below);
  const above = inRow(cells, rule, row + 1, logs, formClass);
  return boardFeet(below + (above - below) * (place - row));
}

/** Volume at an even diameter, on a straight line between the whole-log columns. */
function inRow(cells: Float64Array, rule: LogRule, row: number, logs: number, formClass: number): number {
  const whole = Math.floor(logs);
  const top = firstTop(dbhOfRow(row), formClass);
  const fewer = cell(cells, rule, row, whole, top);
  if (whole === logs) return fewer;
  return fewer + (cell(cells, rule, row, whole + 1, top) - fewer) * (logs - whole);
}

const MOST_LOGS = 4;
const WIDEST_TOP = 360; // tenths of an inch: 40 in at form class 90

/** One cell of the rule's table. The form class matters only through the first top, so that is its third heading. */
function cell(cells: Float64Array, rule: LogRule, row: number, logs: number, top: number): number {
  const at = (row * MOST_LOGS + logs - 1) * (WIDEST_TOP + 1) + top;
  const known = cells[at] as number;
  if (!Number.isNaN(known)) return known;
  const fresh = sumOfLogs(rule, row, logs, top);
  cells[at] = fresh;
  return fresh;
}

function sumOfLogs(rule: LogRule, row: number, logs: number, top: number): number {
  const tapers = upperLogTapers[row]?.[logs - 1];
  if (!tapers) throw new RangeError(`no tapers in row ${row} for ${logs} logs`);
  let tenths = top;
  let sum: number = scaled(rule, tenths, 1);
  tapers.forEach((taper, index) => {
    tenths -= taper;
    sum += scaled(rule, tenths, index + 2);
  });
  return sum;
}

function scaled(rule: LogRule, tenths: number, log: number): number {
  try {
    return rule.scale({ diameter: inches(tenths / 10), length: TREE_LOG_LENGTH });
  } catch (problem) {
    if (!(problem instanceof OutOfRange)) throw problem;
    throw new OutOfRange(
      (telling) =>
        `Log ${log} of this tree is ${told(telling, tenths / 10, "in")} at its small end. ${problem.messageIn(telling)}`,
    );
  }
}

/** Cells already built, by rule; a cell not yet built holds NaN. A column of trees asks for the same few over and over. */
const built = new WeakMap<LogRule, Float64Array>();

function cellsOf(rule: LogRule): Float64Array {
  let cells = built.get(rule);
  if (!cells) {
    cells = new Float64Array(upperLogTapers.length * MOST_LOGS * (WIDEST_TOP + 1)).fill(NaN);
    built.set(rule, cells);
  }
  return cells;
}

export const sources: readonly Source[] = [
  upperLogTaper.source,
  {
    author: "C. Mesavage and J. W. Girard",
    year: "1946",
    title: "Tables for estimating board-foot volume of timber",
    where:
      "form class 78, Scribner; International 1/4-inch at 10 to 12 in, as reprinted in the Service Forester's Handbook",
    url: "https://handbook.sref.info/doku.php?id=tree_volume_tables",
    standing: "read",
  },
  {
    author: "University of Florida, School of Forest Resources and Conservation Extension",
    year: "n.d.",
    title: "4-H forestry, Tree Measurement, volume table",
    where:
      "International 1/4-inch, form class 78: 10 to 34 in, and 36 in by 1 and 1.5 logs; the page names neither rule nor class",
    url: "http://www.sfrc.ufl.edu/extension/4h/tree_measurement/index.html",
    standing: "read",
  },
  {
    author: "C. Mesavage and J. W. Girard",
    year: "1946",
    title: "Tables for estimating board-foot volume of timber",
    where: "form class 80, International 1/4-inch, as reprinted in an encyclopedia article",
    url: "https://www.knowpia.com/knowpedia/Volume_table",
    standing: "read",
  },
  {
    author: "C. Mesavage and J. W. Girard",
    year: "1946",
    title: "Tables for estimating board-foot volume of timber",
    where: "form classes 65 to 90; Doyle, form class 78; the rest of International 1/4-inch at 36 to 40 in",
    standing: "from memory",
  },
];
