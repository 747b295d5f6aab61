import { column } from "../formula";
import { board, BOARD_SIZES, CUT_LIST, LOGS, log, wanted } from "../tables";

/** Of each table the measures that a plan of many logs hangs on. */
export const PLAN_INPUTS = {
  [LOGS]: [log.smallEnd, log.second, log.largeEnd, log.length, log.sweep],
  [BOARD_SIZES]: [board.finished, board.sawn, board.width, board.length, board.each, board.price],
  [CUT_LIST]: [wanted.thickness, wanted.width, wanted.length, wanted.count],
} as const;

export type PlanTable = keyof typeof PLAN_INPUTS;

/** A condition that holds while the measures of a table add up to what they did when the plan was made. */
export const addsUpTo = (table: PlanTable, then: number): string =>
  `ABS(SUM(${PLAN_INPUTS[table].map((heading) => column(table, heading)).join(",")})-${then})<0.001`;
