import { RELEASED } from "../../core/reference/release";
import type { AllLogsContent } from "../../workbook/sheets/allLogs";
import type { Job } from "../job/job";
import { yieldFinding } from "../charts/yieldChart";
import { allLogsFigures, isPlanned } from "./allLogsFigures";
import type { AllLogsJob } from "./jobs";
import type { AllLogsResult } from "./results";
import type { Solved } from "./solving";

/** What the sheet All logs holds of an answer. */
export function allLogsContent({ job, result, stopped }: Solved, cruise: Job): AllLogsContent {
  const { kerf, logs: asked, sizes, inputs } = job as AllLogsJob;
  const { logs, pattern, left } = result as AllLogsResult;
  const figures = allLogsFigures(result as AllLogsResult, cruise);
  return {
    stamp:
      `Values, not formulas: worked out in the pane from ${asked.length} logs and ${sizes.length} board sizes, ` +
      `${pattern.toLowerCase()} sawing, kerf ${kerf} in, version of ${RELEASED.date}.${stopped ? ` Stopped, ${left} logs left.` : ""}`,
    finding: yieldFinding(figures),
    inputs: { kerf, ...inputs },
    parts: [
      ["Boards", figures.boards, null],
      ["Sawdust, as wood", figures.sawdust, null],
      ["Slabs and edgings, as wood", figures.slabs, null],
      ["All the wood", figures.wood, null],
      ...figures.rules.map(({ title, scale, overrun }) => [title, scale, overrun]),
    ],
    logs: logs.map((log) =>
      isPlanned(log)
        ? [log.name, log.smallEnd, log.length, log.pieces, log.boardFeet, log.lumber, log.sawdust, log.slab, null]
        : [log.name, log.smallEnd, log.length, null, null, null, null, null, log.why],
    ),
  };
}
