import { formats } from "../formats";
import type { CellValue, SheetPlan } from "../plan";
import { BOARD_SIZES, LOGS, named } from "../tables";
import { addsUpTo } from "./planInputs";
import { cautionLine, down, onePageWide, sheetPlan } from "./sheetParts";
import { valueBlocks, type ValueColumn } from "./valueBlocks";

export const ALL_LOGS_SHEET = "All logs";

/** Plans of all logs that were worked out, as plain rows. */
export interface AllLogsContent {
  readonly stamp: string;
  readonly finding: string;
  /** Inputs then, to be held against those of now. */
  readonly inputs: { readonly kerf: number; readonly logs: number; readonly boards: number };
  /** What becomes of the wood, then the rules: name, board feet, overrun. */
  readonly parts: readonly (readonly CellValue[])[];
  readonly logs: readonly (readonly CellValue[])[];
}

const { general, whole, tenth, volume } = formats;

const partColumns: readonly ValueColumn[] = [
  { heading: "Boards, waste, and the rules", format: general },
  { heading: "Board feet", format: volume },
  { heading: "Overrun pct", format: whole },
];
const logColumns: readonly ValueColumn[] = [
  { heading: "Log", format: general, names: true },
  { heading: "Small end in", format: tenth },
  { heading: "Length ft", format: tenth },
  { heading: "Boards", format: whole },
  { heading: "Board feet", format: tenth },
  { heading: "Lumber pct", format: tenth },
  { heading: "Sawdust pct", format: tenth },
  { heading: "Slab pct", format: tenth },
  { heading: "Why none", format: general },
];
const PARTS_AT = 9;

/** The yield of all logs beside their scale by each rule, then log by log; values with their inputs' stamp. */
export function allLogsSheet({ stamp, finding, inputs, parts, logs }: AllLogsContent): SheetPlan {
  const listAt = PARTS_AT + parts.length + 3;
  return sheetPlan({
    name: ALL_LOGS_SHEET,
    sheetClass: "presentation",
    landscape: true,
    frozenRows: 2,
    widths: [36, 16, 14, 12, 14, 14, 16, 12, 50],
    print: onePageWide(`A1:I${listAt + 1 + logs.length}`),
    blocks: [
      down("A1", "Title", ["All logs"]),
      down("A2", "Note", [stamp, cautionLine("Sawing"), cautionLine("Log weight"), cautionLine("Ungraded lumber")]),
      down("A6", "Computed", [finding]),
      down("A7", "Attention", [{ formula: outOfDate(inputs) }]),
      ...valueBlocks(`A${PARTS_AT}`, "What becomes of the wood, and the scale of each rule", partColumns, parts),
      ...valueBlocks(`A${listAt}`, "Log by log", logColumns, logs),
    ],
  });
}

function outOfDate({ kerf, logs, boards }: AllLogsContent["inputs"]): string {
  const same = [`${named.kerf}=${kerf}`, addsUpTo(LOGS, logs), addsUpTo(BOARD_SIZES, boards)];
  return `=IFERROR(IF(AND(${same.join(",")}),"","Check: the logs, the boards or the kerf have changed since. Plan all logs again in the pane."),"")`;
}
