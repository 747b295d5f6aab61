import { figure, withMargin } from "../figures";
import type { ViewName } from "../views/viewNames";
import { findings } from "./findings";
import { countedPlots, nextPoint, type Job } from "./job";
import type { Comparison } from "./readComparison";
import { measure, type StandAnswers } from "./readStand";

/** A step of the job and how far it is. */
export interface Step {
  readonly title: string;
  readonly state: string;
  readonly done: boolean;
  readonly view: ViewName;
}

export interface Road {
  readonly steps: readonly Step[];
  readonly next: { readonly says: string; readonly label: string; readonly view: ViewName };
}

export function roadOf(job: Job | "none", stand: StandAnswers | undefined, comparison: Comparison | undefined): Road {
  if (job === "none") return { steps: notStarted, next: planFirst };
  const taken = countedPlots(job).length;
  const all = job.plots.filter(({ left }) => !left).length;
  const open = findings(job).filter(({ accepted }) => accepted === "").length;
  const volume = stand && measure(stand.summary, "Volume");
  const ways = comparison?.ways.length ?? 0;
  const steps: readonly Step[] = [
    { title: "Plan", state: planned(job), done: all > 0, view: "plan" },
    {
      title: "Tally",
      state: `${taken} of ${all} points, ${trees(job)}`,
      done: all > 0 && taken === all,
      view: "tally",
    },
    {
      title: "Check",
      state: open > 0 ? `${open} to look at` : "nothing to look at",
      done: open === 0 && taken > 0,
      view: "check",
    },
    {
      title: "Stand",
      state: volume
        ? `${withMargin(volume)} bf per acre`
        : open > 0
          ? "mend the odd entries first"
          : "needs two points with trees",
      done: Boolean(volume?.margin) && taken === all,
      view: "stand",
    },
    { title: "Cut", state: cut(job), done: job.trees.some(({ stays }) => stays), view: "cut" },
    { title: "Scale logs", state: scaled(job), done: job.logs.length > 0, view: "logs" },
    { title: "Boards", state: sawn(job), done: job.boards.length > 0, view: "boards" },
    { title: "Compare", state: ways > 0 ? `${ways} ways` : "add prices", done: ways > 0, view: "compare" },
    { title: "Share", state: "make a copy without formulas", done: false, view: "share" },
  ];
  return { steps, next: nextOf(job, taken, all, open) };
}

function nextOf(job: Job, taken: number, all: number, open: number): Road["next"] {
  if (all === 0) return planFirst;
  const point = nextPoint(job);
  if (point)
    return { says: `enter point ${point}`, label: taken === 0 ? "Start the tally" : "Continue", view: "tally" };
  if (open > 0)
    return { says: `look at ${open === 1 ? "one odd entry" : `${open} odd entries`}`, label: "Check", view: "check" };
  return { says: "see what the stand holds", label: "Stand", view: "stand" };
}

const planFirst = { says: "plan how many points to take", label: "Plan the cruise", view: "plan" } as const;

const planned = ({ plots, method, size }: Job) =>
  `${plots.length} points, ${method === "Fixed" ? `plots of ${size} acre` : `BAF ${size}`}`;

const trees = (job: Job) => {
  const count = job.trees.reduce((sum, { tree }) => sum + tree.count, 0);
  return count === 1 ? "1 tree" : `${figure(count)} trees`;
};

/** A cut begins with the trees that stay: as long as none is marked, all of them would go. */
function cut({ trees }: Job): string {
  const stay = trees.filter(({ stays }) => stays).length;
  if (stay === 0) return "not started";
  return `${figure(stay)} tally ${stay === 1 ? "row stays" : "rows stay"}`;
}

const scaled = ({ logs, scale }: Job) => {
  const net = logs.reduce((sum, one) => sum + (one.net ?? 0), 0);
  if (logs.length === 0) return "no logs yet";
  return `${logs.length} ${logs.length === 1 ? "log" : "logs"}${net > 0 ? `, ${figure(net)} bf by ${scale.rule}` : ""}`;
};

function sawn({ boards }: Job): string {
  if (boards.length === 0) return "none tallied";
  const pieces = boards.reduce((sum, { board }) => sum + board.pieces, 0);
  return `${figure(pieces)} ${pieces === 1 ? "board" : "boards"}`;
}

const notStarted: readonly Step[] = [
  { title: "Plan", state: "not started", done: false, view: "plan" },
  { title: "Tally", state: "type it, or paste it", done: false, view: "tally" },
  { title: "Check", state: "not started", done: false, view: "check" },
  { title: "Stand", state: "not started", done: false, view: "stand" },
  { title: "Cut", state: "not started", done: false, view: "cut" },
  { title: "Scale logs", state: "not started", done: false, view: "logs" },
  { title: "Boards", state: "not started", done: false, view: "boards" },
  { title: "Compare", state: "not started", done: false, view: "compare" },
  { title: "Share", state: "not started", done: false, view: "share" },
];
