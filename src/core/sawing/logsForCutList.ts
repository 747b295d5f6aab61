import type { Source } from "../basis/source";
import { boardFeet, type BoardFeet, type Inches } from "../basis/units";
import { sawnBoardFeet, type BoardPiece } from "./boardSize";
import { HAIR } from "./filling/hair";
import type { Mill } from "./millLimits";
import { solidVolume, type SawLog } from "./sawLog";
import type { SawingPattern } from "./sawingPattern";
import { allot } from "./wanted/allot";
import { cutDowns } from "./wanted/cutDown";
import { sawnInto } from "./wanted/logSource";
import type { SourcePlan } from "./wanted/woodSource";

export const sources: readonly Source[] = [
  {
    author: "Woodlot Reckoner",
    year: "2026",
    title: "Logs chosen one by one for what is still missing, with a bound on what any choice could give",
    where: "core/sawing/logsForCutList",
    standing: "choice of ours",
  },
];

/** A piece that is needed, and how often. */
export interface WantedPiece {
  readonly name: string;
  readonly piece: BoardPiece;
  readonly count: number;
}

export interface NamedLog {
  readonly name: string;
  readonly log: SawLog;
}

export interface CutListOrder {
  readonly logs: readonly NamedLog[];
  readonly wanted: readonly WantedPiece[];
  readonly kerf: Inches;
  readonly mill: Mill;
  readonly pattern: SawingPattern;
}

export interface LogForCutList {
  readonly log: string;
  /** The wanted pieces that it should give; more of them than are missing are not counted. */
  readonly pieces: readonly { readonly name: string; readonly count: number }[];
  readonly boardFeet: BoardFeet;
}

export interface LogsForCutList {
  readonly logs: readonly LogForCutList[];
  readonly missing: readonly {
    readonly name: string;
    readonly count: number;
    readonly boardFeet: BoardFeet;
  }[];
  readonly boardFeet: BoardFeet;
  /** No choice of logs, each sawn by this pattern, gives more of the wanted pieces. */
  readonly atMost: BoardFeet;
}

/**
 * Which logs to saw for a list of wanted pieces, and what each should give.
 *
 * One log after another is taken: the one whose best plan turns the largest share of its wood into pieces that are still
 * missing; ties go to the earlier log. A board may be cut to several pieces, and one that is had too often to smaller
 * ones. Where a plan would give some piece too often, the log is planned again without it as well, and the more useful
 * plan is taken. Each plan is the best for the pieces it is asked for; the choice of logs and of those pieces is not
 * proved to be, so a bound is given with it: all logs sawn for the list as if any number of each piece were wanted, or
 * the whole list if that is less. Column generation, in wanted/chooseLogs, comes nearer and has a nearer bound.
 */
export function logsForCutList({ logs, wanted, kerf, mill, pattern }: CutListOrder): LogsForCutList {
  const pieces = wanted.map(({ piece }) => piece);
  const volumes = pieces.map(sawnBoardFeet);
  const cuts = cutDowns(pieces, kerf);
  let left: readonly number[] = wanted.map(({ count }) => count);
  const plans = new Map<string, SourcePlan>();
  const planFor = (log: SawLog, items: readonly number[]): SourcePlan => {
    const key = JSON.stringify([log, items]);
    const worths = volumes.map((volume, i) => (items.includes(i) ? volume : 0));
    const plan = plans.get(key) ?? sawnInto(log, worths, { pieces, kerf, mill, pattern });
    plans.set(key, plan);
    return plan;
  };

  /** What a log should give of the missing pieces: of the best plans for all of them, for those not had too often ... */
  const bestOf = (log: SawLog): Useful => {
    let items = [...left.keys()].filter((item) => (left[item] as number) > 0);
    let best: Useful = { gives: pieces.map(() => 0), missing: left, useful: 0 };
    while (items.length > 0) {
      const plan = planFor(log, items);
      const { gives, missing } = allot([{ source: 0, plan }], left, pieces, cuts);
      const given = gives[0] as readonly number[];
      const useful = given.reduce((sum, count, item) => sum + count * (volumes[item] as number), 0);
      if (useful > best.useful + HAIR) best = { gives: given, missing, useful };
      const fewer = items.filter((item) => (plan.gives[item] as number) <= (left[item] as number));
      if (fewer.length === items.length) break;
      items = fewer;
    }
    return best;
  };

  const demand = volumes.reduce((sum, volume, item) => sum + volume * (left[item] as number), 0);
  const sawnOut = logs.reduce((sum, { log }) => sum + planFor(log, [...wanted.keys()]).worth, 0);
  const unused = new Set(logs.keys());
  const chosen: LogForCutList[] = [];
  while (left.some((count) => count > 0)) {
    let best: (Useful & { readonly i: number; readonly share: number }) | undefined;
    for (const i of unused) {
      const { log } = logs[i] as NamedLog;
      const found = bestOf(log);
      const share = found.useful / solidVolume(log);
      if (share > (best?.share ?? 0) + HAIR) best = { i, share, ...found };
    }
    if (!best) break;
    const { i, gives, missing, useful } = best;
    unused.delete(i);
    left = missing;
    chosen.push({
      log: (logs[i] as NamedLog).name,
      pieces: gives.flatMap((count, item) => (count > 0 ? [{ name: (wanted[item] as WantedPiece).name, count }] : [])),
      boardFeet: boardFeet(useful),
    });
  }

  return {
    logs: chosen,
    missing: wanted.flatMap(({ name }, item) => {
      const count = left[item] as number;
      return count > 0 ? [{ name, count, boardFeet: boardFeet(count * (volumes[item] as number)) }] : [];
    }),
    boardFeet: boardFeet(chosen.reduce((sum, one) => sum + one.boardFeet, 0)),
    atMost: boardFeet(Math.min(demand, sawnOut)),
  };
}

interface Useful {
  /** Of each piece, how many that are still missing. */
  readonly gives: readonly number[];
  /** What is missing then. */
  readonly missing: readonly number[];
  readonly useful: number;
}
