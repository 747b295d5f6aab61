import { acres, percent } from "../../core/basis/units";
import type { NewLinearProgram } from "../../core/sawing/wanted/linearProgram";
import { treesForCutList } from "../../core/value/treesForCutList";
import type { TreesJob } from "./jobs";
import type { JobProgress, TreesResult } from "./results";
import { pieceSawing } from "./runCutList";
import { sampleOf } from "./sampleOf";

/** How many standing trees a cut list takes, with its margin. */
export function* runTrees(job: TreesJob, newProgram: NewLinearProgram): Generator<JobProgress, TreesResult> {
  const { trees, confidence } = job;
  const sample = sampleOf(job);
  const search = treesForCutList(
    {
      cruise: {
        ...sample,
        plot: trees.map(({ plot }) => plot),
        dbh: trees.map(({ dbh }) => dbh),
        count: trees.map(({ count }) => count),
      },
      logs: trees.map(({ logs }) => logs),
      formClass: percent(job.formClass),
      ...(job.acres !== null && { acres: acres(job.acres), acresMargin: acres(job.acresMargin) }),
      confidence: percent(confidence),
      classWidth: job.classWidth,
      sawing: pieceSawing(job),
      counts: job.pieces.map(({ count }) => count),
    },
    newProgram,
  );
  let done = 0;
  for (;;) {
    const step = search.next();
    if (step.done) {
      const { never, ...rest } = step.value;
      return {
        kind: "trees",
        sampled: !sample.method.complete,
        ...rest,
        confidence,
        never: never.map((i) => job.pieces[i]?.name ?? ""),
      };
    }
    done += 1;
    yield { doing: "Trees tried", done, of: 0 };
  }
}
