import { overrun } from "../../core/log/overrun";
import { boardFeet } from "../../core/basis/units";
import type { Job } from "../job/job";
import { totalsByRule } from "../logs/scaleFigures";
import type { AllLogsResult, LogSawn } from "./results";

export interface RuleOverrun {
  readonly title: string;
  /** Net board feet of the planned logs. */
  readonly scale: number;
  /** Boards over the scale. [%] */
  readonly overrun: number;
}

/** What becomes of the wood of the planned logs, beside their scale by each rule. All in board feet. */
export interface AllLogsFigures {
  readonly planned: number;
  readonly boards: number;
  readonly sawdust: number;
  readonly slabs: number;
  readonly wood: number;
  readonly rules: readonly RuleOverrun[];
  /** The rule of the scale sheet. */
  readonly buyers: string;
}

const BOARD_FEET_PER_CUBIC_FOOT = 12;

type Planned = Extract<LogSawn, { readonly pieces: number }>;
export const isPlanned = (log: LogSawn): log is Planned => "pieces" in log;

/** Overrun is reckoned from the plans and the logs' own scale; a rule without a value for some log has none. */
export function allLogsFigures({ logs }: AllLogsResult, job: Job): AllLogsFigures {
  const planned = logs.filter(isPlanned);
  const sum = (of: (log: Planned) => number) => planned.reduce((total, log) => total + of(log), 0);
  const inBoardFeet = (share: (log: Planned) => number) =>
    sum((log) => (log.wood * BOARD_FEET_PER_CUBIC_FOOT * share(log)) / 100);
  const boards = sum((log) => log.boardFeet);
  const names = new Set(planned.map(({ name }) => name));
  const measured = job.logs.filter(({ name }) => names.has(name)).map(({ log, second }) => ({ ...log, second }));
  return {
    planned: planned.length,
    boards,
    sawdust: inBoardFeet((log) => log.sawdust),
    slabs: inBoardFeet((log) => log.slab),
    wood: sum((log) => log.wood * BOARD_FEET_PER_CUBIC_FOOT),
    buyers: job.scale.rule,
    rules: totalsByRule(measured, job.scale)
      .filter(({ without, net }) => without === 0 && net > 0)
      .map(({ title, net }) => ({ title, scale: net, overrun: overrun(boardFeet(boards), boardFeet(net)) })),
  };
}
