import type { SolverJob } from "./jobs";
import type { SolverResult } from "./results";

type Kind = SolverJob["kind"];

/** What is being worked out beside the pane. */
export interface Solving {
  readonly kind: Kind;
  readonly doing: string;
  readonly done: number;
  /** 0 where it is not known how many there will be. */
  readonly of: number;
}

/** An answer, what it was worked out from, and whether the search was stopped before its end. */
export interface Solved {
  readonly job: SolverJob;
  readonly result: SolverResult;
  readonly stopped: boolean;
}

export type SolvedJobs = Readonly<Partial<Record<Kind, Solved>>>;
