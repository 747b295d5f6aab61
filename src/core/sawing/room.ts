import { reachOf } from "./reach";
import type { Sides } from "./sides";
import type { Flitch } from "./flitches";
import { halfFace, sectionsTo, type LyingLog, type Section } from "./lyingLog";
import type { Face } from "./outline";

/** Where a flitch may lie: its lower face no lower than `low`, its upper one no higher than `high`. [in] */
export interface Room {
  readonly low: number;
  readonly high: number;
}

/** Tells where a flitch may lie, seen with a face of the log looking up, between sides that are sawn already. */
export type RoomFor = (flitch: Flitch, face: Face, sides: Sides) => Room | undefined;

/**
 * A flitch lies in the log where the chords of both its faces have its width in common all along it. Of a log that is
 * convex, such places are one stretch. Of a symmetrical log it is known by formula, see reachOf; else the chords are tabled
 * every 1/32 in for each thickness and length, and the ends of the stretch lie on straight lines between tabled places,
 * which never tell more room than there is.
 */
export function roomIn(log: LyingLog, wane: number): RoomFor {
  if (log.isSymmetrical) {
    return (flitch, face, sides) => {
      const reach = reachOf(log, flitch, wane, face, sides);
      return reach === undefined ? undefined : { low: 0 - reach, high: reach };
    };
  }
  const tables = new Map<string, Table>();
  const tableOf = ({ thickness, length }: Flitch, face: Face): Table => {
    const key = `${face} ${thickness} ${length}`;
    const table = tables.get(key) ?? tabled(sectionsTo(log, length, face), thickness, wane);
    tables.set(key, table);
    return table;
  };
  const known = new Map<Face, WeakMap<Flitch, Table>>();
  return (flitch, face, sides) => {
    const ofFace = known.get(face) ?? new WeakMap<Flitch, Table>();
    known.set(face, ofFace);
    const table = ofFace.get(flitch) ?? tableOf(flitch, face);
    ofFace.set(flitch, table);
    const lowest = stretch(table, flitch.width, sides);
    return lowest && { low: lowest.from, high: lowest.to + flitch.thickness };
  };
}

/** A choice of ours. [in] */
export const ROOM_STEP = 1 / 32;

interface Table {
  readonly first: number;
  /** What the chords along the flitch have in common, for each place of its lower face. */
  readonly left: Float64Array;
  readonly right: Float64Array;
  peak?: { readonly sides: Sides; readonly at: number };
}

/** What both faces of a flitch, its lower one at `lower`, have in common along it; undefined where a face has no wood. */
export function commonFace(
  sections: readonly Section[],
  lower: number,
  thickness: number,
  wane: number,
): { readonly left: number; readonly right: number } | undefined {
  let left = -Infinity;
  let right = Infinity;
  for (const section of sections) {
    const outer = Math.max(section.v - lower, lower + thickness - section.v) - wane * thickness;
    const half = halfFace(section, Math.max(0, outer));
    if (half === undefined) return undefined;
    left = Math.max(left, section.u - half);
    right = Math.min(right, section.u + half);
  }
  return { left, right };
}

function tabled(sections: readonly Section[], thickness: number, wane: number): Table {
  const slack = wane * thickness;
  const lowest = Math.max(...sections.map(({ v, b }) => v - b - slack));
  const highest = Math.min(...sections.map(({ v, b }) => v + b + slack - thickness));
  const count = Math.max(0, Math.floor((highest - lowest) / ROOM_STEP) + 1);
  const left = new Float64Array(count).fill(Infinity);
  const right = new Float64Array(count).fill(-Infinity);
  for (let i = 0; i < count; i += 1) {
    const face = commonFace(sections, lowest + i * ROOM_STEP, thickness, wane);
    if (!face) continue;
    left[i] = face.left;
    right[i] = face.right;
  }
  return { first: lowest, left, right };
}

/** From where to where the lower face may lie for a width to fit. What fits rises to a peak and falls again. */
function stretch(table: Table, width: number, sides: Sides) {
  const peak = peakOf(table, sides);
  if (table.left.length === 0 || !(spare(table, peak, width, sides) >= 0)) return undefined;
  return { from: endFrom(table, peak, -1, width, sides), to: endFrom(table, peak, table.left.length, width, sides) };
}

/** How much wider the wood is than a width that should lie there. */
const spare = ({ left, right }: Table, place: number, width: number, sides: Sides): number =>
  Math.min(right[place] as number, sides.right) - Math.max(left[place] as number, sides.left) - width + 1e-9;

/** Where a width ceases to fit, between a place where it does and one beyond all where it may. */
function endFrom(table: Table, fits: number, fails: number, width: number, sides: Sides): number {
  let [inside, outside] = [fits, fails];
  while (Math.abs(outside - inside) > 1) {
    const middle = (inside + outside) >> 1;
    if (spare(table, middle, width, sides) >= 0) inside = middle;
    else outside = middle;
  }
  const beyond = outside < 0 || outside >= table.left.length ? -Infinity : spare(table, outside, width, sides);
  const within = spare(table, inside, width, sides);
  const share = beyond === -Infinity ? 0 : within / (within - beyond);
  return table.first + (inside + (outside - inside) * share) * ROOM_STEP;
}

/** Where most fits. The same for every width, and so it is kept as long as the sides stay. */
function peakOf(table: Table, sides: Sides): number {
  if (table.peak?.sides === sides) return table.peak.at;
  const room = (place: number) => spare(table, place, 0, sides);
  let low = 0;
  let high = table.left.length - 1;
  while (high - low > 2) {
    const third = Math.floor((high - low) / 3);
    if (room(low + third) < room(high - third)) low += third;
    else high -= third;
  }
  let at = low;
  for (let i = low + 1; i <= high; i += 1) if (room(i) > room(at)) at = i;
  table.peak = { sides, at };
  return at;
}
