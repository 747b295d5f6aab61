import { HAIR } from "./fill";
import type { Flitch } from "./flitches";
import { diameterAt } from "./sawLog";
import type { Sawing } from "./sawnFlitch";

/** A flitch sawn off one of the two sawn faces of a quarter; both faces are measured from the pith. */
export interface Peel {
  readonly flitch: Flitch;
  /** True when it comes off the face that runs across the end view, false when off the upright one. */
  readonly flat: boolean;
  /** Where the upright face stands, and where the flat one lies, before the cut. [in] */
  readonly across: number;
  readonly up: number;
}

export interface QuarterOrder {
  readonly groups: readonly (readonly Flitch[])[];
  readonly bladeAboveBed: number;
  /** Settings are whole steps. [in] */
  readonly step: number;
}

/**
 * How one quarter of a log is sawn: flitches come off its two sawn faces, either one first, as long as the rings meet
 * the middle of each at 45 degrees or more. Best of all orders and thicknesses, on settings of whole steps: a board and
 * its kerf move the blade by the next whole step, so boards come out thicker than wanted by less than a step.
 *
 * With the upright face at p and the flat one at a from the pith, what is left is worth
 *
 *     V(p, a) = max over flitches of thickness t:  w(t; p, a) + V(p, a + t + k),  w(t; a, p) + V(p + t + k, a)
 *
 *     w  worth of the best flitch off the flat face; the upright one is its mirror image
 *
 * V does not grow with p or a, so nothing is gained by sawing wood away between flitches.
 */
export function bestQuarter(order: QuarterOrder, sawing: Sawing): readonly Peel[] {
  const { log, kerf } = sawing;
  const { step, groups } = order;
  const first = kerf / 2;
  const count = Math.ceil(log.largeEnd / 2 / step) + 1;
  const all = groups.flat();
  const pitchOf = ({ thickness }: Flitch) => Math.ceil((thickness + kerf) / step - HAIR);
  const pitches = groups.map((group) => pitchOf(group[0] as Flitch));
  const places = placesOf(pitches, count);
  let index = 0;
  const best = groups.map((group, i) => {
    const stairs = stairsOf(group, index, { first, places }, order, sawing);
    index += group.length;
    return { pitch: pitches[i] as number, stairs };
  });

  // V is its own mirror image, so the half with p <= a is enough; from the bark towards the pith. Beyond it, nothing.
  const size = count * count;
  const worths = new Float64Array(size + 1);
  const pieces = new Int32Array(size + 1);
  const chosen = new Int32Array(size).fill(NONE);
  const placeOf = (p: number, a: number) => (p >= count || a >= count ? size : p > a ? p * count + a : a * count + p);
  // Along each row the best flitch gets better towards the pith: each walks its own stairs.
  const reach = places.map((_, i) => Math.max(...best.map(({ stairs }) => stairs[i]?.at(-1)?.last ?? NONE)));
  const upright = best.map(({ stairs }) => Int32Array.from(stairs, (row) => row.length));
  for (let i = places.length - 1; i >= 0; i -= 1) {
    const a = places[i] as number;
    const flat = best.map(({ stairs }) => (stairs[i] as Stairs).length);
    for (let j = i; j >= 0; j -= 1) {
      const p = places[j] as number;
      if (p > (reach[i] as number) && a > (reach[j] as number)) continue;
      let most = 0;
      let fewest = 0;
      let choice = NONE;
      for (let g = 0; g < best.length; g += 1) {
        const { pitch, stairs } = best[g] as (typeof best)[number];
        for (let isFlat = 0; isFlat <= 1; isFlat += 1) {
          const row = stairs[isFlat === 1 ? i : j] as Stairs;
          const steps = isFlat === 1 ? flat : (upright[g] as Int32Array);
          const at = isFlat === 1 ? g : j;
          const limit = isFlat === 1 ? p : a;
          let step = steps[at] as number;
          while (step > 0 && (row[step - 1] as Stair).last >= limit) step -= 1;
          steps[at] = step;
          const stair = row[step];
          if (!stair) continue;
          const next = isFlat === 1 ? placeOf(p, a + pitch) : placeOf(p + pitch, a);
          const total = stair.worth + (worths[next] as number);
          const boardsInAll = stair.boards + (pieces[next] as number);
          const rounding = HAIR * Math.max(1, total);
          if (total < most - rounding || (total <= most + rounding && boardsInAll >= fewest)) continue;
          most = total;
          fewest = boardsInAll;
          choice = 2 * stair.index + isFlat;
        }
      }
      if (choice === NONE) continue;
      const here = a * count + p;
      worths[here] = most;
      pieces[here] = fewest;
      chosen[here] = choice;
    }
  }

  const peels: Peel[] = [];
  let p = 0;
  let a = 0;
  while (p < count && a < count) {
    const choice = chosen[placeOf(p, a)] as number;
    if (choice === NONE) break;
    const flitch = all[choice >> 1] as Flitch;
    const isMirrored = p > a;
    const flat = (choice % 2 === 1) !== isMirrored;
    peels.push({
      flitch,
      flat,
      across: first + p * step,
      up: first + a * step,
    });
    if (flat) a += pitchOf(flitch);
    else p += pitchOf(flitch);
  }
  return peels;
}

const NONE = -1;

/** Where a face can come to lie: every sum of pitches, in steps. */
function placesOf(pitches: readonly number[], count: number): readonly number[] {
  const isReached = new Uint8Array(count);
  isReached[0] = 1;
  const places: number[] = [];
  for (let at = 0; at < count; at += 1) {
    if (isReached[at] === 0) continue;
    places.push(at);
    for (const pitch of pitches) if (at + pitch < count) isReached[at + pitch] = 1;
  }
  return places;
}

/** From which place on towards the pith a flitch is the best there is. */
interface Stair {
  /** The farthest place of the other face, in steps. */
  readonly last: number;
  readonly index: number;
  readonly worth: number;
  readonly boards: number;
}
type Stairs = readonly Stair[];

/**
 * The best flitches of one thickness off the flat face, for every place a of that face, by the place p of the upright
 * one. Its outer face reaches the bark at c = sqrt(D(l)^2 / 4 - m^2); it begins at p, or where its middle lies as far
 * across as up, so that the rings meet it at 45 degrees, and must end at c:
 *
 *     max(p + w, v + w / 2) <= c,   v = a + t / 2,   m = a + t - q t
 *
 * Sorted by where the upright face may stand, so the best ones come first and the farthest last.
 */
function stairsOf(
  group: readonly Flitch[],
  indexOfFirst: number,
  { first, places }: { readonly first: number; readonly places: readonly number[] },
  { bladeAboveBed, step }: QuarterOrder,
  { log, kerf, wane }: Sawing,
): readonly Stairs[] {
  const fromBest = [...group.keys()].sort((x, y) => {
    const [one, other] = [group[x] as Flitch, group[y] as Flitch];
    return other.worth - one.worth || one.boards.length - other.boards.length;
  });
  const radii = group.map(({ length }) => diameterAt(log, length) / 2);
  const { thickness } = group[0] as Flitch;
  return places.map((row) => {
    const up = first + row * step;
    const outer = up + thickness * (1 - wane);
    // What is left below the blade must still reach above the lowest place of the blade.
    const beyond = up + thickness + kerf + bladeAboveBed;
    const farthest = Math.sqrt(Math.max(0, (log.largeEnd / 2) ** 2 - beyond ** 2));
    const stairs: Stair[] = [];
    let filled = -1;
    for (const i of fromBest) {
      const { width, worth, boards } = group[i] as Flitch;
      const radius = radii[i] as number;
      if (radius <= outer) continue;
      const chord = Math.sqrt(radius ** 2 - outer ** 2);
      if (up + thickness / 2 + width / 2 > chord + HAIR) continue;
      const last = Math.floor((Math.min(chord - width, farthest) - first) / step + HAIR);
      if (last <= filled) continue;
      stairs.push({
        last,
        index: indexOfFirst + i,
        worth,
        boards: boards.length,
      });
      filled = last;
    }
    return stairs;
  });
}
