import { call, column, thisRow } from "../formula";
import { formats } from "../formats";
import type { ColumnPlan } from "../plan";
import { BOARDS, log, LOGS, named, sawn, species, SPECIES } from "../tables";
import type { WorkbookContent } from "../workbookContent";
import { logNumbers } from "./logCells";
import { speciesCodes } from "./setup";
import { asked } from "./sheetParts";

const here = (heading: string) => thisRow(BOARDS, heading);

export const boardColumns = (content: WorkbookContent): readonly ColumnPlan[] => [
  { heading: sawn.date, width: 20, format: formats.date },
  {
    heading: sawn.log,
    width: 9,
    rule: { kind: "listOf", range: logNumbers, strict: false, message: "A log from the sheet Logs, or blank." },
  },
  {
    heading: sawn.species,
    width: 14,
    rule: {
      kind: "listOf",
      range: speciesCodes(content),
      strict: false,
      message: "A code from the species list on Setup.",
    },
  },
  {
    heading: sawn.thickness,
    width: 17,
    format: formats.thickness,
    rule: asked(0.25, 12, "Inches: 1.25, not 5/4, which a spreadsheet may take for a date."),
  },
  { heading: sawn.width, width: 14, format: formats.hundredth, rule: asked(1, 40, "Inches, from 1 to 40.") },
  { heading: sawn.length, width: 14, format: formats.tenth, rule: asked(1, 40, "Feet, from 1 to 40.") },
  { heading: sawn.pieces, width: 11, format: formats.whole, rule: asked(1, 10_000, "How many; blank is one.") },
  { heading: sawn.grade, width: 22 },
  { heading: sawn.stack, width: 11 },
  {
    heading: sawn.boardFeet,
    width: 15,
    format: formats.tenth,
    formula: `=${call("BOARDFEET", here(sawn.thickness), here(sawn.width), here(sawn.length), here(sawn.pieces), named.units)}`,
  },
  { heading: sawn.check, width: 48, formula: boardCheck() },
];

/** The first thing that looks wrong with a line of boards, in plain words. */
function boardCheck(): string {
  const measures = [sawn.thickness, sawn.width, sawn.length].map(here);
  const blank = measures.map((measure) => `${measure}=""`).join(",");
  const cases: readonly (readonly [test: string, sentence: string])[] = [
    [`AND(${blank})`, ""],
    [`OR(${blank})`, "Thickness, width and length are needed to measure it."],
    [`COUNT(${measures.join(",")})<>COUNTA(${measures.join(",")})`, "Type just numbers: 1.25, not a text."],
    [`MAX(${measures.join(",")})>100`, "This looks like a date or a slip: type 1.25, not 5/4."],
    [`ISERROR(${here(sawn.boardFeet)})`, "It cannot be measured: the cell Board feet says why."],
    [`${here(sawn.thickness)}>${here(sawn.width)}`, "Thicker than it is wide. Thickness and width swapped?"],
    [
      `AND(${here(sawn.log)}<>"",COUNTIF(${column(LOGS, log.log)},${here(sawn.log)})=0)`,
      "This log is not on the sheet Logs.",
    ],
    [
      `AND(${here(sawn.species)}<>"",COUNTIF(${column(SPECIES, species.code)},${here(sawn.species)})=0)`,
      "The species is not in your list on Setup.",
    ],
  ];
  return `=${cases.reduceRight((otherwise, [test, sentence]) => `IF(${test},"${sentence}",${otherwise})`, '""')}`;
}
