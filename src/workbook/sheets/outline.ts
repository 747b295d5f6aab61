import { startCorners } from "../../core/cruise/startCorners";
import { call, column } from "../formula";
import { formats } from "../formats";
import type { EntryRule, PlannedCell, SheetPlan } from "../plan";
import { cornerRows, noLayout, type PointLayout } from "../pointLayout";
import { corner, named, out, OUTLINE } from "../tables";
import { LAST_ROW } from "../zones";
import { across, asked, down, heading, sheetPlan, title } from "./sheetParts";

export const OUTLINE_SHEET = "Outline";
const FIRST = 8;
const GRID_AT = "F8";
const EAST = column(OUTLINE, corner.east);
const NORTH = column(OUTLINE, corner.north);

interface Line {
  readonly label: string;
  readonly unit: string;
  readonly comment: string;
  readonly cell: PlannedCell;
  readonly name?: string;
  readonly format?: string;
  readonly rule?: EntryRule;
}

/** Corners of the tract and how the grid lies on it, so that anyone can lay the same points again from the seed. */
export function outlineSheet(layout: PointLayout = noLayout): SheetPlan {
  const lines = linesOf(layout);
  const tableAt = FIRST + lines.length + 3;
  return sheetPlan({
    name: OUTLINE_SHEET,
    sheetClass: "foundation",
    frozenRows: 0,
    widths: [26, 16, 12, 70, 3, 10, 12, 12],
    blocks: [
      title("Outline"),
      down("A2", "Note", [
        "The view Lay out points writes this sheet: the corners of the tract in feet east and north of 0, 0, and the grid on it.",
        "The seed picked the start by chance and is kept here. The same seed, spacing and bearing give the same points; nothing here draws anew.",
        "A corner that is changed here does not move the points on the sheet Points. Lay them out again in the pane.",
        "Distances are level and at the height of the sea; 3,000 ft up the ground is 1 in 7,000 longer.",
      ]),
      across(`A${FIRST - 1}`, "Heading", ["Setting", "Value", "Unit", "What it is"]),
      down(
        `A${FIRST}`,
        "Computed",
        lines.map(({ label }) => label),
      ),
      ...lines.map(({ cell, name, format }, at) =>
        down(`B${FIRST + at}`, name === undefined ? "Computed" : "Input", [cell], format),
      ),
      down(
        `C${FIRST}`,
        "Unit",
        lines.map(({ unit }) => unit),
      ),
      down(
        `D${FIRST}`,
        "Note",
        lines.map(({ comment }) => comment),
      ),
      heading("F7", "Points that this grid has", 3),
    ],
    names: lines.flatMap(({ name }, at) => (name === undefined ? [] : [{ name, at: `B${FIRST + at}` }])),
    entryRules: lines.flatMap(({ rule }, at) => (rule === undefined ? [] : [{ at: `B${FIRST + at}`, rule }])),
    tables: [
      {
        name: OUTLINE,
        at: `A${tableAt}`,
        columns: [
          { heading: corner.corner, width: 26, format: formats.whole },
          { heading: corner.east, width: 16, format: formats.tenth },
          { heading: corner.north, width: 12, format: formats.tenth },
        ],
        rows: cornerRows(layout),
      },
    ],
    spills: [
      {
        name: out.grid,
        at: GRID_AT,
        formula: `=IF(OR(COUNT(${EAST})<3,${named.spacing}=""),"",${call("GRIDINOUTLINE", EAST, NORTH, named.spacing, named.seed, named.linesBearing, named.walkFrom)})`,
        rows: LAST_ROW - FIRST,
        columns: 3,
        formats: [formats.whole, formats.tenth, formats.tenth],
      },
    ],
  });
}

function linesOf(layout: PointLayout): readonly Line[] {
  const acres = `IF(COUNT(${EAST})<3,"",${call("OUTLINEACRES", EAST, NORTH)})`;
  const acresAt = `B${FIRST}`;
  return [
    {
      label: "Acres of the outline",
      unit: "ac",
      comment: "From the corners below.",
      cell: { formula: `=${acres}` },
      format: formats.hundredth,
    },
    {
      label: "Against the acres on Setup",
      unit: "pct",
      comment: "How much larger the outline is. More than a few percent: one of the two is wrong.",
      cell: {
        formula: `=IF(OR(${acresAt}="",${named.acres}=""),"",100*(${acresAt}/${named.acres}-1))`,
      },
      format: formats.tenth,
    },
    {
      label: "Spacing",
      unit: "ft",
      comment: "Between points, and between lines.",
      name: named.spacing,
      cell: layout.spacing,
      format: formats.tenth,
      rule: asked(10, 5000, "Feet, from 10 to 5000."),
    },
    {
      label: "Seed",
      unit: "",
      comment: "Any whole number, taken before the map is seen; it picks the start.",
      name: named.seed,
      cell: layout.seed,
      format: formats.whole,
    },
    {
      label: "Lines run towards",
      unit: "degrees",
      comment: "From north over east. Across the drains, so that each line meets high and low ground.",
      name: named.linesBearing,
      cell: layout.bearing,
      format: formats.general,
      rule: asked(0, 360, "Degrees from north over east, 0 to 360."),
    },
    {
      label: "Walk from",
      unit: "",
      comment: "Corner of the tract where the walk begins.",
      name: named.walkFrom,
      cell: layout.from,
      rule: {
        kind: "list",
        choices: startCorners.map((one) => one.title),
        strict: true,
        message: "One of the four corners of the map.",
      },
    },
    {
      label: "Start from corner",
      unit: "",
      comment: "Corner in the list below from which the first point is found.",
      name: named.startCorner,
      cell: layout.startCorner,
      format: formats.whole,
    },
    {
      label: "Needle points east by",
      unit: "degrees",
      comment: "Declination of your compass; west is below 0. 0 when you set it off on the compass itself.",
      name: named.declination,
      cell: layout.declination,
      format: formats.general,
      rule: asked(-180, 180, "Degrees, west below 0."),
    },
    {
      label: "Your pace",
      unit: "ft",
      comment: "Walk a taped 100 ft of such ground and divide by your paces. Blank: none are told.",
      name: named.pace,
      cell: layout.pace,
      format: formats.hundredth,
      rule: asked(1, 10, "Feet, from 1 to 10."),
    },
    {
      label: "Latitude of 0, 0",
      unit: "degrees",
      comment: "North is above 0. Blank when the outline was measured from a corner.",
      name: named.latitude,
      cell: layout.latitude,
      format: "0.000000",
    },
    {
      label: "Longitude of 0, 0",
      unit: "degrees",
      comment: "West is below 0. WGS 84, as satellite receivers give it.",
      name: named.longitude,
      cell: layout.longitude,
      format: "0.000000",
    },
    {
      label: "Outline from",
      unit: "",
      comment: "How the corners were measured.",
      name: named.outlineFrom,
      cell: layout.source === "" ? null : layout.source,
    },
  ];
}
