import { feet, inches } from "../../basis/units";
import { whyItDoesNotFit, type Mill } from "../millLimits";
import type { SawLog } from "../sawLog";
import { chooseLogs } from "./chooseLogs";
import type { NewLinearProgram } from "./linearProgram";
import { logSource, type PieceSawing } from "./logSource";

/** Logs of one size that would give what is missing. */
export interface MoreLogs {
  readonly log: SawLog;
  readonly count: number;
  /** Why the mill cannot take such a log; left out when it can. */
  readonly misfit?: string;
}

/** What it takes for some of the missing pieces, by sizes of log to choose from. */
export interface MoreLogsFor {
  /** Numbers of the missing pieces. */
  readonly pieces: readonly number[];
  /** Any one of them would do; none where no log up to 40 in would. */
  readonly sizes: readonly MoreLogs[];
}

/** Pieces up to this length are looked for together, in logs as long as the longest of them. [ft] */
const COMMON_LENGTH = 16;
/** Small ends that are tried, and how many that would do are told. [in] */
const SMALL_ENDS = { first: 6, step: 2, last: 40 };
const TOLD = 3;

/**
 * How many more logs of what size would give the missing pieces: for the lengths of common logs together, for each
 * greater length by itself, and for three thicknesses of log, from the thinnest that can give them all.
 *
 * @param taper of the logs that are thought of [in per ft]
 */
export function* moreLogs(
  missing: readonly number[],
  sawing: PieceSawing,
  taper: number,
  newProgram: NewLinearProgram,
): Generator<undefined, readonly MoreLogsFor[]> {
  const lacking = [...missing.keys()].filter((i) => (missing[i] as number) > 0);
  const lengthOf = (piece: number) => sawing.pieces[piece]?.length ?? 0;
  const common = lacking.filter((i) => lengthOf(i) <= COMMON_LENGTH);
  const longer = [...new Set(lacking.map(lengthOf))].filter((length) => length > COMMON_LENGTH).sort((a, b) => a - b);
  const groups = [common, ...longer.map((length) => lacking.filter((i) => lengthOf(i) === length))];
  const found: MoreLogsFor[] = [];
  for (const pieces of groups) {
    if (pieces.length > 0)
      found.push({
        pieces,
        sizes: yield* sizesFor(pieces, missing, sawing, taper, newProgram),
      });
  }
  return found;
}

function* sizesFor(
  pieces: readonly number[],
  missing: readonly number[],
  { pieces: all, kerf, mill, ...rest }: PieceSawing,
  taper: number,
  newProgram: NewLinearProgram,
): Generator<undefined, readonly MoreLogs[]> {
  const length = Math.max(...pieces.map((i) => all[i]?.length ?? 0));
  const wanted = pieces.map((i) => all[i] as (typeof all)[number]);
  const counts = pieces.map((i) => missing[i] as number);
  const most = counts.reduce((sum, count) => sum + count, 0);
  // What is too large for the mill is told beside the answer; else a beam that no log of the mill's holds had none.
  const { bladeAboveBed, shortestBoard, widestCut, throat, edgerKerf, waneAllowed } = mill;
  const cutting: Mill = Object.fromEntries(
    Object.entries({ bladeAboveBed, shortestBoard, widestCut, throat, edgerKerf, waneAllowed }).filter(
      ([, limit]) => limit !== undefined,
    ),
  );
  const sizes: MoreLogs[] = [];
  for (let end = SMALL_ENDS.first; end <= SMALL_ENDS.last && sizes.length < TOLD; end += SMALL_ENDS.step) {
    if (sizes.at(-1)?.count === 1) break; // thicker ones would do as well, and say nothing new
    const log = {
      smallEnd: inches(end),
      largeEnd: inches(end + taper * length),
      length: feet(length),
    };
    const source = logSource(new Array<string>(most).fill(""), log, {
      pieces: wanted,
      kerf,
      mill: cutting,
      ...rest,
    });
    const order = {
      sources: [source],
      pieces: wanted,
      counts,
      kerf,
      goal: "fewest logs",
    } as const;
    const search = chooseLogs(order, newProgram, { goodEnough: 0, turns: 2 });
    for (;;) {
      const step = search.next();
      yield undefined;
      if (!step.done) continue;
      const { taken, missing: still } = step.value;
      const misfit = whyItDoesNotFit(log, mill);
      if (still.every((count) => count === 0)) {
        // A thicker log gives whatever a thinner one does.
        const count = Math.min(taken.length, sizes.at(-1)?.count ?? Infinity);
        if (count !== sizes.at(-1)?.count) sizes.push({ log, count, ...(misfit !== undefined && { misfit }) });
      }
      break;
    }
  }
  return sizes;
}
