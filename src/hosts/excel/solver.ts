import loadHighs from "highs";
import { Problem } from "../../core/basis/problem";
import { highsProgram } from "../../pane/solver/highsProgram";
import type { SolverJob } from "../../pane/solver/jobs";
import { runJob } from "../../pane/solver/runJob";
import type { WorkerMessage } from "../../pane/solver/workerMessages";

/** How often the pane hears of progress. [ms] */
const TOLD_EVERY = 150;

/** The worker in which long work is done, so that the pane and the spreadsheet stay free; one job, then it ends. */
addEventListener("message", (event: MessageEvent<SolverJob>) => {
  void work(event.data).then(tell, (problem: unknown) => {
    const why = problem instanceof Error ? problem.message : String(problem);
    const sentence = problem instanceof Problem ? why : `The plan could not be worked out (${why}). Try again.`;
    tell({ kind: "failed", sentence });
  });
});

const tell = (message: WorkerMessage) => postMessage(message);

async function work(job: SolverJob): Promise<WorkerMessage> {
  const steps = await runJob(job, async () => highsProgram(await loadHighs()));
  let told = -Infinity;
  let toldBest = "";
  for (;;) {
    const step = steps.next();
    if (step.done) return { kind: "done", result: step.value };
    const now = performance.now();
    if (now - told < TOLD_EVERY) continue;
    told = now;
    const { best: bestSoFar, ...progress } = step.value;
    const best = bestSoFar?.();
    const key = JSON.stringify(best);
    tell({ kind: "progress", ...progress, ...(best && key !== toldBest && { best }) });
    toldBest = key;
  }
}
