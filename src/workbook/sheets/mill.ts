import { millLimits } from "../../core/sawing/millLimits";
import { formats } from "../formats";
import type { EntryRule, SheetPlan, TablePlan } from "../plan";
import { BOARD_SIZES, GRADE_SHARES, gradeShare, MILL, mill, named, SAW_RATES, sawRate } from "../tables";
import type { WorkbookContent } from "../workbookContent";
import { boardCells, boardSizeColumns } from "./boardSizeColumns";
import { asked, cautionLine, down, heading, sheetPlan, title } from "./sheetParts";

export const MILL_SHEET = "Mill";
const LOSSES_AT = 5;
const BOARDS_AT = 12; // a table's tab is higher than one row

/** The boards that are wanted, as a formula reads them: thickness, width, length, product, prices. */
export const boardList = boardCells(BOARD_SIZES);
export const millList = `${MILL}[[${mill.limit}]:[${mill.value}]]`;

/** The boards that are wanted and what they lose on the way, what the mill can take, and what its lumber is worth. */
export function millSheet(content: WorkbookContent): SheetPlan {
  const losses = lossesOf(content);
  const cell = (i: number) => `B${LOSSES_AT + i}`;
  return sheetPlan({
    name: MILL_SHEET,
    sheetClass: "foundation",
    landscape: true,
    frozenRows: 3,
    blocks: [
      title(MILL_SHEET),
      down("A2", "Note", [
        cautionLine("Sawing"),
        "Logs, trees and cut lists are all planned for these boards and this mill; the kerf stands on Setup.",
      ]),
      heading("A4", "From the finished board back to the saw", 8),
      down(
        `A${LOSSES_AT}`,
        "Computed",
        losses.map(({ label }) => label),
      ),
      ...losses.map(({ value, format }, i) => down(cell(i), "Input", [value], format)),
      down(
        `C${LOSSES_AT}`,
        "Unit",
        losses.map(({ unit }) => unit),
      ),
      down(
        `D${LOSSES_AT}`,
        "Note",
        losses.map(({ comment }) => comment),
      ),
      heading("A9", "Boards you want: thickness finished or sawn, width as it comes off the saw", 8),
      heading("J4", "What the mill can take", 4),
      heading("O4", "Grades you expect", 3),
      heading("S4", "Slabs, sawdust, hours", 3),
    ],
    names: losses.map(({ name }, i) => ({ name, at: cell(i) })),
    entryRules: losses.map(({ rule }, i) => ({ at: cell(i), rule })),
    tables: [
      { name: BOARD_SIZES, at: `A${BOARDS_AT}`, columns: boardSizeColumns(BOARD_SIZES), rows: content.boards },
      limitsTable(content),
      gradesTable,
      ratesTable,
    ],
  });
}

interface Loss {
  readonly name: string;
  readonly label: string;
  readonly value: number;
  readonly unit: string;
  readonly comment: string;
  readonly rule: EntryRule;
  readonly format: string;
}

const lossesOf = ({ settings: { losses } }: WorkbookContent): readonly Loss[] => [
  {
    name: named.shrinkage,
    label: "Shrinks in thickness",
    value: losses.shrinkage,
    unit: "pct",
    comment:
      "From green to the moisture it is used at; 5 for 5 percent. DRIEDSIZE tells it of a species. 0 if used green.",
    rule: asked(0, 50, "A percent from 0 to 50; 5 for 5 percent."),
    format: formats.tenth,
  },
  {
    name: named.planing,
    label: "Planed off",
    value: losses.planing,
    unit: "in",
    comment: "Both faces together; 0 if it is left rough.",
    rule: asked(0, 2, "Inches, both faces together, from 0 to 2."),
    format: formats.thickness,
  },
  {
    name: named.variation,
    label: "Uneven sawing",
    value: losses.variation,
    unit: "in",
    comment: "1.65 times the standard deviation of your boards' thickness leaves 5 percent with a thin spot.",
    rule: asked(0, 2, "Inches, from 0 to 2."),
    format: formats.thickness,
  },
];

const limitsTable = ({ mill: rows }: WorkbookContent): TablePlan => ({
  name: MILL,
  at: "J7",
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
    { heading: mill.value, width: 10, format: formats.tenth },
    { heading: mill.unit, width: 8 },
    { heading: mill.comment, width: 38 },
  ],
  rows,
});

const gradesTable: TablePlan = {
  name: GRADE_SHARES,
  at: "O7",
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
};

const ratesTable: TablePlan = {
  name: SAW_RATES,
  at: "S7",
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
};
