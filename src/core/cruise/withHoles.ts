import { InvalidInput } from "../basis/problem";
import type { MapPoint } from "./gridPoints";
import { crossingOf, isInside, type Outline } from "./outline";

/** Nearer to a line than this, a corner lies on it. A choice of ours. [ft] */
const ON_THE_LINE = 1e-6;

/**
 * An outline with land taken out of it, such as a pond or a neighbour's lot, as one line of corners: from a corner of
 * the outline to the hole, around it the other way, and back along the same line. So the sum of cross products is the
 * area less the holes, and a point in a hole is outside, by the very arithmetic that serves a plain outline.
 *
 * The hole that reaches farthest east is joined first, by its eastern corner: from there some corner of the outline is
 * always in plain sight, as in the cutting of polygons into triangles.
 *
 * @throws InvalidInput when a hole has fewer than 3 corners, lies outside, or crosses the outline or another hole
 */
export function withHoles(outer: Outline, holes: readonly Outline[]): Outline {
  for (const [at, hole] of holes.entries()) requireHole(outer, hole, holes.slice(0, at));
  const eastward = [...holes].sort((one, other) => eastOf(other) - eastOf(one));
  return eastward.reduce((ring, hole, at) => joined(ring, hole, eastward.slice(at + 1)), outer);
}

function joined(ring: Outline, hole: Outline, others: readonly Outline[]): Outline {
  const first = hole.findIndex(({ east }) => east === eastOf(hole));
  const start = hole[first] as MapPoint;
  const rings = [ring, hole, ...others];
  const nearest = ring
    .map((corner, at) => ({ at, corner, away: Math.hypot(corner.east - start.east, corner.north - start.north) }))
    .sort((one, other) => one.away - other.away)
    .find(({ corner }) => rings.every((one) => inSight(start, corner, one)));
  if (!nearest) throw new InvalidInput("A hole of the outline could not be joined to it. Paste the outline alone.");
  const around = [...hole.slice(first), ...hole.slice(0, first), start];
  // The hole goes the other way round than the outline, or it would add its area.
  const wayRound = isClockwise(around) === isClockwise(ring) ? around.reverse() : around;
  return [...ring.slice(0, nearest.at + 1), ...wayRound, ...ring.slice(nearest.at)];
}

/** True when the line between two corners crosses no side of a ring and passes through none of its other corners. */
function inSight(from: MapPoint, to: MapPoint, ring: Outline): boolean {
  return ring.every((corner, at) => {
    const next = ring[(at + 1) % ring.length] as MapPoint;
    return !crossingOf(from, to, corner, next) && !liesBetween(corner, from, to);
  });
}

function liesBetween(corner: MapPoint, from: MapPoint, to: MapPoint): boolean {
  const [east, north] = [to.east - from.east, to.north - from.north];
  const length = Math.hypot(east, north);
  const along = ((corner.east - from.east) * east + (corner.north - from.north) * north) / length;
  const aside = ((corner.east - from.east) * north - (corner.north - from.north) * east) / length;
  return along > ON_THE_LINE && along < length - ON_THE_LINE && Math.abs(aside) < ON_THE_LINE;
}

function requireHole(outer: Outline, hole: Outline, others: readonly Outline[]): void {
  if (hole.length < 3) throw new InvalidInput(`A hole needs 3 corners or more. You have ${hole.length}.`);
  const meets = (ring: Outline) =>
    hole.some((corner, at) => {
      const next = hole[(at + 1) % hole.length] as MapPoint;
      return ring.some((one, side) => crossingOf(corner, next, one, ring[(side + 1) % ring.length] as MapPoint));
    });
  if (hole.some((corner) => !isInside(outer, corner)) || meets(outer))
    throw new InvalidInput("A hole should lie inside the outline. One of yours reaches beyond it.");
  if (
    others.some((other) => meets(other) || isInside(other, hole[0] as MapPoint) || isInside(hole, other[0] as MapPoint))
  )
    throw new InvalidInput("Two holes of the outline cross each other or lie in one another.");
}

const eastOf = (ring: Outline) => Math.max(...ring.map(({ east }) => east));

const isClockwise = (ring: Outline): boolean =>
  ring.reduce((sum, { east, north }, at) => {
    const next = ring[(at + 1) % ring.length] as MapPoint;
    return sum + (next.east - east) * (next.north + north);
  }, 0) > 0;
