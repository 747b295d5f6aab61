import { allRules, ruleSelections, usualRules } from "../../core/log/ruleSelections";
import { columnLetters } from "../address";
import { call, column } from "../formula";
import { formats } from "../formats";
import type { Formula, SheetPlan } from "../plan";
import { log, LOGS, named, out } from "../tables";
import { LAST_ROW } from "../zones";
import { ofPickedLog } from "./logCells";
import { across, asked, cautionLine, down, heading, sheetPlan, title } from "./sheetParts";

export const RULES_SHEET = "Rules";

/** Diameters that are set side by side. [in] */
export const RULE_DIAMETERS: readonly number[] = Array.from({ length: 23 }, (_, i) => 8 + i);
/** Length that they are set side by side at, to begin with: the usual log. [ft] */
export const RULE_LENGTH = 16;

const COLUMNS = allRules.rules.length;
const WIDTH = 17;
const ANSWERS = new Array<string>(COLUMNS).fill(formats.volume);
const FIRST = 8;
const PICKED = FIRST + RULE_DIAMETERS.length + 3;
const ALL = PICKED + 4;

/** The same log under every rule: by diameter, for the picked log, and for all logs of the scale sheet. */
export function rulesSheet(): SheetPlan {
  const diameters = `$A$${FIRST + 1}:$A$${FIRST + RULE_DIAMETERS.length}`;
  const numbers = column(LOGS, log.log);
  const sideBySide = (...measures: readonly string[]) => call("LOGSCALERULES", ...measures, named.rulesShown);
  const asTheBuyer = (measures: readonly string[], largeEnd: string) =>
    call(
      "LOGSCALERULES",
      ...measures,
      named.rulesShown,
      named.scaleRounding,
      named.longestLength,
      largeEnd,
      named.diameterRounding,
      named.units,
    );
  const logMeasures = [log.scalingDiameter, log.scalingLength, log.deduction];

  return sheetPlan({
    name: RULES_SHEET,
    sheetClass: "presentation",
    landscape: true,
    frozenRows: 6,
    widths: [28, ...new Array<number>(COLUMNS).fill(WIDTH)],
    blocks: [
      title(RULES_SHEET),
      down("A2", "Note", [
        cautionLine("Estimate"),
        "By diameter each rule rounds as its tables do; logs go by the conventions on the sheet Logs. What is from memory says so; #N/A lies outside a table.",
      ]),
      down("A4", "Computed", ["Length, ft", "Rules"]),
      down("B4", "Input", [RULE_LENGTH], formats.tenth),
      down("B5", "Input", [usualRules.title]),
      down("C4", "Note", [
        "Of the logs in the table by diameter.",
        `${usualRules.title}: those that menus offer. ${allRules.title}: ${COLUMNS} rules on the small end.`,
      ]),
      heading("A7", { formula: `="Board feet in a log of "&${named.rulesLength}&" ft, by diameter inside bark"` }, 7),
      across(`A${FIRST}`, "Heading", ["Diameter inside bark in"]),
      down(`A${FIRST + 1}`, "Computed", RULE_DIAMETERS, formats.whole),
      heading(
        `A${PICKED}`,
        { formula: `="Log "&${named.pickedLog}&", picked on the sheet Sawing: net board feet"` },
        7,
      ),
      down(`A${PICKED + 2}`, "Linked", [{ formula: `=${named.pickedLog}` }]),
      heading(
        `A${ALL}`,
        "All logs of the sheet Logs: net board feet by each rule, with the buyer's conventions on that sheet",
        7,
      ),
      across(`A${ALL + 1}`, "Computed", ["All logs", ...totals((range) => `SUMIF(${range},">0")`)], formats.volume),
      across(`A${ALL + 2}`, "Computed", ["Logs with a value", ...totals((range) => `COUNT(${range})`)], formats.whole),
      across(`A${ALL + 3}`, "Heading", ["Log"]),
    ],
    names: [
      { name: named.rulesLength, at: "B4" },
      { name: named.rulesShown, at: "B5" },
    ],
    entryRules: [
      { at: "B4", rule: asked(4, 40, "Feet, from 4 to 40.") },
      {
        at: "B5",
        rule: {
          kind: "list",
          choices: ruleSelections.map((selection) => selection.title),
          strict: true,
          message: "Usual or All.",
        },
      },
    ],
    spills: [
      {
        name: out.rules,
        at: `B${FIRST}`,
        formula: `=${sideBySide(diameters, named.rulesLength, "0")}`,
        rows: RULE_DIAMETERS.length + 1,
        columns: COLUMNS,
        headings: usualRules.rules.length,
        headingLines: 3,
        formats: ANSWERS,
      },
      {
        name: out.logRules,
        at: `B${PICKED + 1}`,
        formula: `=IF(${named.pickedLog}="","",${asTheBuyer(logMeasures.map(ofPickedLog), ofPickedLog(log.largeEnd))})`,
        rows: 2,
        columns: COLUMNS,
        headings: usualRules.rules.length,
        headingLines: 3,
        formats: ANSWERS,
      },
      {
        name: out.logNames,
        at: `A${ALL + 4}`,
        formula: `=IF(${numbers}="","",${numbers})`,
        rows: LAST_ROW - ALL - 4,
        columns: 1,
        headings: 0,
      },
      {
        name: out.logsByRule,
        at: `B${ALL + 3}`,
        formula: `=${asTheBuyer(
          [readable(log.scalingDiameter), readable(log.scalingLength), column(LOGS, log.deduction)],
          column(LOGS, log.largeEnd),
        )}`,
        rows: LAST_ROW - ALL - 3,
        columns: COLUMNS,
        headings: usualRules.rules.length,
        headingLines: 3,
        formats: ANSWERS,
      },
    ],
  });
}

/** A log whose end or length cannot be used says so in its own row on the sheet Logs; here its row stays blank. */
const readable = (heading: string): string => `IF(ISERROR(${column(LOGS, heading)}),"",${column(LOGS, heading)})`;

/** Something of each rule's column of logs; blank beyond the rules that are shown. */
const totals = (of: (range: string) => string): readonly Formula[] =>
  allRules.rules.map((_, i) => {
    const letters = columnLetters(i + 1);
    const range = `${letters}${ALL + 4}:${letters}${ALL + 303}`;
    return { formula: `=IF(COUNT(${range})=0,"",${of(range)})` };
  });
