import { splitTaper, tapers } from "../../core/sawing/lyingLog";
import { patternNames } from "../../core/sawing/patternNames";
import { beside } from "../address";
import { call, lookedUp } from "../formula";
import { formats } from "../formats";
import type { EntryRulePlan, SheetPlan } from "../plan";
import { log, LOGS, MORE_PRODUCTS, named } from "../tables";
import type { WorkbookContent } from "../workbookContent";
import { boardSizeColumns } from "./boardSizeColumns";
import { EQUAL_BOARDS_WIDTHS, equalBoardsBlocks, equalBoardsRules, equalBoardsSpill } from "./equalBoards";
import { logNumbers } from "./logCells";
import { millList } from "./millTables";
import { BOUND_AT, CUTS_AT, sawingSpills } from "./sawingSpills";
import { cautionLine, down, heading, onePageWide, sheetPlan, title } from "./sheetParts";

export const SAWING = "Sawing";
const PICKED = "$B$5";
/** Rows of the cut list that are printed until its length is known: as many as two pages hold. */
const CUTS_AT_FIRST = 63;

/** What is printed of the sheet when the cut list has so many rows, its heading among them. */
export const sawingArea = (cutRows: number): string => `A1:G${CUTS_AT + cutRows - 1}`;

/** What the sheet Logs has of the picked log. */
const ofLog = (heading: string) => ({ formula: `=${lookedUp(LOGS, heading, log.log, PICKED)}` });

/** The large end is taken to be as oval as the small one, as the plans take it. */
const fitsMill = `=IF(OR(B6="",B8="",B9=""),"",${call("MILLFITS", "B6", 'IF(B7="",B8,MAX(B8,B8*B7/B6))', "B9", millList, named.units)})`;
/** Of the shorter way of an oval end. */
const largestBeam = `=IF(B6="","",INDEX(${call("LARGESTCANT", "MIN(B6:B7)")},2,1))`;

/** Of the row that tells how good the plan is. */
const ofBound = (columns: number) => {
  const at = beside(BOUND_AT, 1, columns);
  return `=IF(${at}="","",${at})`;
};

/** The cut list of one picked log, what it gets out of the log, and what another kerf or product would. */
export function sawingSheet({ logs, equalBoards }: WorkbookContent): SheetPlan {
  return sheetPlan({
    name: SAWING,
    sheetClass: "presentation",
    landscape: true,
    frozenRows: 3,
    widths: [22, 58, 17, 44, 14, 12, 14, 3, ...EQUAL_BOARDS_WIDTHS, 3],
    print: onePageWide(sawingArea(CUTS_AT_FIRST), CUTS_AT),
    blocks: [
      title("Sawing"),
      down("A2", "Note", [cautionLine("Sawing"), cautionLine("Ungraded lumber"), cautionLine("Log weight")]),
      down("A5", "Computed", [
        "Log to saw",
        "Small end",
        "Small end, second way",
        "Large end",
        "Length",
        "Pattern",
        "Sweep",
        "Taper",
        "Does it fit the mill?",
        "Largest square beam",
        "Most by area and kerf",
        "The plan gives",
        "Settings tried",
        "The plan is",
      ]),
      down("B5", "Input", [logs[0]?.[log.log] ?? null]),
      down("B6", "Linked", [log.smallEnd, log.second, log.largeEnd, log.scalingLength].map(ofLog), formats.tenth),
      down("B10", "Input", [patternNames[0].title]),
      down("B11", "Linked", [ofLog(log.sweep)], formats.tenth),
      down("B12", "Input", [splitTaper.title]),
      down("C5", "Unit", [
        "number on the sheet Logs",
        "in",
        "in, where the end is oval",
        "in",
        "ft, trim left out",
        "boards, mill and grades: see the sheet Mill",
        "in, as on the sheet Logs; blank for a straight log",
        "Split: along the pith; Full: along the bark",
        null,
        "in each way, free of wane",
        "bf: more than any plan of this log could give",
        "% of it; of dollars where boards are priced",
        "in from one to the next",
      ]),
      down("B13", "Computed", [{ formula: fitsMill }, { formula: largestBeam }], formats.thickness),
      down("B15", "Linked", [{ formula: ofBound(0) }], formats.whole),
      down("B16", "Linked", [{ formula: ofBound(2) }], formats.tenth),
      down("B17", "Linked", [{ formula: ofBound(3) }], formats.thickness),
      down("B18", "Linked", [{ formula: ofBound(4) }]),
      heading("A20", "What the plan gets out of it", 6),
      heading(`A${CUTS_AT - 1}`, "Cut list, from the first cut to the board left on the bed", 7),
      ...equalBoardsBlocks(equalBoards),
      heading("N4", "Products to try", 8),
      heading("W4", "What if", 6),
      heading("AD4", "What the plan is worth", 5),
      heading("AJ4", "End view, point by point", 4),
      heading("AO4", "How good the plan is", 5),
    ],
    names: [
      { name: named.pickedLog, at: "B5" },
      { name: named.pattern, at: "B10" },
      { name: named.sweep, at: "B11" },
      { name: named.taper, at: "B12" },
    ],
    entryRules: [...entryRules, ...equalBoardsRules],
    tables: [
      {
        name: MORE_PRODUCTS,
        at: "N7",
        columns: boardSizeColumns(MORE_PRODUCTS),
        rows: [{}],
      },
    ],
    spills: [...sawingSpills, equalBoardsSpill],
  });
}

const entryRules: readonly EntryRulePlan[] = [
  { at: "B5", rule: { kind: "listOf", range: logNumbers, strict: false, message: "A log from the sheet Logs." } },
  {
    at: "B10",
    rule: {
      kind: "list",
      choices: patternNames.map(({ title }) => title),
      strict: true,
      message: "How the log is opened.",
    },
  },
  {
    at: "B12",
    rule: {
      kind: "list",
      choices: tapers.map((taper) => taper.title),
      strict: true,
      message: "How the saw planes run along the log.",
    },
  },
];
