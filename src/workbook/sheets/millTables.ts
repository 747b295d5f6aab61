import { millLimits } from "../../core/sawing/millLimits";
import { formats } from "../formats";
import type { TablePlan } from "../plan";
import { BOARD_SIZES, GRADE_SHARES, gradeShare, MILL, mill, SAW_RATES, sawRate } from "../tables";
import type { WorkbookContent } from "../workbookContent";
import { boardCells, boardSizeColumns } from "./boardSizeColumns";
import { asked } from "./sheetParts";

/** The boards that are wanted, as a formula reads them: thickness, width, length, product, prices. */
export const boardList = boardCells(BOARD_SIZES);
export const millList = `${MILL}[[${mill.limit}]:[${mill.value}]]`;

export const boardsTable = (at: string, { boards: rows }: WorkbookContent): TablePlan => ({
  name: BOARD_SIZES,
  at,
  columns: boardSizeColumns(BOARD_SIZES),
  rows,
});

export const limitsTable = (at: string, { mill: rows }: WorkbookContent): TablePlan => ({
  name: MILL,
  at,
  columns: [
    {
      heading: mill.limit,
      width: 20,
      rule: {
        kind: "list",
        choices: millLimits.map((limit) => limit.title),
        strict: false,
        message: "A limit the plan knows.",
      },
    },
    { heading: mill.value, width: 10, format: formats.limit },
    { heading: mill.unit, width: 8 },
    { heading: mill.comment, width: 38 },
  ],
  rows,
});

export const gradesTable = (at: string): TablePlan => ({
  name: GRADE_SHARES,
  at,
  columns: [
    { heading: gradeShare.grade, width: 16 },
    {
      heading: gradeShare.share,
      width: 12,
      format: formats.whole,
      rule: asked(0, 100, "Percent of the lumber; all shares add to 100."),
    },
    {
      heading: gradeShare.price,
      width: 16,
      format: formats.dollars,
      rule: asked(0, 100_000, "$ per MBF of this grade."),
    },
  ],
  rows: [{ [gradeShare.grade]: "All lumber", [gradeShare.share]: 100 }],
});

export const ratesTable = (at: string): TablePlan => ({
  name: SAW_RATES,
  at,
  columns: [
    { heading: sawRate.rate, width: 22 },
    { heading: sawRate.value, width: 10, rule: asked(0, 100_000, "Leave blank what you do not know.") },
    { heading: sawRate.unit, width: 22 },
  ],
  rows: [
    { [sawRate.rate]: "Slabs", [sawRate.unit]: "$ per ft3 of wood" },
    { [sawRate.rate]: "Sawdust", [sawRate.unit]: "$ per ft3 of wood" },
    { [sawRate.rate]: "Board feet per hour", [sawRate.unit]: "bf you saw in an hour" },
  ],
});
