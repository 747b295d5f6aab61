import { HAIR } from "../filling/hair";
import type { Flitch } from "../flitches";
import { isRound } from "../sawLog";
import type { Sawing } from "../sawnFlitch";
import type { Stair, Stairs } from "./offSawnFace";
import { peelChoices, type PeelChoices, type PeelThickness, type QuarterOrder } from "./peelChoices";

/** A flitch sawn off one of the two sawn faces of a quarter; both faces are measured from the pith. */
export interface Peel {
  readonly flitch: Flitch;
  /** True when it comes off the face that runs across the end view, false when off the upright one. */
  readonly flat: boolean;
  /** Where the upright face stands, and where the flat one lies, before the cut. [in] */
  readonly across: number;
  readonly up: number;
}

/**
 * How one quarter of a log is sawn: flitches come off its two sawn faces, either one first, as long as the rings meet
 * the middle of each at 45 degrees or more. Best of all orders and thicknesses, on settings of whole steps: a board and
 * its kerf move the blade by the next whole step, so boards come out thicker than wanted by less than a step.
 *
 * With the upright face at p and the flat one at a from the pith, what is left is worth
 *
 *     V(p, a) = max over flitches of thickness t:  w(t; p, a) + V(p, a + t + k),  w'(t; a, p) + V(p + t + k, a)
 *
 *     w, w'  worth of the best flitch off the flat face, and off the upright one; of a round log they are the same
 *
 * V does not grow with p or a, so nothing is gained by sawing wood away between flitches.
 */
export function bestQuarter(order: QuarterOrder, sawing: Sawing): readonly Peel[] {
  const choices = peelChoices(order, sawing);
  return peelsOf(choices, tableOf(choices, isRound(sawing.log)), order, sawing);
}

/** V and what it comes from, by the numbers of the places p and a. */
interface Table {
  readonly at: (p: number, a: number) => number;
  /** 0 where nothing is sawn any more, else 1 + twice the number of the flitch, and 1 more off the flat face. */
  readonly chosen: Int32Array;
  /** V is its own mirror image, so that only p <= a is told. */
  readonly isMirrored: boolean;
}

/** From the bark towards the pith; beyond the last place nothing is left. */
function tableOf({ places, thicknesses, reach }: PeelChoices, isMirrored: boolean): Table {
  const count = places.length;
  const row = count + 1;
  const { worths, pieces, chosen } = blank(row * row);
  const at = (p: number, a: number) => (isMirrored && p > a ? p * row + a : a * row + p);
  // Along each row the best flitch gets better towards the pith: each walks its own stairs.
  const onUpright = thicknesses.map(({ upright }) => upright.map((stairs) => stairs.length));
  const onFlat = thicknesses.map(({ flat }) => flat.map((stairs) => stairs.length));

  for (let a = count - 1; a >= 0; a -= 1) {
    for (let p = isMirrored ? a : count - 1; p >= 0; p -= 1) {
      const [up, across] = [places[a] as number, places[p] as number];
      if (across > (reach.flat[a] as number) && up > (reach.upright[p] as number)) continue;
      let most = 0;
      let fewest = 0;
      let choice = 0;
      for (let g = 0; g < thicknesses.length; g += 1) {
        const { flat, upright, next } = thicknesses[g] as PeelThickness;
        for (let isFlat = 0; isFlat <= 1; isFlat += 1) {
          const stair =
            isFlat === 1
              ? stairAt(flat, a, onFlat[g] as number[], across)
              : stairAt(upright, p, onUpright[g] as number[], up);
          if (!stair) continue;
          const then = isFlat === 1 ? at(p, next[a] as number) : at(next[p] as number, a);
          const total = stair.worth + (worths[then] as number);
          const boards = stair.boards + (pieces[then] as number);
          const rounding = HAIR * Math.max(1, total);
          if (total < most - rounding || (total <= most + rounding && boards >= fewest)) continue;
          most = total;
          fewest = boards;
          choice = 1 + 2 * stair.flitch + isFlat;
        }
      }
      const here = at(p, a);
      worths[here] = most;
      pieces[here] = fewest;
      chosen[here] = choice;
    }
  }
  return { at, chosen, isMirrored };
}

/** Tables of zeros. They are large: one set serves one quarter after another. */
function blank(size: number): typeof tables {
  if (tables.worths.length < size) {
    tables = { worths: new Float64Array(size), pieces: new Int32Array(size), chosen: new Int32Array(size) };
  } else {
    for (const table of Object.values(tables)) table.fill(0, 0, size);
  }
  return tables;
}
let tables = { worths: new Float64Array(0), pieces: new Int32Array(0), chosen: new Int32Array(0) };

/** The best flitch off a face with the other one at a place, no farther out than when it was last asked. */
function stairAt(stairs: readonly Stairs[], face: number, standing: number[], other: number): Stair | undefined {
  const own = stairs[face] as Stairs;
  let stair = standing[face] as number;
  while (stair > 0 && (own[stair - 1] as Stair).last >= other) stair -= 1;
  standing[face] = stair;
  return own[stair];
}

/** From the pith outwards, what was chosen at every place. */
function peelsOf(
  { places, thicknesses }: PeelChoices,
  { at, chosen, isMirrored }: Table,
  { groups, step }: QuarterOrder,
  { kerf }: Sawing,
): readonly Peel[] {
  const all = groups.flatMap((group, g) => group.map((flitch) => ({ flitch, next: thicknesses[g]?.next ?? [] })));
  const inches = (place: number) => kerf / 2 + (places[place] as number) * step;
  const peels: Peel[] = [];
  let [p, a] = [0, 0];
  while (p < places.length && a < places.length) {
    const choice = chosen[at(p, a)] as number;
    if (choice === 0) break;
    const { flitch, next } = all[(choice - 1) >> 1] as (typeof all)[number];
    const flat = (choice % 2 === 0) !== (isMirrored && p > a);
    peels.push({ flitch, flat, across: inches(p), up: inches(a) });
    if (flat) a = next[a] as number;
    else p = next[p] as number;
  }
  return peels;
}
