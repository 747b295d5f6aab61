import { nothing } from "lit";
import { message } from "../components/message";
import type { SolverJob } from "../solver/jobs";
import type { Solved } from "../solver/solving";

/** Says when the workbook is no longer what an answer was worked out from. */
export const staleNote = ({ job }: Solved, now: SolverJob | string) =>
  JSON.stringify(job) === JSON.stringify(now)
    ? nothing
    : message({
        kind: "warning",
        text: "The workbook has changed since. This answer is of before: work it out again.",
      });
