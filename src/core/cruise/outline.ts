import { polygonArea, polygonContains } from "d3-polygon";
import { InvalidInput } from "../basis/problem";
import type { Source } from "../basis/source";
import { acres, type Acres } from "../basis/units";
import type { MapPoint } from "./gridPoints";

/** Corners of a tract, in order around it, the last one joined to the first. */
export type Outline = readonly MapPoint[];

const SQUARE_FEET_PER_ACRE = 43_560;
/** A track from a satellite receiver has a corner every few steps; beyond this it is thinned first. */
export const MOST_CORNERS = 5000;
/** Corners nearer to each other than this are one corner. A choice of ours. [ft] */
const SAME_CORNER = 0.01;

/**
 * The same corners without those that repeat the one before, and without the first again at the end, as many files
 * close a line.
 */
export function withoutRepeats(corners: Outline): Outline {
  const kept = corners.filter((corner, at) => at === 0 || !same(corner, corners[at - 1] as MapPoint));
  const [first, last] = [kept[0], kept.at(-1)];
  return kept.length > 1 && first && last && same(first, last) ? kept.slice(0, -1) : kept;
}

const same = (one: MapPoint, other: MapPoint) =>
  Math.hypot(one.east - other.east, one.north - other.north) < SAME_CORNER;

/**
 * Level area inside an outline, by the sum of cross products of its corners.
 *
 * @throws InvalidInput when the outline has fewer than 3 corners, too many, no area, or sides that cross
 */
export function outlineAcres(outline: Outline): Acres {
  requireOutline(outline);
  return acres(Math.abs(polygonArea(pairs(outline))) / SQUARE_FEET_PER_ACRE);
}

/** True for a point inside; one on the line itself may fall either way. */
export const isInside = (outline: Outline, { east, north }: MapPoint): boolean =>
  polygonContains(pairs(outline), [east, north]);

/**
 * @throws InvalidInput when the outline has fewer than 3 corners, too many, no area, or sides that cross
 */
export function requireOutline(outline: Outline): void {
  if (outline.length < 3) throw new InvalidInput(`An outline needs 3 corners or more. You have ${outline.length}.`);
  if (outline.length > MOST_CORNERS) {
    throw new InvalidInput(
      `An outline may have ${MOST_CORNERS} corners at most. You have ${outline.length}; thin the track out first.`,
    );
  }
  const crossing = sidesThatCross(outline);
  if (crossing) {
    const [one, other] = crossing.map((side) => side + 1);
    throw new InvalidInput(
      `The sides that begin at corners ${one} and ${other} cross each other. List the corners in order around the tract.`,
    );
  }
  if (Math.abs(polygonArea(pairs(outline))) < 1) {
    throw new InvalidInput("The corners lie in one line, so the outline holds no area.");
  }
}

/** The first two sides that cross, by the corners they begin at, counted from 0; undefined when none do. */
export function sidesThatCross(outline: Outline): readonly [number, number] | undefined {
  const count = outline.length;
  const corner = (at: number) => outline[at % count] as MapPoint;
  for (let one = 0; one < count; one += 1) {
    const [from, to] = [corner(one), corner(one + 1)];
    for (let other = one + 2; other < count; other += 1) {
      if (one === 0 && other === count - 1) continue; // they meet at the first corner
      if (crossingOf(from, to, corner(other), corner(other + 1))) return [one, other];
    }
  }
  return undefined;
}

/** Where two lines between corners cross within both; undefined when they do not. */
export function crossingOf(from: MapPoint, to: MapPoint, start: MapPoint, end: MapPoint): MapPoint | undefined {
  const [east, north] = [to.east - from.east, to.north - from.north];
  const [otherEast, otherNorth] = [end.east - start.east, end.north - start.north];
  const turn = east * otherNorth - north * otherEast;
  if (turn === 0) return undefined;
  const [gapEast, gapNorth] = [start.east - from.east, start.north - from.north];
  const along = (gapEast * otherNorth - gapNorth * otherEast) / turn;
  const alongOther = (gapEast * north - gapNorth * east) / turn;
  if (along <= 0 || along >= 1 || alongOther <= 0 || alongOther >= 1) return undefined;
  // Lines that meet at a corner do not cross, whatever the last digit says.
  if ([from, to].some((corner) => isAt(corner, start) || isAt(corner, end))) return undefined;
  return { east: from.east + along * east, north: from.north + along * north } as MapPoint;
}

const isAt = (one: MapPoint, other: MapPoint) => one.east === other.east && one.north === other.north;

const pairs = (outline: Outline) => outline.map(({ east, north }): [number, number] => [east, north]);

export const sources: readonly Source[] = [
  {
    author: "Geometry",
    year: "",
    title: "Area of a polygon",
    where: "half the sum of the cross products of neighbouring corners",
    standing: "computed",
  },
];
