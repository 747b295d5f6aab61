import { splitTaper, tapers } from "../../core/sawing/lyingLog";
import { millLimits } from "../../core/sawing/millLimits";
import { sawingPatterns } from "../../core/sawing/patterns";
import { products } from "../../core/sawing/resawn";
import { call, lookedUp } from "../formula";
import { formats } from "../formats";
import type { ColumnPlan, SheetPlan } from "../plan";
import {
  board,
  BOARD_SIZES,
  GRADE_SHARES,
  gradeShare,
  log,
  LOGS,
  MILL,
  mill,
  MORE_PRODUCTS,
  named,
  out,
  SAW_RATES,
  sawRate,
} from "../tables";
import type { WorkbookContent } from "../workbookContent";
import { LAST_ROW } from "../zones";
import { logNumbers } from "./logCells";
import { cautionLine, asked, down, heading, sheetPlan, title } from "./sheetParts";

export const SAWING = "Sawing";
const PICKED = "$B$5";

/** The boards that are wanted, as a formula reads them: thickness, width, price. */
export const boardList = `${BOARD_SIZES}[[${board.thickness}]:[${board.price}]]`;
export const millList = `${MILL}[[${mill.limit}]:[${mill.value}]]`;

const moreList = `${MORE_PRODUCTS}[[${board.thickness}]:[${board.price}]]`;
const gradeList = `${GRADE_SHARES}[[${gradeShare.grade}]:[${gradeShare.price}]]`;
const rateList = `${SAW_RATES}[[${sawRate.rate}]:[${sawRate.value}]]`;

/** In the order that a list without headings is read in. */
const boardColumns: readonly ColumnPlan[] = [
  {
    heading: board.thickness,
    width: 14,
    format: formats.thickness,
    rule: asked(0.25, 12, "Inches as sawn; 1.25, not 5/4."),
  },
  { heading: board.width, width: 16, format: formats.thickness },
  { heading: board.length, width: 12, format: formats.tenth, rule: asked(1, 60, "Feet; blank for any length.") },
  {
    heading: board.product,
    width: 16,
    rule: {
      kind: "list",
      choices: products.map(({ title: product }) => product),
      strict: false,
      message: "Blank for a board. Of siding and shingles, give the size of the blank that they are sawn from.",
    },
  },
  {
    heading: board.each,
    width: 16,
    format: formats.cents,
    rule: asked(0, 10_000, "$ a piece; takes the place of the price per MBF."),
  },
  {
    heading: board.price,
    width: 16,
    format: formats.dollars,
    rule: asked(0, 100_000, "$ per MBF; for every board or for none."),
  },
];

/** The cut list of one picked log, beside it the boards wanted and what the mill can take. */
export function sawingSheet({ logs, boards, mill: limits }: WorkbookContent): SheetPlan {
  const theLog = ["B6:B7", "B8", "B9", boardList, named.kerf, named.pattern] as const;
  const lying = [millList, named.sweep, named.taper, named.units] as const;
  const order = [...theLog, ...lying] as const;

  return sheetPlan({
    name: SAWING,
    sheetClass: "presentation",
    landscape: true,
    frozenRows: 3,
    widths: [22, 34, 26, 44, 14, 12, 14, 3],
    blocks: [
      title("Sawing"),
      down("A2", "Note", [cautionLine("Sawing"), cautionLine("Ungraded lumber")]),
      down("A5", "Computed", [
        "Log to saw",
        "Small end",
        "Small end, second way",
        "Large end",
        "Length",
        "Pattern",
        "Sweep of this log",
        "Taper",
      ]),
      down("B5", "Input", [logs[0]?.[log.log] ?? null]),
      down(
        "B6",
        "Linked",
        [log.smallEnd, log.second, log.largeEnd, log.scalingLength].map((heading) => ({
          formula: `=${lookedUp(LOGS, heading, log.log, PICKED)}`,
        })),
        formats.tenth,
      ),
      down("B10", "Input", [sawingPatterns[0]?.title ?? "", null, splitTaper.title]),
      down("C5", "Unit", [
        "number on the sheet Logs",
        "in",
        "in, where the end is oval",
        "in",
        "ft, trim left out",
        "",
        "in; blank for a straight log",
        "Split: along the pith; Full: along the bark",
      ]),
      heading("A14", "What the plan gets out of it", 6),
      heading("A18", "Cut list, from the first cut to the board left on the bed", 7),
      heading("I4", "Boards you want, rough and green", 6),
      heading("P4", "What the mill can take", 4),
      heading("U4", "End view, point by point", 4),
      heading("Z4", "Products to try", 6),
      heading("AG4", "What if", 6),
      heading("AN4", "Grades you expect", 3),
      heading("AR4", "Slabs, sawdust, hours", 3),
      heading("AV4", "What the plan is worth", 5),
    ],
    names: [
      { name: named.pickedLog, at: "B5" },
      { name: named.pattern, at: "B10" },
      { name: named.sweep, at: "B11" },
      { name: named.taper, at: "B12" },
    ],
    entryRules: [
      {
        at: "B5",
        rule: {
          kind: "listOf",
          range: logNumbers,
          strict: false,
          message: "A log from the sheet Logs.",
        },
      },
      { at: "B11", rule: asked(0, 20, "Inches out of the straight line between the ends.") },
      {
        at: "B12",
        rule: {
          kind: "list",
          choices: tapers.map((taper) => taper.title),
          strict: true,
          message: "How the saw planes run along the log.",
        },
      },
      {
        at: "B10",
        rule: {
          kind: "list",
          choices: sawingPatterns.map((pattern) => pattern.title),
          strict: true,
          message: "How the log is opened.",
        },
      },
    ],
    tables: [
      {
        name: BOARD_SIZES,
        at: "I6",
        columns: boardColumns,
        rows: boards,
      },
      {
        name: MILL,
        at: "P6",
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
          { heading: mill.comment, width: 30 },
        ],
        rows: limits,
      },
      { name: MORE_PRODUCTS, at: "Z6", columns: boardColumns, rows: [{ [board.thickness]: null }] },
      {
        name: GRADE_SHARES,
        at: "AN6",
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
      },
      {
        name: SAW_RATES,
        at: "AR6",
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
      },
    ],
    spills: [
      {
        name: out.sawYield,
        at: "A15",
        formula: `=${call("SAWYIELD", ...order)}`,
        rows: 2,
        columns: 6,
        formats: [formats.whole, formats.whole, formats.cents, formats.tenth, formats.tenth, formats.tenth],
      },
      {
        name: out.sawPlan,
        at: "A19",
        formula: `=${call("SAWPLAN", ...order)}`,
        rows: LAST_ROW - 18,
        columns: 7,
        formats: [
          formats.whole,
          formats.general,
          formats.thickness,
          formats.general,
          formats.tenth,
          formats.cents,
          formats.general,
        ],
      },
      {
        name: out.sawLayout,
        at: "U5",
        // The gaps between outlines are #N/A for charts; on a sheet that is read and copied they are blanks. Why there
        // is no plan at all, the cut list says.
        formula: `=IFERROR(${call("SAWLAYOUT", ...order)},"")`,
        rows: LAST_ROW - 4,
        columns: 4,
        formats: [formats.thickness, formats.thickness, formats.general, formats.general],
      },
      {
        name: out.sawWhatIf,
        at: "AG5",
        formula: `=${call("SAWWHATIF", ...theLog, moreList, ...lying)}`,
        rows: 60,
        columns: 6,
        formats: [formats.general, formats.whole, formats.tenth, formats.cents, formats.tenth, formats.cents],
      },
      {
        name: out.sawValue,
        at: "AV5",
        formula: `=${call("SAWVALUE", ...theLog, gradeList, rateList, ...lying)}`,
        rows: 40,
        columns: 5,
        formats: [formats.general, formats.tenth, formats.general, formats.cents, formats.cents],
      },
    ],
  });
}
