import { splitTaper, tapers } from "../../core/sawing/lyingLog";
import { sawingPatterns } from "../../core/sawing/patterns";
import { call, lookedUp } from "../formula";
import { formats } from "../formats";
import type { EntryRulePlan, SheetPlan, SpillPlan } from "../plan";
import { GRADE_SHARES, gradeShare, log, LOGS, MORE_PRODUCTS, named, out, SAW_RATES, sawRate } from "../tables";
import type { WorkbookContent } from "../workbookContent";
import { LAST_ROW } from "../zones";
import { boardCells, boardSizeColumns } from "./boardSizeColumns";
import { logNumbers } from "./logCells";
import { boardList, millList } from "./mill";
import { cautionLine, down, heading, sheetPlan, title } from "./sheetParts";

export const SAWING = "Sawing";
const PICKED = "$B$5";
/** The row that heads the cut list. */
const CUTS_AT = 20;
/** Rows that are printed: as many as two pages hold, and more cuts than a log takes. */
const LAST_PRINTED = 82;

/** What the sheet Logs has of the picked log. */
const ofLog = (heading: string) => ({ formula: `=${lookedUp(LOGS, heading, log.log, PICKED)}` });

/** The cut list of one picked log, what it gets out of the log, and what another kerf or product would. */
export function sawingSheet({ logs }: WorkbookContent): SheetPlan {
  return sheetPlan({
    name: SAWING,
    sheetClass: "presentation",
    landscape: true,
    frozenRows: 3,
    widths: [22, 58, 17, 40, 14, 12, 14, 3, 12, 12, 26, 12, 3],
    print: {
      area: `A1:G${LAST_PRINTED}`,
      titleRows: [CUTS_AT, CUTS_AT],
      breaks: [],
      gridlines: false,
      margin: 0.5,
    },
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
        "Sweep",
        "Taper",
      ]),
      down("B5", "Input", [logs[0]?.[log.log] ?? null]),
      down("B6", "Linked", [log.smallEnd, log.second, log.largeEnd, log.scalingLength].map(ofLog), formats.tenth),
      down("B10", "Input", [sawingPatterns[0]?.title ?? ""]),
      down("B11", "Linked", [ofLog(log.sweep)], formats.tenth),
      down("B12", "Input", [splitTaper.title]),
      down("C5", "Unit", [
        "number on the sheet Logs",
        "in",
        "in, where the end is oval",
        "in",
        "ft, trim left out",
        "",
        "in, as on the sheet Logs; blank for a straight log",
        "Split: along the pith; Full: along the bark",
      ]),
      down("A13", "Note", ["The boards you want, your mill and the grades you expect stand on the sheet Mill."]),
      heading("A15", "What the plan gets out of it", 6),
      heading(`A${CUTS_AT - 1}`, "Cut list, from the first cut to the board left on the bed", 7),
      heading("I4", "End view, point by point", 4),
      heading("N4", "Products to try", 8),
      heading("W4", "What if", 6),
      heading("AD4", "What the plan is worth", 5),
    ],
    names: [
      { name: named.pickedLog, at: "B5" },
      { name: named.pattern, at: "B10" },
      { name: named.sweep, at: "B11" },
      { name: named.taper, at: "B12" },
    ],
    entryRules,
    tables: [
      {
        name: MORE_PRODUCTS,
        at: "N7",
        columns: boardSizeColumns(MORE_PRODUCTS),
        rows: [{}],
      },
    ],
    spills,
  });
}

const entryRules: readonly EntryRulePlan[] = [
  { at: "B5", rule: { kind: "listOf", range: logNumbers, strict: false, message: "A log from the sheet Logs." } },
  {
    at: "B10",
    rule: {
      kind: "list",
      choices: sawingPatterns.map((pattern) => pattern.title),
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

const theLog = ["B6:B7", "B8", "B9", boardList, named.kerf, named.pattern] as const;
const lying = [millList, named.sweep, named.taper, named.units] as const;
const order = [...theLog, ...lying] as const;
const gradeList = `${GRADE_SHARES}[[${gradeShare.grade}]:[${gradeShare.price}]]`;
const rateList = `${SAW_RATES}[[${sawRate.rate}]:[${sawRate.value}]]`;

const { general, whole, tenth, thickness, cents } = formats;

const spills: readonly SpillPlan[] = [
  {
    name: out.sawYield,
    at: "A16",
    formula: `=${call("SAWYIELD", ...order)}`,
    rows: 2,
    columns: 6,
    formats: [whole, whole, cents, tenth, tenth, tenth],
  },
  {
    name: out.sawPlan,
    at: `A${CUTS_AT}`,
    formula: `=${call("SAWPLAN", ...order)}`,
    rows: LAST_ROW - CUTS_AT + 1,
    columns: 7,
    formats: [whole, general, thickness, general, tenth, cents, general],
  },
  {
    name: out.sawLayout,
    at: "I5",
    // The gaps between outlines are #N/A for charts; on a sheet that is read and copied they are blanks. Why there
    // is no plan at all, the cut list says.
    formula: `=IFERROR(${call("SAWLAYOUT", ...order)},"")`,
    rows: LAST_ROW - 4,
    columns: 4,
    formats: [thickness, thickness, general, general],
  },
  {
    name: out.sawWhatIf,
    at: "W5",
    formula: `=${call("SAWWHATIF", ...theLog, boardCells(MORE_PRODUCTS), ...lying)}`,
    rows: 60,
    columns: 6,
    formats: [general, whole, tenth, cents, tenth, cents],
  },
  {
    name: out.sawValue,
    at: "AD5",
    formula: `=${call("SAWVALUE", ...theLog, gradeList, rateList, ...lying)}`,
    rows: 40,
    columns: 5,
    formats: [general, tenth, general, cents, cents],
  },
];
