import { call } from "../formula";
import type { SheetPlan } from "../plan";
import { named } from "../tables";
import { across, down, quoted, sheetPlan, title } from "./sheetParts";

export const SOURCES = "Sources and cautions";

const cautions = [
  "Estimate",
  "Felling",
  "Sawing",
  "Ungraded lumber",
  "Forester",
  "Tax",
  "Contracts",
  "Prices",
] as const;

/** What the workbook computes, and the topic under which its sources are known. */
const topics: readonly { readonly what: string; readonly topic: string; readonly name: string }[] = [
  { what: "Log rule in use", topic: named.rule, name: "Out_Source_Rule" },
  { what: "Volume of standing trees", topic: quoted("TREEVOLUME"), name: "Out_Source_Trees" },
  { what: "Lumber from standing trees", topic: quoted("TREELUMBER"), name: "Out_Source_Lumber" },
  { what: "Stand, margins and tract", topic: quoted("STANDSUMMARY"), name: "Out_Source_Stand" },
  { what: "Sawing plan", topic: quoted("SAWPLAN"), name: "Out_Source_Sawing" },
  { what: "Value ranges", topic: quoted("VALUERANGE"), name: "Out_Source_Value" },
];

const FIRST = 15;
/** Rows kept for one topic: its heading, the answer's heading and its sources. */
const ROOM = 16;
const COLUMNS = 7;

/** Where the methods come from, and what to beware of. */
export function sourcesSheet(): SheetPlan {
  const rowOf = (i: number) => FIRST + i * ROOM;

  return sheetPlan({
    name: SOURCES,
    sheetClass: "control",
    landscape: true,
    frozenRows: 1,
    widths: [34, 10, 60, 44, 40, 18, 18],
    blocks: [
      title(SOURCES),
      across("A3", "Heading", ["Caution", "Words"]),
      down("A4", "Computed", cautions),
      down(
        "B4",
        "Note",
        cautions.map((topic) => ({ formula: `=${call("CAUTIONOF", quoted(topic))}` })),
      ),
      ...topics.map(({ what }, i) => across(`A${rowOf(i)}`, "Heading", [what])),
    ],
    spills: topics.map(({ topic, name }, i) => ({
      name,
      at: `A${rowOf(i) + 1}`,
      formula: `=${call("SOURCEOF", topic)}`,
      rows: ROOM - 2,
      columns: COLUMNS,
    })),
  });
}
