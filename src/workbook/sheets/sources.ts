import { cautions } from "../../core/reference/cautions";
import { call } from "../formula";
import type { SheetPlan } from "../plan";
import { named } from "../tables";
import { across, quoted, sheetPlan, title } from "./sheetParts";

export const SOURCES = "Sources and cautions";

/** What the workbook computes, and the topic under which its sources are known. */
const topics: readonly { readonly what: string; readonly topic: string; readonly name: string }[] = [
  { what: "Log rule in use", topic: named.rule, name: "Out_Source_Rule" },
  { what: "Volume of standing trees", topic: quoted("TREEVOLUME"), name: "Out_Source_Trees" },
  { what: "Lumber from standing trees", topic: quoted("TREELUMBER"), name: "Out_Source_Lumber" },
  { what: "Stand, margins and tract", topic: quoted("STANDSUMMARY"), name: "Out_Source_Stand" },
  { what: "Sawing plan", topic: quoted("SAWPLAN"), name: "Out_Source_Sawing" },
  { what: "Value ranges", topic: quoted("VALUERANGE"), name: "Out_Source_Value" },
];

const FIRST = 4 + cautions.length + 2;
/** Rows kept for one topic: its heading, the answer's heading and its sources. */
const ROOM = 24;
const COLUMNS = 6;

/** Where the methods come from, and what to beware of. */
export function sourcesSheet(): SheetPlan {
  const rowOf = (i: number) => FIRST + i * ROOM;

  return sheetPlan({
    name: SOURCES,
    sheetClass: "control",
    landscape: true,
    frozenRows: 1,
    widths: [34, 8, 90, 60, 16, 40],
    blocks: [
      title(SOURCES),
      across("A3", "Heading", ["Caution", null, "In full"]),
      {
        at: "A4",
        cells: cautions.map((caution) => [caution.title]),
        style: "Computed",
        wrapped: true,
      },
      {
        at: "C4",
        cells: cautions.map((caution) => [{ formula: `=${call("CAUTIONOF", quoted(caution.title))}` }]),
        style: "Note",
        wrapped: true,
      },
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
