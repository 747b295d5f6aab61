import type { HeightMeasured } from "../../core/cruise/checkHeight";
import type { ScaleConventions } from "../../workbook/settings";
import type { BoardLine } from "../boards/boardLine";
import type { LogLine } from "../logs/logLine";
import type { KnownSpecies, TallyTree } from "../tally/tallyTree";

/** A tree as it stands in the workbook. */
export interface SavedTree {
  /** Row of the Trees table, counted from 0. */
  readonly row: number;
  readonly plot: string;
  readonly tree: TallyTree;
  readonly volume: number | null;
  /** By total height. [ft3] */
  readonly wood: number | null;
  readonly check: string;
  readonly accepted: string;
  /** Marked to stay, so that it is no part of the harvest. */
  readonly stays?: boolean;
}

export interface SavedPlot {
  readonly row: number;
  /** Its number, as text; written back as it stood. */
  readonly name: string;
  readonly value: string | number;
  /** Marked as visited, or as having no trees. */
  readonly visited: boolean;
  readonly empty: boolean;
  /** Its center lies outside the tract, or trees were only counted there: it is no plot of the means. */
  readonly left?: boolean;
  /** Its own basal area factor or acres, a sweep reckoned in, as the sheet has it; null: that of Setup. */
  readonly size?: number | null;
  readonly check: string;
  readonly accepted: string;
}

export interface SavedLog {
  readonly row: number;
  /** Its number, as text. */
  readonly name: string;
  readonly log: LogLine;
  /** Second reading of the small end; the box leaves it as it is. [in] */
  readonly second: number | null;
  readonly gross: number | null;
  readonly net: number | null;
  readonly lumber: number | null;
  readonly check: string;
}

export interface SavedBoard {
  readonly row: number;
  /** The log that it came from; "" when that is not known. */
  readonly log: string;
  readonly board: BoardLine;
  readonly check: string;
}

export interface SavedPrice {
  readonly row: number;
  readonly product: string;
  readonly check: string;
}

/** The cruise that the workbook holds, as the pane needs it. */
export interface Job {
  readonly stand: string;
  readonly acres: number | null;
  readonly acresMargin: number;
  readonly method: string;
  /** Basal area factor [ft2/ac] or plot size [ac]. */
  readonly size: number;
  readonly confidence: number;
  readonly target: number;
  /** Of the standing trees. */
  readonly rule: string;
  /** How the buyer scales the logs. */
  readonly scale: ScaleConventions;
  readonly formClass: number;
  /** Which height of the trees is measured. */
  readonly heightMeasured: HeightMeasured;
  readonly minDbh: number;
  readonly maxDbh: number;
  readonly invented: boolean;
  readonly species: readonly KnownSpecies[];
  readonly trees: readonly SavedTree[];
  readonly plots: readonly SavedPlot[];
  readonly logs: readonly SavedLog[];
  readonly boards: readonly SavedBoard[];
  readonly prices: readonly SavedPrice[];
}

/** What a number behind the DBH means at the tally box when it does not say so itself. */
export const heightIs = ({ heightMeasured: { logs } }: Job): "logs" | "feet" => (logs ? "logs" : "feet");

export const treesOn = (job: Job, plot: string) => job.trees.filter((one) => samePlot(one.plot, plot));

/** Plots that count in the means, by the rule of the workbook: visited, marked as empty, or with trees on them. */
export function countedPlots(job: Job): readonly SavedPlot[] {
  const withTrees = new Set(job.trees.map(({ plot }) => bare(plot)));
  return job.plots.filter(({ visited, left, name }) => !left && (visited || withTrees.has(bare(name))));
}

/**
 * The point to tally next: the one that was begun last and not finished, or else the first without trees behind a
 * given one, from the top again when there is none.
 */
export function nextPoint(job: Job, after = ""): string | undefined {
  const counted = countedPlots(job);
  const begun = counted.at(-1);
  if (after === "" && begun && !begun.visited) return begun.name;
  const open = job.plots.filter((plot) => !plot.left && !counted.includes(plot) && !samePlot(plot.name, after));
  const at = job.plots.findIndex(({ name }) => samePlot(name, after));
  return (open.find((plot) => job.plots.indexOf(plot) > at) ?? open[0])?.name;
}

export const samePlot = (one: string, other: string) => bare(one) === bare(other);

const bare = (name: string) => name.trim().toLowerCase();
