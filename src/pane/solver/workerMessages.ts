import type { JobProgress, SolverResult } from "./results";

/** What the worker tells the pane. */
export type WorkerMessage =
  | ({ readonly kind: "progress"; readonly best?: SolverResult } & Omit<JobProgress, "best">)
  | { readonly kind: "done"; readonly result: SolverResult }
  | { readonly kind: "failed"; readonly sentence: string };
