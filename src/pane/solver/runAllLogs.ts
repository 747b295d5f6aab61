import { chosen } from "../../core/basis/choices";
import { Problem } from "../../core/basis/problem";
import { dollars, dollarsPerMbf, feet, inches } from "../../core/basis/units";
import type { BoardSize } from "../../core/sawing/boardSize";
import { tapers } from "../../core/sawing/lyingLog";
import { sawingPatterns } from "../../core/sawing/patterns";
import { COMMON_SHINGLE, productOf } from "../../core/sawing/resawn";
import { solidVolume } from "../../core/sawing/sawLog";
import { sawPlan } from "../../core/sawing/sawPlan";
import { sawYield } from "../../core/sawing/sawYield";
import type { AllLogsJob, LogToSaw, SizeWanted } from "./jobs";
import type { AllLogsResult, JobProgress, LogSawn } from "./results";
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

function sawnOrWhy(log: LogToSaw, { sizes, pattern, taper, kerf, mill }: AllLogsJob) {
  try {
    const plan = sawPlan({
      log: sawLogOf(log),
      sizes: sizes.map((size) => boardSize(size, kerf)),
      kerf: inches(kerf),
      pattern: chosen("Pattern", pattern, sawingPatterns),
      taper: chosen("Taper", taper, tapers),
      mill,
    });
    return { ...sawYield(plan), wood: solidVolume(sawLogOf(log)) };
  } catch (problem) {
    if (problem instanceof Problem) return { why: problem.message };
    throw problem;
  }
}

/** As the sheet Sawing reads the same line: the mill's own saw resaws, and a length of shingles is that of each. */
function boardSize({ thickness, width, length, product, each, price }: SizeWanted, kerf: number): BoardSize {
  const { id } = productOf(product);
  return {
    thickness: inches(thickness),
    width: inches(width),
    ...(length !== undefined && id !== "shingles" && { length: feet(length) }),
    ...(price !== undefined && { price: dollarsPerMbf(price) }),
    ...(each !== undefined && { pricePerPiece: dollars(each) }),
    ...(id !== "board" && { resawing: { product: id, kerf, crossKerf: kerf, length: length ?? COMMON_SHINGLE } }),
  };
}
