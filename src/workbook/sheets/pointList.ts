import { formats } from "../formats";
import { column } from "../formula";
import type { PlannedCell, SheetPlan } from "../plan";
import { corner, named, OUTLINE, plot, PLOTS } from "../tables";
import { across, down, quoted, sheetPlan, title } from "./sheetParts";

export const POINT_LIST = "Point list";
export const MOVE_NOTHING =
  "Do not move a point because it looks poor. Where it falls is where it counts: openings, wet ground and brush are part of the woods.";

const HEADING_ROW = 8;
const FIRST = HEADING_ROW + 1;
const FEET_PER_CHAIN = 66;

const headings = [
  "Order",
  "Point",
  "East ft",
  "North ft",
  "Bearing to next",
  "By compass",
  "Feet to next",
  "Chains",
  "Paces",
  "Found",
  "Note",
] as const;

/**
 * The points to print and take along, in walking order, with the way from each to the next. Native formulas only, so
 * the sheet works where the add-in does not.
 *
 * @param points rows of the table of plots that there are, or will be
 */
export function pointListSheet(points: number): SheetPlan {
  const rows = Array.from({ length: points }, (_, at) => at);
  const first = FIRST;
  const last = FIRST + points;
  return sheetPlan({
    name: POINT_LIST,
    sheetClass: "presentation",
    frozenRows: HEADING_ROW,
    printTitleRow: HEADING_ROW,
    landscape: true,
    widths: [7, 11, 10, 10, 11, 11, 9, 9, 8, 8, 34],
    blocks: [
      title(POINT_LIST),
      down("A2", "Linked", [{ formula: `=${named.stand}` }]),
      down("A3", "Computed", [{ formula: gridInWords() }, { formula: northInWords() }]),
      down("A5", "Note", [
        MOVE_NOTHING,
        "Bearings in degrees from north over east, distances level. Paces are for one who walks as on Outline.",
      ]),
      { ...across(`A${HEADING_ROW}`, "Heading", headings), lines: [2] },
      across(`A${first}`, "Computed", [null, { formula: startName() }]),
      ...(points > 0
        ? [
            down(
              `A${first + 1}`,
              "Computed",
              rows.map((at) => at + 1),
            ),
            down(
              `B${first + 1}`,
              "Linked",
              rows.map((at) => ({ formula: ofPlots(plot.plot, at) })),
            ),
          ]
        : []),
      ...placeBlocks(points),
      ...wayBlocks(first, last),
      { ...across(`J${first}`, "Input", [null, null]), cells: [...rows, 0].map(() => [null, null]) },
    ],
  });
}

/** Row of the table of plots, blank beyond its end and while it has no place. */
const ofPlots = (wanted: string, at: number): string => {
  const cell = (name: string) => `INDEX(${column(PLOTS, name)},${at + 1})`;
  return `=IF(ROWS(${column(PLOTS, plot.plot)})<${at + 1},"",IF(${cell(plot.east)}="","",${cell(wanted)}))`;
};

const startName = () => `=IF(${named.startCorner}="","","Corner "&${named.startCorner})`;
const ofStart = (wanted: string) =>
  `=IF(${named.startCorner}="","",INDEX(${column(OUTLINE, wanted)},${named.startCorner}))`;

function placeBlocks(points: number) {
  const places = (letter: string, inPlots: string, inOutline: string) =>
    down(
      `${letter}${FIRST}`,
      "Linked",
      [
        { formula: ofStart(inOutline) },
        ...Array.from({ length: points }, (_, at) => ({ formula: ofPlots(inPlots, at) })),
      ],
      formats.whole,
    );
  return [places("C", plot.east, corner.east), places("D", plot.north, corner.north)];
}

/** From each row to the one below it; the last row leads nowhere. */
function wayBlocks(first: number, last: number) {
  const rows = Array.from({ length: last - first }, (_, at) => first + at);
  const east = (row: number) => `C${row + 1}-C${row}`;
  const north = (row: number) => `D${row + 1}-D${row}`;
  const ways: readonly (readonly [string, (row: number) => PlannedCell, string])[] = [
    [
      "E",
      (row) => ({
        formula: `=IF(OR(C${row}="",C${row + 1}="",AND(C${row}=C${row + 1},D${row}=D${row + 1})),"",MOD(DEGREES(ATAN2(${north(row)},${east(row)})),360))`,
      }),
      formats.whole,
    ],
    ["F", (row) => ({ formula: `=IF(ISNUMBER(E${row}),MOD(E${row}-${named.declination},360),"")` }), formats.whole],
    ["G", (row) => ({ formula: `=IF(ISNUMBER(E${row}),SQRT((${east(row)})^2+(${north(row)})^2),"")` }), formats.whole],
    ["H", (row) => ({ formula: `=IF(ISNUMBER(G${row}),G${row}/${FEET_PER_CHAIN},"")` }), formats.hundredth],
    [
      "I",
      (row) => ({ formula: `=IF(AND(ISNUMBER(G${row}),ISNUMBER(${named.pace})),G${row}/${named.pace},"")` }),
      formats.whole,
    ],
  ];
  return rows.length === 0
    ? []
    : ways.map(([letter, cell, format]) => down(`${letter}${first}`, "Computed", rows.map(cell), format));
}

const gridInWords = () =>
  `=IF(${named.spacing}="",${quoted("No points are laid out yet: use Lay out points in the pane.")},"Square grid of "&${named.spacing}&" ft, lines towards "&${named.linesBearing}&" degrees, start picked by seed "&${named.seed}&".")`;

const northInWords = () =>
  `=IF(${named.latitude}="","North is the north of the outline.","0, 0 lies at "&TEXT(${named.latitude},"0.00000")&", "&TEXT(${named.longitude},"0.00000")&" (WGS 84); north is true north.")`;
