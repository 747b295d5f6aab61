import { logRules, menuRules } from "../../core/log/rules";
import { call, column, lookedUp, thisRow } from "../formula";
import { formats } from "../formats";
import type { ColumnPlan, SheetPlan } from "../plan";
import { log, LOGS, named, out, species, SPECIES } from "../tables";
import type { WorkbookContent } from "../workbookContent";
import { boardList, millList } from "./sawing";
import { speciesCodes } from "./setup";
import { cautionLine, asked, down, heading, sheetPlan, title } from "./sheetParts";

export const LOGS_SHEET = "Logs";
const PICKED = named.pickedLog;

/** Felled logs: scaled by the rule, and what each should saw out to. */
export function logsSheet(content: WorkbookContent): SheetPlan {
  const ofPicked = (heading: string) => lookedUp(LOGS, heading, log.log, PICKED);

  return sheetPlan({
    name: LOGS_SHEET,
    sheetClass: "foundation",
    landscape: true,
    frozenRows: 11,
    printTitleRow: 11,
    widths: logColumns(content).map(({ width }) => width),
    blocks: [
      title("Logs"),
      down("A2", "Note", [
        "Diameters are inside bark. The deduction takes defect off the gross scale: type 15 for 15 percent.",
        "Lumber bf is the best live-sawn plan for your boards, kerf and mill, times Realized lumber on Setup.",
        cautionLine("Estimate"),
      ]),
      heading(
        "A6",
        { formula: `="Log "&${PICKED}&", picked on the sheet Sawing, by every log rule"` },
        menuRules.length,
      ),
    ],
    tables: [{ name: LOGS, at: "A11", columns: logColumns(content), rows: content.logs }],
    spills: [
      {
        name: out.logRules,
        at: "A7",
        formula: `=IF(${PICKED}="","",${call("LOGSCALERULES", ofPicked(log.smallEnd), ofPicked(log.length), ofPicked(log.deduction))})`,
        rows: 2,
        columns: logRules.length,
        headings: menuRules.length,
        headingLines: 3,
        formats: new Array<string>(logRules.length).fill(formats.volume),
      },
    ],
  });
}

const here = (heading: string) => thisRow(LOGS, heading);
const isBlank = (...headings: readonly string[]) => `OR(${headings.map((heading) => `${here(heading)}=""`).join(",")})`;

const logColumns = (content: WorkbookContent): readonly ColumnPlan[] => [
  { heading: log.log, width: 12 },
  {
    heading: log.species,
    width: 14,
    rule: {
      kind: "listOf",
      range: speciesCodes(content),
      strict: false,
      message: "A code from the species list on Setup.",
    },
  },
  { heading: log.smallEnd, width: 20, format: formats.tenth, rule: asked(4, 80, "Inches inside bark, from 4 to 80.") },
  { heading: log.largeEnd, width: 20, format: formats.tenth, rule: asked(4, 80, "Inches inside bark, from 4 to 80.") },
  { heading: log.length, width: 20, format: formats.tenth, rule: asked(4, 40, "Feet without trim, from 4 to 40.") },
  { heading: log.deduction, width: 16, format: formats.whole, rule: asked(0, 100, "Percent, 15 for 15 percent.") },
  {
    heading: log.use,
    width: 10,
    rule: { kind: "list", choices: ["Sell", "Saw"], strict: false, message: "Sell, Saw or blank." },
  },
  { heading: log.note, width: 20 },
  {
    heading: log.gross,
    width: 11,
    format: formats.volume,
    formula: `=${call("LOGSCALE", here(log.smallEnd), here(log.length), named.rule)}`,
  },
  {
    heading: log.net,
    width: 11,
    format: formats.volume,
    formula: `=${call("LOGSCALE", here(log.smallEnd), here(log.length), named.rule, here(log.deduction))}`,
  },
  {
    heading: log.lumber,
    width: 12,
    format: formats.volume,
    formula: `=IF(${isBlank(log.smallEnd, log.largeEnd, log.length)},"",INDEX(${call(
      "SAWYIELD",
      here(log.smallEnd),
      here(log.largeEnd),
      here(log.length),
      boardList,
      named.kerf,
      named.pattern,
      millList,
      named.units,
    )},2,2)*${named.realized}/100)`,
  },
  {
    heading: log.overrun,
    width: 14,
    format: formats.whole,
    formula: `=IFERROR((${here(log.lumber)}/${here(log.net)}-1)*100,"")`,
  },
  { heading: log.check, width: 52, formula: logCheck() },
];

/** The first thing that looks wrong with a log, in plain words. */
function logCheck(): string {
  const ends = `AND(${here(log.smallEnd)}<>"",${here(log.largeEnd)}<>"")`;
  const cases: readonly (readonly [test: string, sentence: string])[] = [
    [`AND(${here(log.log)}="",${here(log.smallEnd)}="")`, ""],
    [isBlank(log.log), "Give the log a number."],
    [`COUNTIF(${column(LOGS, log.log)},${here(log.log)})>1`, "This log number is used twice."],
    [isBlank(log.smallEnd, log.length), "Small end and length are needed to scale it."],
    [
      `AND(${ends},${here(log.smallEnd)}>${here(log.largeEnd)})`,
      "The small end is thicker than the large end. Swapped?",
    ],
    [`AND(${here(log.deduction)}>0,${here(log.deduction)}<1)`, "A deduction under 1 percent: type 15 for 15 percent."],
    [`COUNTIF(${column(SPECIES, species.code)},${here(log.species)})=0`, "The species is not in your list on Setup."],
    [isBlank(log.largeEnd), "The large end is needed to plan the sawing."],
  ];
  return `=${cases.reduceRight((otherwise, [test, sentence]) => `IF(${test},"${sentence}",${otherwise})`, '""')}`;
}
