import { logRules } from "../../core/log/rules";
import { cautions } from "../../core/reference/cautions";
import { topics } from "../../core/value/topics";
import { call } from "../formula";
import type { SheetPlan } from "../plan";
import { named } from "../tables";
import { across, heading, quoted, sheetPlan, title } from "./sheetParts";

export const SOURCES = "Sources and cautions";

interface Question {
  readonly what: string;
  /** How a formula names the topic. */
  readonly topic: string;
  readonly name: string;
  /** Most sources that the answer can have. */
  readonly sources: number;
}

const functionTopics = [
  ["Volume of standing trees", "TREEVOLUME", "Out_Source_Trees"],
  ["Lumber from standing trees", "TREELUMBER", "Out_Source_Lumber"],
  ["Stand, margins and tract", "STANDSUMMARY", "Out_Source_Stand"],
  ["Diameters to whole inches", "SCALINGDIAMETER", "Out_Source_Diameters"],
  ["Scaling lengths and trim", "SCALINGLENGTH", "Out_Source_Lengths"],
  ["Deductions for defect", "TOTALDEDUCTION", "Out_Source_Deductions"],
  ["Overrun", "OVERRUN", "Out_Source_Overrun"],
  ["Tally of boards", "BOARDTALLY", "Out_Source_Boards"],
  ["Sawing plan", "SAWPLAN", "Out_Source_Sawing"],
  ["Value ranges", "VALUERANGE", "Out_Source_Value"],
] as const;

const MOST_OF_A_RULE = Math.max(...logRules.map((rule) => rule.sources.length));

/** What the workbook computes, and the topics under which the sources are known. */
const questions: readonly Question[] = [
  {
    what: "Log rule of the trees",
    topic: named.rule,
    name: "Out_Source_Rule",
    sources: MOST_OF_A_RULE,
  },
  {
    what: "Log rule of the scale sheet",
    topic: named.scaleRule,
    name: "Out_Source_Scale_Rule",
    sources: MOST_OF_A_RULE,
  },
  ...functionTopics.map(([what, topic, name]) => ({
    what,
    topic: quoted(topic),
    name,
    sources: topics.find((one) => one.title === topic)?.sources.length ?? 0,
  })),
];

const FIRST = 4 + cautions.length + 2;
const COLUMNS = 6;
/** Width of the column of titles and cautions, in characters. */
const WIDE = 90;

/** Where the methods come from, and what to beware of. */
export function sourcesSheet(): SheetPlan {
  const full = (caution: (typeof cautions)[number]) => `${caution.line} ${caution.text}`;
  const rows: number[] = [];
  questions.reduce((row, { sources }) => {
    rows.push(row);
    return row + 1 + zoneRows(sources) + 1;
  }, FIRST);

  return sheetPlan({
    name: SOURCES,
    sheetClass: "control",
    landscape: true,
    frozenRows: 1,
    widths: [34, 8, WIDE, 60, 16, 40],
    blocks: [
      title(SOURCES),
      across("A3", "Heading", ["Caution", null, "In full"]),
      {
        at: "A4",
        cells: cautions.map((caution) => [caution.title]),
        style: "Computed",
        lines: cautions.map((caution) => Math.ceil(full(caution).length / (0.9 * WIDE))),
      },
      {
        at: "C4",
        cells: cautions.map((caution) => [{ formula: `=${call("CAUTIONOF", quoted(caution.title))}` }]),
        style: "Note",
        lines: [],
      },
      ...questions.map(({ what }, i) => heading(`A${rows[i]}`, what, COLUMNS)),
    ],
    spills: questions.map(({ topic, name, sources }, i) => ({
      name,
      at: `A${(rows[i] ?? FIRST) + 1}`,
      formula: `=${call("SOURCEOF", topic)}`,
      rows: zoneRows(sources),
      columns: COLUMNS,
    })),
  });
}

/** A row of headings, the sources, and two to spare. */
const zoneRows = (sources: number) => sources + 3;
