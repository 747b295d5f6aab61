import type { NewLinearProgram } from "../../core/sawing/wanted/linearProgram";
import type { SolverJob } from "./jobs";
import type { JobProgress, SolverResult } from "./results";
import { runAllLogs } from "./runAllLogs";
import { runCutList } from "./runCutList";
import { runTrees } from "./runTrees";

/** Works a job out step by step; the caller may stop between any two. */
export function runJob(
  job: SolverJob,
  newProgram: () => Promise<NewLinearProgram>,
): Promise<Generator<JobProgress, SolverResult>> {
  switch (job.kind) {
    case "cutList":
      return newProgram().then((program) => runCutList(job, program));
    case "trees":
      return newProgram().then((program) => runTrees(job, program));
    case "allLogs":
      return Promise.resolve(runAllLogs(job));
  }
}
