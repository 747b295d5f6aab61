import { uniformFloat64 } from "pure-rand/distribution/uniformFloat64";
import { mersenne } from "pure-rand/generator/mersenne";
import { InvalidInput, OutOfRange } from "../basis/problem";
import { requireBetween, shown } from "../basis/require";
import { feet, type Feet } from "../basis/units";
import { gridPoints, type MapPoint } from "./gridPoints";
import { isInside, requireOutline, type Outline } from "./outline";
import { southWest, type StartCorner } from "./startCorners";

/** How a grid lies on a tract. */
export interface GridLayout {
  /** Between points, and between lines. [ft] */
  readonly spacing: Feet;
  /** Picks the start by chance: the same seed, the same points. */
  readonly seed: number;
  /** Direction of the lines from north over east, in degrees; 0 runs north and south. */
  readonly bearing?: number;
  /** Where the walk begins. */
  readonly from?: StartCorner;
}

const LARGEST_SEED = 2 ** 31 - 1;

/**
 * A start within the first cell of a grid, picked by chance. The same seed gives the same start, so that a plan can
 * be printed again and checked by anyone who has the seed. The generator is one that spreads small seeds evenly: with
 * others the first numbers after the seeds 1, 2, 3 all lie close together.
 *
 * @throws InvalidInput when the seed is not a whole number of 0 or more
 */
export function randomStart(spacing: Feet, seed: number): MapPoint {
  if (!Number.isInteger(seed) || seed < 0 || seed > LARGEST_SEED) {
    throw new InvalidInput(`The seed should be a whole number from 0 to ${LARGEST_SEED}. You have ${shown(seed)}.`);
  }
  const chance = mersenne(seed);
  const somewhere = () => (uniformFloat64(chance) * spacing) as Feet;
  return { east: somewhere(), north: somewhere() };
}

/**
 * Points of a square grid that fall inside an outline, in walking order: along one line, back along the next. A point
 * outside is no point of the cruise: it does not count among the plots, not even as an empty one. A grid at an angle
 * is a grid over the outline turned the other way, so it has the same chances everywhere.
 *
 * @throws InvalidInput when the outline cannot be used, the spacing is not above 0 or the bearing not from 0 to 360
 * @throws OutOfRange when no point falls inside
 */
export function gridInOutline(
  outline: Outline,
  { spacing, seed, bearing = 0, from = southWest }: GridLayout,
): MapPoint[] {
  requireOutline(outline);
  requireBetween("Bearing of the lines", bearing, 0, 360, "degrees");
  const turned = outline.map((corner) => turn(corner, -bearing));
  const west = Math.min(...turned.map(({ east }) => east));
  const south = Math.min(...turned.map(({ north }) => north));
  const width = feet(Math.max(...turned.map(({ east }) => east)) - west);
  const depth = feet(Math.max(...turned.map(({ north }) => north)) - south);
  const lines = new Map<number, MapPoint[]>();
  for (const { east, north } of gridPoints(width, depth, spacing, randomStart(spacing, seed))) {
    const point = { east: feet(east + west), north: feet(north + south) };
    if (isInside(turned, point)) lines.set(east, [...(lines.get(east) ?? []), point]);
  }
  if (lines.size === 0) throw new OutOfRange("No point falls inside; use a smaller spacing.");
  const upright = [...lines.values()].map((line) =>
    [...line].sort((one, other) => one.north - other.north).map((point) => turn(point, bearing)),
  );
  return walkFrom(upright, from);
}

/** Of the four ways to walk the lines to and fro, the one that begins nearest to a corner. */
function walkFrom(lines: readonly (readonly MapPoint[])[], { east, north }: StartCorner): MapPoint[] {
  const toAndFro = (ordered: readonly (readonly MapPoint[])[], back: number) =>
    ordered.flatMap((line, at) => (at % 2 === back ? line : [...line].reverse()));
  const reversed = [...lines].reverse();
  const ways = [toAndFro(lines, 0), toAndFro(lines, 1), toAndFro(reversed, 0), toAndFro(reversed, 1)];
  const reach = ([first]: readonly MapPoint[]) => (first ? east * first.east + north * first.north : -Infinity);
  return ways.reduce((best, way) => (reach(way) > reach(best) + TIE ? way : best));
}

/** Ways that begin equally near are told apart by their order, not by the last digit. [ft] */
const TIE = 1e-6;

/** A point turned about 0, 0, clockwise as bearings count. [degrees] */
function turn({ east, north }: MapPoint, degrees: number): MapPoint {
  if (degrees === 0) return { east, north };
  const angle = (degrees * Math.PI) / 180;
  const [sine, cosine] = [Math.sin(angle), Math.cos(angle)];
  return { east: feet(east * cosine + north * sine), north: feet(north * cosine - east * sine) };
}

/** One plain sentence for a plot whose point lies outside the tract; "" for one inside. */
export function checkPoint(name: string, point: MapPoint, outline: Outline): string {
  requireOutline(outline);
  if (isInside(outline, point)) return "";
  return `Plot ${name} lies outside the tract, so it is no plot of this cruise. Take it off the plot list.`;
}
