import { millLimits } from "../../core/sawing/millLimits";
import { sawingPatterns } from "../../core/sawing/patterns";
import { call, lookedUp } from "../formula";
import { formats } from "../formats";
import type { SheetPlan } from "../plan";
import { board, BOARD_SIZES, log, LOGS, MILL, mill, named, out } from "../tables";
import type { WorkbookContent } from "../workbookContent";
import { LAST_ROW } from "../zones";
import { logNumbers } from "./logCells";
import { cautionLine, asked, down, heading, sheetPlan, title } from "./sheetParts";

export const SAWING = "Sawing";
const PICKED = "$B$5";

/** The boards that are wanted, as a formula reads them: thickness, width, price. */
export const boardList = `${BOARD_SIZES}[[${board.thickness}]:[${board.price}]]`;
export const millList = `${MILL}[[${mill.limit}]:[${mill.value}]]`;

/** The cut list of one picked log, beside it the boards wanted and what the mill can take. */
export function sawingSheet({ logs, boards, mill: limits }: WorkbookContent): SheetPlan {
  const order = ["B6", "B7", "B8", boardList, named.kerf, named.pattern, millList, named.units] as const;

  return sheetPlan({
    name: SAWING,
    sheetClass: "presentation",
    landscape: true,
    frozenRows: 3,
    widths: [18, 34, 22, 38, 14, 12, 3, 3],
    blocks: [
      title("Sawing"),
      down("A2", "Note", [cautionLine("Sawing")]),
      down("A5", "Computed", ["Log to saw", "Small end", "Large end", "Length", "Pattern"]),
      down("B5", "Input", [logs[0]?.[log.log] ?? null]),
      down(
        "B6",
        "Linked",
        [log.smallEnd, log.largeEnd, log.scalingLength].map((heading) => ({
          formula: `=${lookedUp(LOGS, heading, log.log, PICKED)}`,
        })),
        formats.tenth,
      ),
      down("B9", "Input", [sawingPatterns[0]?.title ?? ""]),
      down("C5", "Unit", ["number on the sheet Logs", "in", "in", "ft, trim left out", ""]),
      heading("A11", "What the plan gets out of it", 6),
      heading("A15", "Cut list, from the first cut to the board left on the bed", 6),
      heading("I4", "Boards you want, rough and green", 3),
      heading("M4", "What the mill can take", 4),
      heading("R4", "End view, point by point", 4),
    ],
    names: [
      { name: named.pickedLog, at: "B5" },
      { name: named.pattern, at: "B9" },
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
      {
        at: "B9",
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
        columns: [
          {
            heading: board.thickness,
            width: 14,
            format: formats.thickness,
            rule: asked(0.25, 12, "Inches as sawn; 1.25, not 5/4."),
          },
          {
            heading: board.width,
            width: 12,
            format: formats.thickness,
            rule: asked(1, 40, "Inches."),
          },
          {
            heading: board.price,
            width: 16,
            format: formats.dollars,
            rule: asked(0, 100_000, "$ per MBF; for every board or for none."),
          },
        ],
        rows: boards,
      },
      {
        name: MILL,
        at: "M6",
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
    ],
    spills: [
      {
        name: out.sawYield,
        at: "A12",
        formula: `=${call("SAWYIELD", ...order)}`,
        rows: 2,
        columns: 6,
        formats: [formats.whole, formats.whole, formats.cents, formats.tenth, formats.tenth, formats.tenth],
      },
      {
        name: out.sawPlan,
        at: "A16",
        formula: `=${call("SAWPLAN", ...order)}`,
        rows: LAST_ROW - 15,
        columns: 6,
        formats: [formats.whole, formats.general, formats.thickness, formats.general, formats.tenth, formats.cents],
      },
      {
        name: out.sawLayout,
        at: "R5",
        // The gaps between outlines are #N/A for charts; on a sheet that is read and copied they are blanks. Why there
        // is no plan at all, the cut list says.
        formula: `=IFERROR(${call("SAWLAYOUT", ...order)},"")`,
        rows: LAST_ROW - 4,
        columns: 4,
        formats: [formats.thickness, formats.thickness, formats.general, formats.general],
      },
    ],
  });
}
