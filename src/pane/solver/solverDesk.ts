import type { PaneState } from "../paneState";
import type { Store } from "../store";
import type { SolverJob } from "./jobs";
import type { SolverResult } from "./results";
import type { WorkerMessage } from "./workerMessages";

export interface SolverDesk {
  start(job: SolverJob): void;
  /** Ends the work and keeps the best that was found. */
  stop(): void;
  /** The best that the running work has found; undefined when it has none, or nothing runs. */
  best(): SolverResult | undefined;
}

/** Hands long work to a worker, shows how far it is, and keeps its answer; one job at a time. */
export function createSolverDesk(store: Store<PaneState>, newWorker: (() => Worker) | undefined): SolverDesk {
  let worker: Worker | undefined;
  let running: { readonly job: SolverJob; best?: SolverResult } | undefined;

  const end = (result: SolverResult | undefined, stopped: boolean) => {
    worker?.terminate();
    worker = undefined;
    const job = running?.job;
    running = undefined;
    store.set({ solving: undefined });
    if (job && result) {
      store.set({ solved: { ...store.get().solved, [job.kind]: { job, result, stopped } } });
      store.set({ said: stopped ? "Stopped. The best so far is kept." : "Done." });
    }
  };
  const fail = (sentence: string) => {
    end(undefined, false);
    store.set({ problem: sentence });
  };
  const hear = (message: WorkerMessage) => {
    switch (message.kind) {
      case "progress": {
        if (!running) return;
        const { doing, done, of, best } = message;
        if (best) running.best = best;
        store.set({ solving: { kind: running.job.kind, doing, done, of } });
        return;
      }
      case "done":
        return end(message.result, false);
      case "failed":
        return fail(message.sentence);
    }
  };

  return {
    start(job) {
      end(undefined, true);
      if (!newWorker) return fail("Long work cannot be done here: this page has no worker for it.");
      store.set({ problem: "", said: "", solving: { kind: job.kind, doing: "Starting", done: 0, of: 0 } });
      running = { job };
      worker = newWorker();
      worker.onmessage = (event: MessageEvent<WorkerMessage>) => hear(event.data);
      worker.onerror = () => fail("The planner could not be loaded. Check the connection, then try again.");
      worker.postMessage(job);
    },
    stop: () => end(running?.best, true),
    best: () => running?.best,
  };
}
