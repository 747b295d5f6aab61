import { HAIR } from "./filling/hair";
import { slotsOf, type Slot, type Way } from "./filling/way";
import type { Flitch } from "./flitches";

/** A flitch at its height in a stack of parallel ones, measured from the pith. */
export interface Stacked {
  readonly flitch: Flitch;
  /** Its lower face. [in] */
  readonly lower: number;
  /** Its lower face may lie no lower than this, its upper one no higher than that. [in] */
  readonly low: number;
  readonly high: number;
}

export const upperFace = ({ flitch, lower }: Stacked): number => lower + flitch.thickness;

/**
 * A filling as it is sawn: every gap one kerf, from the lowest flitch to the highest.
 *
 * Sliding down can leave gaps wider than the kerf, but only under a flitch that starts at its own bound. The flitches
 * below it may then be slid up again, as far as their bounds allow. In a plain log they always do, since every flitch
 * may lie on the pith: all gaps close, an extra skim cut between boards never gains anything, and the stack is sawn in
 * one run of settings. On a scale a flitch that cannot be slid up all the way stays on the mark where it lies.
 */
export function stacked(way: Way<Flitch> | undefined, { kerf, scaleStep }: Setting): readonly Stacked[] {
  const slots = slotsOf(way);
  const top = slots.at(-1);
  return top ? under(slots, top.lower + top.slot.extent + kerf, kerf, scaleStep) : [];
}

/** A filling slid up to a plane above it, the first kerf right under the plane where its bounds allow it. */
export function stackedUnder(
  way: Way<Flitch> | undefined,
  plane: number,
  { kerf, scaleStep }: Setting,
): readonly Stacked[] {
  return under(slotsOf(way), plane, kerf, scaleStep);
}

interface Setting {
  readonly kerf: number;
  readonly scaleStep?: number;
}

function under(
  slots: readonly { readonly slot: Slot<Flitch>; readonly lower: number }[],
  plane: number,
  kerf: number,
  scaleStep: number | undefined,
): readonly Stacked[] {
  let above = plane;
  const fromTop = [...slots].reverse().map(({ slot, lower }) => {
    const { extent, high, low, item: flitch } = slot;
    const closed = above - kerf - extent;
    const most = high - extent;
    above = closed <= most + HAIR ? closed : scaleStep === undefined ? most : lower;
    return { flitch, lower: above, low, high };
  });
  return fromTop.reverse();
}

/** How far a stack can be moved down (0 or less) and up (0 or more) before wane shows. */
export function playOf(stack: readonly Stacked[]): {
  readonly down: number;
  readonly up: number;
} {
  return {
    down: Math.max(...stack.map(({ low, lower }) => low - lower)),
    up: Math.min(...stack.map((one) => one.high - upperFace(one))),
  };
}

export const moved = (stack: readonly Stacked[], by: number): readonly Stacked[] =>
  stack.map((one) => ({ ...one, lower: one.lower + by }));

/** What play the whole stack has is halved, so that a small error of setting costs no board; not so on a scale. */
export function centred(stack: readonly Stacked[], { scaleStep }: Setting): readonly Stacked[] {
  if (scaleStep !== undefined) return stack;
  const { down, up } = playOf(stack);
  return moved(stack, (down + up) / 2);
}

/** The same stack seen from below. */
export const upsideDown = (stack: readonly Stacked[]): readonly Stacked[] =>
  [...stack].reverse().map((one) => ({
    ...one,
    lower: 0 - upperFace(one),
    low: 0 - one.high,
    high: 0 - one.low,
  }));
