import { tallyMeasures } from "../../core/lumber/tallyMeasure";
import { call, column } from "../formula";
import { formats } from "../formats";
import type { PlannedCell, SheetPlan } from "../plan";
import { BOARDS, log, LOGS, named, out, sawn } from "../tables";
import type { WorkbookContent } from "../workbookContent";
import { LAST_ROW } from "../zones";
import { boardColumns } from "./boardColumns";
import { across, cautionLine, down, heading, sheetPlan, title } from "./sheetParts";

export const BOARDS_SHEET = "Boards";
const HEADINGS = 8;
/** Beside the table, so that both can grow. */
const TALLY_AT = "M8";

/** What the tally can be gathered by, besides the size. */
const groups = [sawn.stack, sawn.log, sawn.species, sawn.grade] as const;
const SIZE = "Size";

/** Boards that were sawn, line by line, and their tally by the measure that is named above it. */
export function boardsSheet(content: WorkbookContent): SheetPlan {
  const columns = boardColumns(content);
  return sheetPlan({
    name: BOARDS_SHEET,
    sheetClass: "foundation",
    landscape: true,
    frozenRows: HEADINGS,
    printTitleRow: HEADINGS,
    widths: [...columns.map(({ width }) => width), 3, 24, 10, 26],
    blocks: [
      title(BOARDS_SHEET),
      down("A2", "Note", [
        cautionLine("Ungraded lumber"),
        "Type inches, inches, feet; 1.25 for five quarters, since a spreadsheet may turn 5/4 into a date. A blank Pieces is one board.",
      ]),
      across("A4", "Heading", ["Tally measured", null, null, "Tally by"]),
      down("A5", "Input", [tallyMeasures[0]?.title ?? ""]),
      down("D5", "Input", [SIZE]),
      down("F4", "Note", [
        "As given, as in the column Board feet: nominal sizes give nominal board feet, actual sizes actual ones.",
        "Softwood nominal: under 1 in counts as 1 in. Hardwood: whole square feet of surface measure, times thickness.",
      ]),
      heading("M3", "Boards beside the scale of the logs they came from", 3),
      across("M4", "Heading", ["Boards bf", "Net scale bf", { formula: `="Overrun pct over "&${named.scaleRule}` }]),
      {
        at: "M5",
        cells: [[sumOf(log.sawn), sumOf(log.net)]],
        style: "Linked",
        format: formats.volume,
      },
      heading("M7", { formula: `="Tally of all boards, by "&LOWER(${named.tallyBy})` }, 3),
    ],
    names: [
      { name: named.boardMeasure, at: "A5" },
      { name: named.tallyBy, at: "D5" },
    ],
    entryRules: [
      {
        at: "A5",
        rule: {
          kind: "list",
          choices: tallyMeasures.map((measure) => measure.title),
          strict: true,
          message: "How the boards are counted.",
        },
      },
      {
        at: "D5",
        rule: { kind: "list", choices: [SIZE, ...groups], strict: true, message: "What the boards are gathered by." },
      },
    ],
    tables: [{ name: BOARDS, at: `A${HEADINGS}`, columns, rows: content.sawn }],
    spills: [
      {
        name: out.boards,
        at: TALLY_AT,
        formula: `=${groups.reduceRight(
          (otherwise, group) => `IF(${named.tallyBy}="${group}",${tallyBy(column(BOARDS, group))},${otherwise})`,
          tallyBy('""'),
        )}`,
        rows: LAST_ROW - HEADINGS,
        columns: 3,
        formats: [formats.general, formats.whole, formats.tenth],
      },
      {
        name: out.boardOverrun,
        at: "O5",
        formula: `=IF(N5=0,"",${call("OVERRUN", "M5", "N5")})`,
        rows: 1,
        columns: 1,
        formats: [formats.whole],
      },
    ],
  });
}

/**
 * Sum of a column of the logs that boards were tallied from; board feet of no log count for nothing here, nor does a log
 * that could not be scaled.
 */
const sumOf = (heading: string): PlannedCell => ({
  formula: `=SUMIFS(${column(LOGS, heading)},${column(LOGS, log.sawn)},">0",${column(LOGS, log.net)},">=0")`,
});

const tallyBy = (group: string) =>
  call(
    "BOARDTALLY",
    column(BOARDS, sawn.thickness),
    column(BOARDS, sawn.width),
    column(BOARDS, sawn.length),
    column(BOARDS, sawn.pieces),
    group,
    named.boardMeasure,
    named.units,
  );
