import { polygonContains } from "d3-polygon";
import { uniformFloat64 } from "pure-rand/distribution/uniformFloat64";
import { mersenne } from "pure-rand/generator/mersenne";
import { InvalidInput, OutOfRange } from "../basis/problem";
import type { Feet } from "../basis/units";
import { gridPoints, type MapPoint } from "./gridPoints";

/** Corners of a tract, in order around it, the last one joined to the first. */
export type Outline = readonly MapPoint[];

/**
 * A start within the first cell of a grid, picked by chance. The same seed gives the same start, so that a plan can
 * be printed again and checked by anyone who has the seed. The generator is one that spreads small seeds evenly: with
 * others the first numbers after the seeds 1, 2, 3 all lie close together.
 */
export function randomStart(spacing: Feet, seed: number): MapPoint {
  const chance = mersenne(seed);
  const somewhere = () => (uniformFloat64(chance) * spacing) as Feet;
  return { east: somewhere(), north: somewhere() };
}

/**
 * Points of a square grid that fall inside an outline, in walking order. A point outside is no point of the cruise:
 * it does not count among the plots, not even as an empty one.
 *
 * @throws InvalidInput when the outline has fewer than 3 corners, or the spacing is not above 0
 * @throws OutOfRange when no point falls inside
 */
export function gridInOutline(outline: Outline, spacing: Feet, seed: number): MapPoint[] {
  requireOutline(outline);
  const west = Math.min(...outline.map(({ east }) => east));
  const south = Math.min(...outline.map(({ north }) => north));
  const width = (Math.max(...outline.map(({ east }) => east)) - west) as Feet;
  const depth = (Math.max(...outline.map(({ north }) => north)) - south) as Feet;
  const inside = gridPoints(width, depth, spacing, randomStart(spacing, seed))
    .map(({ east, north }) => ({ east: (east + west) as Feet, north: (north + south) as Feet }))
    .filter((point) => isInside(outline, point));
  if (inside.length === 0) throw new OutOfRange("No point falls inside; use a smaller spacing.");
  return inside;
}

/** One plain sentence for a plot whose point lies outside the tract; "" for one inside. */
export function checkPoint(name: string, point: MapPoint, outline: Outline): string {
  requireOutline(outline);
  if (isInside(outline, point)) return "";
  return `Plot ${name} lies outside the tract, so it is no plot of this cruise. Take it off the plot list.`;
}

const isInside = (outline: Outline, { east, north }: MapPoint) =>
  polygonContains(
    outline.map((corner) => [corner.east, corner.north]),
    [east, north],
  );

function requireOutline(outline: Outline): void {
  if (outline.length < 3) throw new InvalidInput(`An outline needs 3 corners or more. You have ${outline.length}.`);
}
