import { beside } from "../address";
import { call, column } from "../formula";
import { formats } from "../formats";
import type { SheetPlan } from "../plan";
import { log, LOGS, named, out } from "../tables";
import type { WorkbookContent } from "../workbookContent";
import { LAST_ROW } from "../zones";
import { cardRange } from "./card";
import { conventionsOf } from "./conventions";
import { byCardOrRule, LOG_HEADINGS, LOGS_SHEET } from "./logCells";
import { logColumns } from "./logColumns";
import { across, cautionLine, down, heading, sheetPlan, title } from "./sheetParts";

export { LOGS_SHEET };

/** First cell of the conventions: over the columns of measures, which are wide enough for them. */
const CONVENTIONS_AT = "C4";
/** Beside the table, so that both can grow. */
const SUMMARY_AT = "U6";
const SUMMARY_COLUMNS = 5;

/** The scale sheet: felled logs, scaled by the buyer's rule and conventions, which stay in sight above them. */
export function logsSheet(content: WorkbookContent): SheetPlan {
  const conventions = conventionsOf(content.settings.scale);
  const columns = logColumns(content);
  const cell = (i: number) => beside(CONVENTIONS_AT, 1, i);
  const labels = conventions.map(({ label }) => label);

  return sheetPlan({
    name: LOGS_SHEET,
    sheetClass: "foundation",
    landscape: true,
    frozenRows: LOG_HEADINGS,
    printTitleRow: LOG_HEADINGS,
    widths: [...columns.map(({ width }) => width), 3, 22, 8, 11, 11, 11],
    blocks: [
      title(LOGS_SHEET),
      down("A2", "Computed", [{ formula: headline() }]),
      down("A3", "Note", [cautionLine("Estimate")]),
      { ...across("A4", "Heading", ["How the buyer scales", null, ...labels]), lines: [3] },
      ...conventions.map(({ value, format }, i) => down(cell(i), "Input", [value], format)),
      down("A6", "Note", [
        "Ask the buyer how he scales: another rule or rounding can change the figure by a fifth. One rule for the whole sheet; the sheet Rules shows the others, and his own printed table goes on the sheet Card.",
        "A second reading is taken at right angles. Length is from end to end; sweep is how far the log bends out of the straight line between its ends. Type 15 for 15 percent. Lumber bf is the best plan, times Realized lumber on Setup.",
      ]),
      heading(
        beside(SUMMARY_AT, -1, 0),
        { formula: `="By species"&IF(${leftOut}=0,"",", without "&${leftOutInWords})` },
        SUMMARY_COLUMNS,
      ),
      down(beside(SUMMARY_AT, -4, 0), "Note", [cautionLine("Log weight")]),
    ],
    names: conventions.map(({ name }, i) => ({ name, at: cell(i) })),
    entryRules: conventions.map(({ rule }, i) => ({ at: cell(i), rule })),
    tables: [{ name: LOGS, at: `A${LOG_HEADINGS}`, columns, rows: content.logs }],
    spills: [
      {
        name: out.scaleSheet,
        at: SUMMARY_AT,
        formula: `=${byCardOrRule(bySpecies(cardRange), bySpecies(named.scaleRule))}`,
        rows: LAST_ROW - 6,
        columns: SUMMARY_COLUMNS,
        formats: [formats.general, formats.whole, formats.volume, formats.volume, formats.tenth],
      },
    ],
  });
}

const nets = column(LOGS, log.net);
/** A log that cannot be scaled has its sentence in its row; the rest is added up without it, and says so. */
const leftOut = `SUMPRODUCT(ISERROR(${nets})*1)`;
const leftOutInWords = `${leftOut}&IF(${leftOut}=1," log"," logs")&" that cannot be scaled: see Check"`;

/** The sheet added up by species, by the conventions on top, as each log is scaled in its row. */
const bySpecies = (rule: string) =>
  call(
    "SCALESHEET",
    column(LOGS, log.species),
    `IF(ISERROR(${nets}),"",${column(LOGS, log.scalingDiameter)})`,
    column(LOGS, log.scalingLength),
    rule,
    column(LOGS, log.deduction),
    named.scaleRounding,
    named.longestLength,
    column(LOGS, log.largeEnd),
    named.diameterRounding,
    named.units,
  );

/** How many logs and what they scale, in one line. */
function headline(): string {
  const scaled = `COUNT(${nets})&IF(COUNT(${nets})=1," log, "," logs, ")&TEXT(SUMIF(${nets},">0"),"0")&" bf net by "&${named.scaleRule}`;
  return `=${scaled}&IF(${leftOut}=0,"",", without "&${leftOutInWords})`;
}
