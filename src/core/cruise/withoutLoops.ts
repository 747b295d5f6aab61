import type { Outline } from "./outline";
import { crossingOf } from "./outline";
import type { MapPoint } from "./gridPoints";

/** A loop longer than this share of the whole way is no slip of the receiver. A choice of ours. */
const SMALL_LOOP = 0.05;

/**
 * A walked track without its small loops. A receiver that is carried around a tract draws a knot wherever one stands
 * still, and a crossing where the walk ends a few steps past its start; each is cut off where the line meets itself.
 * A large loop is left, for the owner to judge.
 */
export function withoutLoops(track: Outline): { readonly track: Outline; readonly loops: number } {
  let now: readonly MapPoint[] = track;
  for (let loops = 0; ; loops += 1) {
    const next = cutFirstLoop(now);
    if (!next) return { track: now, loops };
    now = next;
  }
}

function cutFirstLoop(track: readonly MapPoint[]): readonly MapPoint[] | undefined {
  const count = track.length;
  const corner = (at: number) => track[at % count] as MapPoint;
  const sides = track.map((from, at) => Math.hypot(from.east - corner(at + 1).east, from.north - corner(at + 1).north));
  const whole = sides.reduce((sum, side) => sum + side, 0);
  for (let one = 0; one < count; one += 1) {
    for (let other = one + 2; other < count; other += 1) {
      if (one === 0 && other === count - 1) continue;
      const crossing = crossingOf(corner(one), corner(one + 1), corner(other), corner(other + 1));
      if (!crossing) continue;
      const inLoop = sides.slice(one + 1, other).reduce((sum, side) => sum + side, 0);
      if (inLoop <= SMALL_LOOP * whole) return [...track.slice(0, one + 1), crossing, ...track.slice(other + 1)];
      // The way from the second crossing side around to the first is the loop instead.
      if (whole - inLoop - (sides[one] ?? 0) - (sides[other] ?? 0) <= SMALL_LOOP * whole)
        return [crossing, ...track.slice(one + 1, other + 1)];
    }
  }
  return undefined;
}
