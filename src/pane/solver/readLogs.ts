import { Problem } from "../../core/basis/problem";
import { scalingLength } from "../../core/log/scalingLength";
import type { TableRow } from "../../workbook/plan";
import { log } from "../../workbook/tables";
import { positive, text } from "../job/cells";
import type { Job } from "../job/job";
import type { LogToSaw } from "./jobs";

export interface LogInYard {
  readonly log: LogToSaw;
  readonly sold: boolean;
}

/** The log of a row of the sheet Logs; none while a measure of it is missing or its ends are swapped. */
export function logOf(row: TableRow, scale: Job["scale"]): readonly LogInYard[] {
  const smallEnd = positive(row[log.smallEnd]);
  const second = positive(row[log.second]);
  const largeEnd = positive(row[log.largeEnd]);
  const length = positive(row[log.scalingLength]) ?? scaledLength(positive(row[log.length]), scale);
  if (smallEnd === null || largeEnd === null || !length || largeEnd < smallEnd) return [];
  const sweep = positive(row[log.sweep]);
  const sold = text(row[log.use]).toLowerCase() === "sell";
  return [
    {
      log: {
        name: text(row[log.log]),
        smallEnd,
        ...(second !== null && { second }),
        largeEnd,
        length,
        ...(sweep !== null && { sweep }),
      },
      sold,
    },
  ];
}

/** As the sheet has it, where the sheet has not calculated yet; null where a log is too short to be scaled. */
function scaledLength(length: number | null, { trim, lengthStep }: Job["scale"]): number | null {
  if (length === null) return null;
  try {
    return scalingLength(length, trim, lengthStep);
  } catch (problem) {
    if (problem instanceof Problem) return null;
    throw problem;
  }
}
