import { InvalidInput, OutOfRange } from "../basis/problem";
import { requireNotNegative, requirePositive, shown } from "../basis/require";
import type { Source } from "../basis/source";
import type { Feet } from "../basis/units";

/** A point on the map, in feet east and north of the south-west corner. */
export interface MapPoint {
  readonly east: Feet;
  readonly north: Feet;
}

const MOST_POINTS = 10_000;
/** Takes in a point that the arithmetic puts a hair outside the far edge. */
const ROUNDING = 1e-9;

export const sources: readonly Source[] = [
  {
    author: "trade habit",
    year: "",
    title: "Square grid of points",
    where: "lines walked in turn, back on the next, from one start in the corner cell",
    standing: "common practice",
  },
];

/**
 * Points of a square grid over a rectangle, in the order in which they are walked: up the first line, back down the
 * next. The start fixes them all, and must lie within the first cell; picked by chance, it makes the grid a fair draw.
 *
 * @throws InvalidInput when a measure is not above 0, the start lies outside the first cell or there would be too many
 * @throws OutOfRange when no point falls inside
 */
export function gridPoints(width: Feet, depth: Feet, spacing: Feet, start: MapPoint): MapPoint[] {
  requirePositive("Width", width, "ft");
  requirePositive("Depth", depth, "ft");
  requirePositive("Spacing", spacing, "ft");
  requireNotNegative("Start", Math.min(start.east, start.north), "ft");
  if (Math.max(start.east, start.north) > spacing) {
    throw new InvalidInput(
      "The start should lie within one spacing of the corner, or the near side would be left out.",
    );
  }
  const along = (length: number, first: number) =>
    Math.max(0, Math.floor((length * (1 + ROUNDING) - first) / spacing + 1));
  const [lines, onLine] = [along(width, start.east), along(depth, start.north)];
  if (lines * onLine === 0) throw new OutOfRange("No point falls inside; use a smaller spacing.");
  if (lines * onLine > MOST_POINTS) {
    throw new InvalidInput(`Spacing should be wider: that would be ${shown(lines * onLine)} points.`);
  }
  return Array.from({ length: lines * onLine }, (_, point) => {
    const line = Math.floor(point / onLine);
    const step = line % 2 === 0 ? point % onLine : onLine - 1 - (point % onLine);
    return { east: (start.east + line * spacing) as Feet, north: (start.north + step * spacing) as Feet };
  });
}
