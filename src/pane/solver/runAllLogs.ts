import { chosen } from "../../core/basis/choices";
import { Problem } from "../../core/basis/problem";
import { dollarsPerMbf, inches } from "../../core/basis/units";
import { sawingPatterns } from "../../core/sawing/patterns";
import { solidVolume } from "../../core/sawing/sawLog";
import { sawPlan } from "../../core/sawing/sawPlan";
import { sawYield } from "../../core/sawing/sawYield";
import type { AllLogsJob, AllLogsResult, JobProgress, LogSawn, LogToSaw } from "./jobs";
import { sawLogOf } from "./runCutList";

/** Plans the sawing of one log after another. */
export function* runAllLogs(job: AllLogsJob): Generator<JobProgress, AllLogsResult> {
  const logs: LogSawn[] = [];
  const result = (): AllLogsResult => ({
    kind: "allLogs",
    logs: [...logs],
    pattern: job.pattern,
    left: job.logs.length - logs.length,
  });
  for (const log of job.logs) {
    logs.push({ ...log, ...sawnOrWhy(log, job) });
    yield { doing: "Logs planned", done: logs.length, of: job.logs.length, best: result };
  }
  return result();
}

function sawnOrWhy(log: LogToSaw, { sizes, pattern, kerf, mill }: AllLogsJob) {
  try {
    const plan = sawPlan({
      log: sawLogOf(log),
      sizes: sizes.map(({ thickness, width, price }) => ({
        thickness: inches(thickness),
        width: inches(width),
        ...(price !== undefined && { price: dollarsPerMbf(price) }),
      })),
      kerf: inches(kerf),
      pattern: chosen("Pattern", pattern, sawingPatterns),
      mill,
    });
    return { ...sawYield(plan), wood: solidVolume(sawLogOf(log)) };
  } catch (problem) {
    if (problem instanceof Problem) return { why: problem.message };
    throw problem;
  }
}
