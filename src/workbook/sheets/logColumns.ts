import { call, column, lookedUp, thisRow } from "../formula";
import { formats } from "../formats";
import type { ColumnPlan } from "../plan";
import { BOARDS, log, LOGS, named, sawn, species, SPECIES } from "../tables";
import type { WorkbookContent } from "../workbookContent";
import { cardRange } from "./card";
import { byCardOrRule } from "./logCells";
import { boardList, millList } from "./millTables";
import { speciesCodes } from "./setup";
import { asked } from "./sheetParts";

const here = (heading: string) => thisRow(LOGS, heading);
/** Both readings of the small end, which stand side by side: an end with two is oval. */
const bothReadings = `${LOGS}[[#This Row],[${log.smallEnd}]:[${log.second}]]`;
const isBlank = (...headings: readonly string[]) => `OR(${headings.map((heading) => `${here(heading)}=""`).join(",")})`;

/** Net scale with a deduction, gross without: the same call but for that. */
function scaled(deduction: string): string {
  const measures = [here(log.scalingDiameter), here(log.scalingLength)] as const;
  const practice = [
    deduction,
    named.scaleRounding,
    named.longestLength,
    here(log.largeEnd),
    named.diameterRounding,
    named.units,
  ] as const;
  return `=${byCardOrRule(
    call("CARDSCALE", ...measures, cardRange, ...practice),
    call("LOGSCALE", ...measures, named.scaleRule, ...practice),
  )}`;
}

const insideBark = asked(4, 80, "Inches inside bark, from 4 to 80.");

export const logColumns = (content: WorkbookContent): readonly ColumnPlan[] => [
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
  { heading: log.smallEnd, width: 26, format: formats.tenth, rule: insideBark },
  { heading: log.second, width: 20, format: formats.tenth, rule: insideBark },
  { heading: log.largeEnd, width: 22, format: formats.tenth, rule: insideBark },
  {
    heading: log.length,
    width: 14,
    format: formats.hundredth,
    rule: asked(4, 60, "Feet from end to end, trim too, from 4 to 60."),
  },
  {
    heading: log.sweep,
    width: 12,
    format: formats.tenth,
    rule: asked(0, 20, "Inches out of the straight line between the ends; blank for a straight log."),
  },
  { heading: log.deduction, width: 16, format: formats.whole, rule: asked(0, 100, "Percent, 15 for 15 percent.") },
  {
    heading: log.use,
    width: 13,
    rule: { kind: "list", choices: ["Sell", "Saw"], strict: false, message: "Sell, Saw or blank." },
  },
  { heading: log.note, width: 20 },
  {
    heading: log.scalingDiameter,
    width: 20,
    format: formats.tenth,
    formula: `=${call("SCALINGDIAMETER", here(log.smallEnd), here(log.second), named.diameterRounding, named.units)}`,
  },
  {
    heading: log.scalingLength,
    width: 18,
    format: formats.tenth,
    formula: `=${call("SCALINGLENGTH", here(log.length), named.trim, named.lengthStep, named.units)}`,
  },
  { heading: log.gross, width: 11, format: formats.volume, formula: scaled("0") },
  { heading: log.net, width: 11, format: formats.volume, formula: scaled(here(log.deduction)) },
  {
    heading: log.lumber,
    width: 12,
    format: formats.volume,
    formula: `=IF(${isBlank(log.smallEnd, log.largeEnd, log.length)},"",INDEX(${call(
      "SAWYIELD",
      bothReadings,
      here(log.largeEnd),
      here(log.scalingLength),
      boardList,
      named.kerf,
      named.pattern,
      millList,
      here(log.sweep),
      named.taper,
      named.units,
    )},2,2)*${named.realized}/100)`,
  },
  {
    heading: log.overrun,
    width: 14,
    format: formats.whole,
    formula: `=IFERROR(${call("OVERRUN", here(log.lumber), here(log.net))},"")`,
  },
  {
    heading: log.sawn,
    width: 11,
    format: formats.tenth,
    formula: `=IF(OR(${here(log.log)}="",COUNTIF(${column(BOARDS, sawn.log)},${here(log.log)})=0),"",SUMIF(${column(BOARDS, sawn.log)},${here(log.log)},${column(BOARDS, sawn.boardFeet)}))`,
  },
  {
    heading: log.weight,
    width: 12,
    format: formats.volume,
    formula: `=${call(
      "LOGWEIGHT",
      here(log.smallEnd),
      here(log.largeEnd),
      here(log.length),
      lookedUp(SPECIES, species.density, species.code, here(log.species)),
      named.units,
    )}`,
  },
  { heading: log.check, width: 52, formula: logCheck() },
];

/** The first thing that looks wrong with a log, in plain words. */
function logCheck(): string {
  const both = (one: string, other: string) => `AND(${here(one)}<>"",${here(other)}<>"")`;
  const cases: readonly (readonly [test: string, sentence: string])[] = [
    [`AND(${here(log.log)}="",${here(log.smallEnd)}="")`, ""],
    [isBlank(log.log), "Give the log a number."],
    [`COUNTIF(${column(LOGS, log.log)},${here(log.log)})>1`, "This log number is used twice."],
    [isBlank(log.smallEnd, log.length), "Small end and length are needed to scale it."],
    [`ISERROR(${here(log.scalingDiameter)})`, "The small end cannot be used: the cell Scaling diameter in says why."],
    [`ISERROR(${here(log.scalingLength)})`, "The length cannot be used: the cell Scaling length ft says why."],
    [
      `AND(${here(log.deduction)}<>"",OR(NOT(ISNUMBER(${here(log.deduction)})),N(${here(log.deduction)})<0,N(${here(log.deduction)})>100))`,
      "The deduction is a percent from 0 to 100: type 15 for 15 percent.",
    ],
    [`AND(${here(log.deduction)}>0,${here(log.deduction)}<1)`, "A deduction under 1 percent: type 15 for 15 percent."],
    [
      `AND(${both(log.smallEnd, log.largeEnd)},${here(log.smallEnd)}>${here(log.largeEnd)})`,
      "The small end is thicker than the large end. Swapped?",
    ],
    [`ISERROR(${here(log.net)})`, "The rule gives no scale for it: the cell Net bf says why."],
    [
      `AND(${both(log.smallEnd, log.second)},ABS(${here(log.smallEnd)}-${here(log.second)})*5>${here(log.smallEnd)})`,
      "The two readings are far apart. Is one of them a slip?",
    ],
    [`COUNTIF(${column(SPECIES, species.code)},${here(log.species)})=0`, "The species is not in your list on Setup."],
    [isBlank(log.largeEnd), "The large end is needed to plan the sawing."],
  ];
  return `=${cases.reduceRight((otherwise, [test, sentence]) => `IF(${test},"${sentence}",${otherwise})`, '""')}`;
}
