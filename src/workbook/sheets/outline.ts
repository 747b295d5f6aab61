import { call, column } from "../formula";
import { formats } from "../formats";
import type { SheetPlan } from "../plan";
import { cornerRows, noLayout, type PointLayout } from "../pointLayout";
import { corner, named, out, OUTLINE } from "../tables";
import { LAST_ROW } from "../zones";
import { outlineSettings } from "./outlineSettings";
import { across, down, heading, sheetPlan, title } from "./sheetParts";

export const OUTLINE_SHEET = "Outline";
const FIRST = 8;
const GRID_AT = "F8";
const EAST = column(OUTLINE, corner.east);
const NORTH = column(OUTLINE, corner.north);

/** Corners of the tract and how the grid lies on it, so that anyone can lay the same points again from the seed. */
export function outlineSheet(layout: PointLayout = noLayout): SheetPlan {
  const lines = outlineSettings(layout, `B${FIRST}`);
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
