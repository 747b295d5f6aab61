import type { Estimate } from "../../core/cruise/estimate";
import type { CutListJob, LogToSaw } from "./jobs";

export interface Named {
  readonly name: string;
  readonly count: number;
}

export interface CutListResult {
  readonly kind: "cutList";
  readonly logs: readonly (LogToSaw & { readonly pieces: readonly Named[]; readonly boardFeet: number })[];
  /** Logs that are left in the yard. */
  readonly left: number;
  readonly missing: readonly Named[];
  readonly boardFeet: number;
  readonly wanted: number;
  readonly atMost: number;
  readonly wood: number;
  readonly atLeast: number;
  readonly gap: number;
  readonly goal: CutListJob["goal"];
  /** undefined while it is not known, as after a Stop. */
  readonly more: readonly MoreLogsTold[] | undefined;
}

export interface MoreLogsTold {
  readonly pieces: readonly Named[];
  readonly sizes: readonly {
    readonly smallEnd: number;
    readonly length: number;
    readonly count: number;
    readonly misfit?: string;
  }[];
}

export interface TreesResult {
  readonly kind: "trees";
  /** False where every tree was tallied: then no margin is to be told. */
  readonly sampled: boolean;
  readonly trees: Estimate;
  readonly confidence: number;
  readonly classes: readonly { readonly dbh: number; readonly takes: number; readonly standing?: Estimate }[];
  readonly standing?: Estimate;
  /** Names of pieces that no such tree gives. */
  readonly never: readonly string[];
}

/** What a plan gets out of one log, or why there is none. */
export type LogSawn = LogToSaw &
  (
    | {
        readonly pieces: number;
        readonly boardFeet: number;
        readonly value?: number;
        /** Shares of the log's wood. [%] */
        readonly lumber: number;
        readonly sawdust: number;
        readonly slab: number;
        readonly wood: number;
      }
    | { readonly why: string }
  );

export interface AllLogsResult {
  readonly kind: "allLogs";
  readonly logs: readonly LogSawn[];
  readonly pattern: string;
  /** Logs that are not planned yet, as after a Stop. */
  readonly left: number;
}

export type SolverResult = CutListResult | TreesResult | AllLogsResult;

export interface JobProgress {
  /** What is being done, and how far it is: "Round 3: logs tried". */
  readonly doing: string;
  readonly done: number;
  readonly of: number;
  /** The best so far, when there is one. */
  readonly best?: () => SolverResult;
}
