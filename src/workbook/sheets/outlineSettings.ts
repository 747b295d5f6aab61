import { startCorners } from "../../core/cruise/startCorners";
import { call, column } from "../formula";
import { formats } from "../formats";
import type { EntryRule, PlannedCell } from "../plan";
import type { PointLayout } from "../pointLayout";
import { corner, named, OUTLINE } from "../tables";
import { asked } from "./sheetParts";

const EAST = column(OUTLINE, corner.east);
const NORTH = column(OUTLINE, corner.north);

/** A line above the corners: how the grid lies on the tract, or what follows from the outline. */
export interface OutlineSetting {
  readonly label: string;
  readonly unit: string;
  readonly comment: string;
  readonly cell: PlannedCell;
  readonly name?: string;
  readonly format?: string;
  readonly rule?: EntryRule;
}

/** @param acresAt the cell that will hold the acres of the outline, the first of these lines */
export function outlineSettings(layout: PointLayout, acresAt: string): readonly OutlineSetting[] {
  const acres = `IF(COUNT(${EAST})<3,"",${call("OUTLINEACRES", EAST, NORTH)})`;
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
