import type { Flitch } from "../flitches";
import type { Sawing } from "../sawnFlitch";
import type { Quarter } from "./fourQuarters";
import { facesAlike, mayPayToSkip, peelChoices, type PeelChoices, type QuarterOrder } from "./peelChoices";
import { peelTable, SKIPS, type PeelTable } from "./peelTable";
import type { SawnFace } from "./quarterShape";

/** A flitch sawn off one of the two sawn faces of a quarter. */
export interface Peel {
  readonly flitch: Flitch;
  /** Which face it comes off. */
  readonly off: SawnFace;
  /** How far from the pith that face lies before the cut, and where it lies after it. [in] */
  readonly from: number;
  readonly then: number;
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
 *     w, w'  worth of the best flitch off the flat face, and off the upright one; of a round and straight log they are the same
 *
 * Of a straight log that is sawn along its pith V does not grow with p or a, so nothing is gained by sawing wood away
 * between flitches. Of any other it can: there V(p + s, a) and V(p, a + s) are tried as well, s the step.
 */
export function bestQuarter(quarter: Quarter, order: QuarterOrder, sawing: Sawing): readonly Peel[] {
  const choices = peelChoices(quarter, order, sawing);
  const table = peelTable(choices, facesAlike(sawing.lying), mayPayToSkip(sawing.lying));
  return peelsOf(choices, table, order, sawing);
}

/** From the pith outwards, what was chosen at every place. */
function peelsOf(
  { places, thicknesses }: PeelChoices,
  { at, chosen, isMirrored }: PeelTable,
  { groups, step }: QuarterOrder,
  { kerf }: Sawing,
): readonly Peel[] {
  const all = groups.flatMap((group, g) => group.map((flitch) => ({ flitch, next: thicknesses[g]?.next ?? [] })));
  const inches = (place: number) => kerf / 2 + (places[place] ?? Infinity) * step;
  const peels: Peel[] = [];
  let [p, a] = [0, 0];
  while (p < places.length && a < places.length) {
    const choice = chosen[at(p, a)] as number;
    if (choice === 0) break;
    const isTurned = isMirrored && p > a;
    if (choice < 0) {
      if ((choice === SKIPS.flat) !== isTurned) a += 1;
      else p += 1;
      continue;
    }
    const { flitch, next } = all[(choice - 1) >> 1] as (typeof all)[number];
    const isFlat = (choice % 2 === 0) !== isTurned;
    const from = isFlat ? a : p;
    const then = next[from] as number;
    peels.push({ flitch, off: isFlat ? "flat" : "upright", from: inches(from), then: inches(then) });
    if (isFlat) a = then;
    else p = then;
  }
  return peels;
}
