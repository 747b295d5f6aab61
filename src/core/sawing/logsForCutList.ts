import { OutOfRange } from "../basis/problem";
import type { Source } from "../basis/source";
import { boardFeet, type BoardFeet, type Inches } from "../basis/units";
import { sawnBoardFeet, type BoardPiece } from "./boardSize";
import { HAIR } from "./fill";
import type { Mill } from "./millLimits";
import { solidVolume, type SawLog } from "./sawLog";
import { sawPlan } from "./sawPlan";
import type { SawingPattern, SawPlan } from "./sawingPattern";

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
  readonly missing: readonly { readonly name: string; readonly count: number; readonly boardFeet: BoardFeet }[];
  readonly boardFeet: BoardFeet;
  /** No choice of logs, each sawn by this pattern, gives more of the wanted pieces. */
  readonly atMost: BoardFeet;
}

/**
 * Which logs to saw for a list of wanted pieces, and what each should give.
 *
 * One log after another is taken: the one whose best plan turns the largest share of its wood into pieces that are still
 * missing; ties go to the earlier log. Where a plan would give some piece too often, the log is planned again without it
 * as well, and the more useful plan is taken. Each plan is the best for the pieces it is asked for; the choice of logs and
 * of those pieces is not proved to be, so a bound is given with it: all logs sawn for the list as if any number of each piece were wanted, or the whole
 * list if that is less.
 */
export function logsForCutList({ logs, wanted, kerf, mill, pattern }: CutListOrder): LogsForCutList {
  const left = wanted.map(({ count }) => count);
  const plans = new Map<string, SawPlan | undefined>();
  const planFor = (log: SawLog, items: readonly number[]): SawPlan | undefined => {
    const key = JSON.stringify([log, items]);
    if (!plans.has(key)) {
      const sizes = items.map((item) => (wanted[item] as WantedPiece).piece);
      plans.set(key, sizes.length === 0 ? undefined : orNone(() => sawPlan({ log, sizes, kerf, mill, pattern })));
    }
    return plans.get(key);
  };

  /** What a log should give of the missing pieces: of the best plans for all of them, for those not had too often ... */
  const bestOf = (log: SawLog): { readonly gives: readonly number[]; readonly useful: number } => {
    let items = [...left.keys()].filter((item) => (left[item] as number) > 0);
    let best = { gives: wanted.map(() => 0), useful: 0 };
    while (items.length > 0) {
      const { gives, tooOften } = countsIn(planFor(log, items), wanted, left);
      const useful = gives.reduce((sum, count, item) => sum + count * volumeOf(item), 0);
      if (useful > best.useful + HAIR) best = { gives, useful };
      if (tooOften.size === 0) break;
      items = items.filter((item) => !tooOften.has(item));
    }
    return best;
  };
  const volumeOf = (item: number) => sawnBoardFeet((wanted[item] as WantedPiece).piece);

  const demand = wanted.reduce((sum, { piece, count }) => sum + count * sawnBoardFeet(piece), 0);
  const sawnOut = logs.reduce((sum, { log }) => sum + (planFor(log, [...wanted.keys()])?.worth ?? 0), 0);
  const unused = new Set(logs.keys());
  const chosen: LogForCutList[] = [];
  while (left.some((count) => count > 0)) {
    let best: { i: number; share: number; gives: readonly number[]; useful: number } | undefined;
    for (const i of unused) {
      const { log } = logs[i] as NamedLog;
      const { gives, useful } = bestOf(log);
      const share = useful / solidVolume(log);
      if (share > (best?.share ?? 0) + HAIR) best = { i, share, gives, useful };
    }
    if (!best) break;
    const { i, gives, useful } = best;
    unused.delete(i);
    gives.forEach((count, item) => (left[item] = (left[item] as number) - count));
    chosen.push({
      log: (logs[i] as NamedLog).name,
      pieces: gives.flatMap((count, item) => (count > 0 ? [{ name: (wanted[item] as WantedPiece).name, count }] : [])),
      boardFeet: boardFeet(useful),
    });
  }

  return {
    logs: chosen,
    missing: wanted.flatMap(({ name, piece }, item) => {
      const count = left[item] as number;
      return count > 0 ? [{ name, count, boardFeet: boardFeet(count * sawnBoardFeet(piece)) }] : [];
    }),
    boardFeet: boardFeet(chosen.reduce((sum, one) => sum + one.boardFeet, 0)),
    atMost: boardFeet(Math.min(demand, sawnOut)),
  };
}

interface Counts {
  /** How many of each wanted piece a plan gives, no more than are left to find. */
  readonly gives: number[];
  /** Pieces of which it gives more than that. */
  readonly tooOften: ReadonlySet<number>;
}

function countsIn(plan: SawPlan | undefined, wanted: readonly WantedPiece[], left: readonly number[]): Counts {
  const gives = wanted.map(() => 0);
  const tooOften = new Set<number>();
  for (const { piece } of plan?.flitches.flatMap(({ boards }) => boards) ?? []) {
    const like = [...wanted.keys()].filter((item) => isLike((wanted[item] as WantedPiece).piece, piece));
    const free = like.find((item) => (gives[item] as number) < (left[item] as number));
    if (free === undefined) like.forEach((item) => tooOften.add(item));
    else gives[free] = (gives[free] as number) + 1;
  }
  return { gives, tooOften };
}

const isLike = (one: BoardPiece, other: BoardPiece) =>
  one.thickness === other.thickness && one.width === other.width && one.length === other.length;

/** A log that the mill cannot take, or that is too small for every piece, gives none. */
function orNone(plan: () => SawPlan): SawPlan | undefined {
  try {
    return plan();
  } catch (problem) {
    if (problem instanceof OutOfRange) return undefined;
    throw problem;
  }
}
