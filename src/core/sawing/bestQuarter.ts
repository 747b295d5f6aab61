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
  const best = groups.map((group) => ({
    pitch: pitchOf(group[0] as Flitch),
    flitchAt: bestByPlace(group, all.indexOf(group[0] as Flitch), { first, count }, order, sawing),
  }));

  // V is its own mirror image, so the half with p <= a is enough; from the bark towards the pith. Beyond it, nothing.
  const size = count * count;
  const worths = new Float64Array(size + 1);
  const pieces = new Int32Array(size + 1);
  const chosen = new Int32Array(size).fill(NONE);
  const placeOf = (p: number, a: number) => (p >= count || a >= count ? size : p > a ? p * count + a : a * count + p);
  const places = placesOf(
    best.map(({ pitch }) => pitch),
    count,
  );
  for (let i = places.length - 1; i >= 0; i -= 1) {
    for (let j = i; j >= 0; j -= 1) {
      const a = places[i] as number;
      const p = places[j] as number;
      let most = 0;
      let fewest = 0;
      let choice = NONE;
      for (const { pitch, flitchAt } of best) {
        for (let isFlat = 0; isFlat <= 1; isFlat += 1) {
          const index = flitchAt[isFlat === 1 ? a * count + p : p * count + a] as number;
          if (index === NONE) continue;
          const next = isFlat === 1 ? placeOf(p, a + pitch) : placeOf(p + pitch, a);
          const { worth, boards } = all[index] as Flitch;
          const total = worth + (worths[next] as number);
          const boardsInAll = boards.length + (pieces[next] as number);
          const rounding = HAIR * Math.max(1, total);
          if (total < most - rounding || (total <= most + rounding && boardsInAll >= fewest)) continue;
          most = total;
          fewest = boardsInAll;
          choice = 2 * index + isFlat;
        }
      }
      const here = placeOf(p, a);
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
    peels.push({ flitch, flat, across: first + p * step, up: first + a * step });
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

/**
 * The best flitch of one thickness off the flat face, for every height a of that face and every place p of the upright
 * one. Its outer face reaches the bark at c = sqrt(D(l)^2 / 4 - m^2); it begins at p, or where its middle lies as far
 * across as up, so that the rings meet it at 45 degrees, and must end at c:
 *
 *     max(p + w, v + w / 2) <= c,   v = a + t / 2,   m = a + t - q t
 */
function bestByPlace(
  group: readonly Flitch[],
  indexOfFirst: number,
  { first, count }: { readonly first: number; readonly count: number },
  { bladeAboveBed, step }: QuarterOrder,
  { log, kerf, wane }: Sawing,
): Int32Array {
  const fromBest = [...group.keys()].sort((x, y) => {
    const [one, other] = [group[x] as Flitch, group[y] as Flitch];
    return other.worth - one.worth || one.boards.length - other.boards.length;
  });
  const { thickness } = group[0] as Flitch;
  const best = new Int32Array(count * count).fill(NONE);
  for (let row = 0; row < count; row += 1) {
    const up = first + row * step;
    const outer = up + thickness * (1 - wane);
    // What is left below the blade must still reach above the lowest place of the blade.
    const beyond = up + thickness + kerf + bladeAboveBed;
    const farthest = Math.sqrt(Math.max(0, (log.largeEnd / 2) ** 2 - beyond ** 2));
    let filled = 0;
    for (const i of fromBest) {
      const flitch = group[i] as Flitch;
      const radius = diameterAt(log, flitch.length) / 2;
      const chord = radius > outer ? Math.sqrt(radius ** 2 - outer ** 2) : 0;
      if (up + thickness / 2 + flitch.width / 2 > chord + HAIR) continue;
      const most = Math.min(chord - flitch.width, farthest);
      const last = Math.min(count - 1, Math.floor((most - first) / step + HAIR));
      for (; filled <= last; filled += 1) best[row * count + filled] = indexOfFirst + i;
    }
  }
  return best;
}
