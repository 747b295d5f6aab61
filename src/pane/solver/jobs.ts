import type { Mill } from "../../core/sawing/millLimits";

/** What is worked out beside the pane, as plain data that can be sent to a worker and back. All inches, feet, acres. */
export type SolverJob = CutListJob | TreesJob | AllLogsJob;

export interface LogToSaw {
  readonly name: string;
  readonly smallEnd: number;
  /** The second reading, where the small end was read twice. */
  readonly second?: number;
  readonly largeEnd: number;
  readonly length: number;
  /** Left out of a straight log. */
  readonly sweep?: number;
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
  /** Sums over what it was read from, to see later whether that has changed. */
  readonly inputs: { readonly logs: number; readonly boards: number };
}
