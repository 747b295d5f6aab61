import { formats } from "../formats";
import type { BlockPlan, CellValue, SheetPlan } from "../plan";
import { CUT_LIST, LOGS, named } from "../tables";
import { addsUpTo } from "./planInputs";
import { cautionLine, down, heading, onePageWide, sheetPlan } from "./sheetParts";
import { valueBlocks, type ValueColumn } from "./valueBlocks";

export const CUT_PLAN_SHEET = "Cut plan";

/** A plan that was found, as plain rows; the sheet states no formulas but the one that tells when it is out of date. */
export interface CutPlanContent {
  /** What was found, in sentences. */
  readonly findings: readonly string[];
  /** What it was worked out from. */
  readonly stamp: readonly string[];
  /** Sums of the inputs then, to be held against those of now. */
  readonly inputs: {
    readonly pieces: number;
    readonly spares: number;
    readonly kerf: number;
    readonly logs: number;
  };
  readonly logs: readonly (readonly CellValue[])[];
  readonly missing: readonly (readonly CellValue[])[];
  readonly more: readonly string[];
  readonly trees: readonly (readonly CellValue[])[];
}

const { general, tenth, whole, volume } = formats;

const logColumns: readonly ValueColumn[] = [
  { heading: "Log", format: general, names: true },
  { heading: "Small end in", format: tenth },
  { heading: "Large end in", format: tenth },
  { heading: "Length ft", format: tenth },
  { heading: "Pieces", format: general },
  { heading: "Board feet", format: tenth },
];
const missingColumns: readonly ValueColumn[] = [
  { heading: "Piece", format: general },
  { heading: "Count", format: whole },
];
const treeColumns: readonly ValueColumn[] = [
  { heading: "DBH class in", format: general, names: true },
  { heading: "The list takes", format: tenth },
  { heading: "Standing", format: volume },
  { heading: "Margin +/-", format: volume },
];

/** The plan as values, with their inputs' stamp. */
export function cutPlanSheet(plan: CutPlanContent): SheetPlan {
  const { findings, stamp, logs, missing, more, trees } = plan;
  const blocks: BlockPlan[] = [
    down("A1", "Title", ["Cut plan"]),
    down("A2", "Note", [...stamp, cautionLine("Ungraded lumber"), cautionLine("Sawing"), cautionLine("Log weight")]),
    down(`A${stamp.length + 5}`, "Attention", [{ formula: outOfDate(plan) }]),
  ];
  let row = stamp.length + 7;
  const add = (parts: readonly BlockPlan[], rows: number) => {
    blocks.push(...parts);
    row += rows;
  };
  const list = (title: string, columns: readonly ValueColumn[], rows: readonly (readonly CellValue[])[]) => {
    if (rows.length > 0) add(valueBlocks(`A${row}`, title, columns, rows, logColumns.length), rows.length + 3);
  };
  add([down(`A${row}`, "Computed", findings)], findings.length + 1);
  list("Which log gives which pieces", logColumns, logs);
  list("Still missing", missingColumns, missing);
  if (more.length > 0) {
    const lines = [
      heading(`A${row}`, "What would give the rest", logColumns.length),
      down(`A${row + 1}`, "Computed", more),
    ];
    add(lines, more.length + 2);
  }
  list("Standing trees by diameter", treeColumns, trees);
  return sheetPlan({
    name: CUT_PLAN_SHEET,
    sheetClass: "presentation",
    landscape: true,
    frozenRows: 2,
    widths: [28, 18, 18, 14, 70, 12],
    print: onePageWide(`A1:F${row - 1}`),
    blocks,
  });
}

function outOfDate({ inputs: { pieces, spares, kerf, logs } }: CutPlanContent): string {
  const same = [`${named.spares}=${spares}`, `${named.kerf}=${kerf}`, addsUpTo(CUT_LIST, pieces), addsUpTo(LOGS, logs)];
  return `=IFERROR(IF(AND(${same.join(",")}),"","Check: the cut list, the logs or the kerf have changed since. Work the plan out again in the pane."),"")`;
}
