import { slotsOf, type Slot, type Way } from "./fill";
import type { Flitch } from "./flitches";

/** A flitch at its height in a stack of parallel ones, measured from the pith. */
export interface Stacked {
  readonly flitch: Flitch;
  /** Its lower face. [in] */
  readonly lower: number;
  /** How far its faces may lie from the pith. [in] */
  readonly reach: number;
}

export const upperFace = ({ flitch, lower }: Stacked): number => lower + flitch.thickness;

/**
 * A filling as it is sawn: every gap one kerf, from the lowest flitch to the highest.
 *
 * Sliding down can leave gaps wider than the kerf, but only under a flitch that starts at its own reach, hence under
 * the pith. All flitches below it may then be slid up again, towards the pith, where their reach allows them: the gaps
 * close. So an extra skim cut between boards never gains anything, and the stack is sawn in one run of settings.
 */
export function stacked(way: Way<Flitch> | undefined, kerf: number): readonly Stacked[] {
  const slots = slotsOf(way);
  const top = slots.at(-1);
  return top ? under(slots, top.lower + top.slot.extent + kerf, kerf) : [];
}

/** A filling slid up to a plane above it that lies no higher than the pith, the first kerf right under the plane. */
export function stackedUnder(way: Way<Flitch> | undefined, plane: number, kerf: number): readonly Stacked[] {
  return under(slotsOf(way), plane, kerf);
}

function under(slots: readonly { readonly slot: Slot<Flitch> }[], plane: number, kerf: number): readonly Stacked[] {
  let above = plane;
  const fromTop = [...slots].reverse().map(({ slot }) => {
    above -= kerf + slot.extent;
    return { flitch: slot.item, lower: above, reach: slot.high };
  });
  return fromTop.reverse();
}

/** How far a stack can be moved down (0 or less) and up (0 or more) before wane shows. */
export function playOf(stack: readonly Stacked[]): { readonly down: number; readonly up: number } {
  return {
    down: Math.max(...stack.map(({ reach, lower }) => 0 - reach - lower)),
    up: Math.min(...stack.map((one) => one.reach - upperFace(one))),
  };
}

export const moved = (stack: readonly Stacked[], by: number): readonly Stacked[] =>
  stack.map((one) => ({ ...one, lower: one.lower + by }));

/** What play the whole stack has is halved, so that a small error of setting costs no board. */
export function centred(stack: readonly Stacked[]): readonly Stacked[] {
  const { down, up } = playOf(stack);
  return moved(stack, (down + up) / 2);
}

/** The same stack seen from below. */
export const upsideDown = (stack: readonly Stacked[]): readonly Stacked[] =>
  [...stack].reverse().map((one) => ({ ...one, lower: 0 - upperFace(one) }));
