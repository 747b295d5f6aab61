import type { Mill } from "../../core/sawing/millLimits";
import type { Estimate } from "../../core/cruise/estimate";

/** What is worked out beside the pane, as plain data that can be sent to a worker and back. All inches, feet, acres. */
export type SolverJob = CutListJob | TreesJob | AllLogsJob;

export interface LogToSaw {
  readonly name: string;
  readonly smallEnd: number;
  /** The second reading, where the small end was read twice. */
  readonly second?: number;
  readonly largeEnd: number;
  readonly length: number;
}

export interface PieceWanted {
  readonly name: string;
  readonly thickness: number;
  readonly width: number;
  readonly length: number;
  /** With the spare ones. */
  readonly count: number;
}

interface PieceJob {
  readonly pieces: readonly PieceWanted[];
  readonly kerf: number;
  readonly mill: Mill;
}

/** Which logs of the yard give the pieces. */
export interface CutListJob extends PieceJob {
  readonly kind: "cutList";
  readonly logs: readonly LogToSaw[];
  readonly goal: "least wood" | "fewest logs";
}

/** How many standing trees the pieces take. */
export interface TreesJob extends PieceJob {
  readonly kind: "trees";
  readonly method: string;
  readonly sample: TreesSample;
  readonly trees: readonly TreeToSaw[];
  readonly formClass: number;
  readonly acres: number | null;
  readonly acresMargin: number;
  readonly confidence: number;
  readonly classWidth: number;
}

/** How the plots that count were laid out and drawn. */
export interface TreesSample {
  /** Basal area factor or acres of every plot. */
  readonly sizes: readonly number[];
  /** Nested plots; where there are any, every plot has them. */
  readonly nested: readonly { readonly leastDbh: number; readonly size: number }[];
  readonly strata: readonly { readonly name: string; readonly acres: number }[];
  /** The stratum of every plot, and its group; blank where there is none. */
  readonly stratum: readonly string[];
  readonly cluster: readonly string[];
  /** How many fixed plots would cover the tract. */
  readonly population: number | null;
}

export interface TreeToSaw {
  /** Counted from 0 among the plots that count. */
  readonly plot: number;
  readonly dbh: number;
  readonly logs: number;
  readonly count: number;
}

/** A line of the boards that are wanted; siding and shingles by the size of their blank. */
export interface SizeWanted {
  readonly thickness: number;
  readonly width: number;
  readonly length?: number;
  readonly product: string;
  readonly each?: number;
  readonly price?: number;
}

/** The best plan of every log for the boards that are wanted of any. */
export interface AllLogsJob {
  readonly kind: "allLogs";
  readonly logs: readonly LogToSaw[];
  readonly sizes: readonly SizeWanted[];
  readonly pattern: string;
  readonly taper: string;
  readonly kerf: number;
  readonly mill: Mill;
}

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
