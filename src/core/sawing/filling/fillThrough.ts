import type { Ceiling } from "./ceiling";
import { waysByBed, type Crossing } from "./fill";
import { BED_KINDS, type Group } from "./group";
import { asGood, bestBelow, slotsOf, type Slot, type Way } from "./way";

/** A filling worth less may be left out, though another may then come instead of it; ceilings as seen from both ends. */
export interface AtLeast {
  readonly worth: number;
  readonly fromBelow: Ceiling;
  readonly fromAbove: Ceiling;
}

/**
 * The best filling of a whole line, one slot of kind 1 or 2 in it and one of kind 2 at most.
 *
 * Half of it is enough. Of any filling, let one slot be the first that ends above 0. All below it end at 0 or lower:
 * they are a way to fill the line up to 0. All above it begin above it: seen from the other end they are a way to fill
 * the line from there, and again no such slot ends above 0. So those ways are built once, and put together over every
 * slot that can lie between them.
 *
 * @param fromBelow groups as they are; a slot in each may lie at or below 0
 * @param fromAbove the same slots with their bounds seen from the other end; the same groups where bounds are symmetrical
 */
export function bestThrough<Item>(
  fromBelow: readonly Group<Item>[],
  fromAbove: readonly Group<Item>[],
  gap: number,
  atLeast?: AtLeast,
): Way<Item> | undefined {
  const crossings: Crossing<Item>[] = [];
  const limits = (ceiling: Ceiling | undefined) => ({
    upTo: 0,
    ...(atLeast && ceiling && { atLeast: { worth: atLeast.worth, ceiling } }),
  });
  const under = waysByBed(fromBelow, gap, {
    ...limits(atLeast?.fromBelow),
    beyond: (crossing) => crossings.push(crossing),
  });
  const over = fromAbove === fromBelow ? under : waysByBed(fromAbove, gap, limits(atLeast?.fromAbove));

  let best:
    | {
        worth: number;
        pieces: number;
        crossing?: Crossing<Item>;
        top?: Way<Item>;
      }
    | undefined;
  for (const kind of [1, 2] as const) {
    const alone = under[kind]?.at(-1);
    if (alone && !(best && asGood(best, alone))) best = { worth: alone.worth, pieces: alone.pieces, top: alone };
  }
  const alone = best?.top;
  for (const crossing of crossings) {
    const { kind, way, slot, lower } = crossing;
    const height = 0 - lower - slot.extent;
    for (const other of BED_KINDS) {
      if (Math.max(kind, other) === 0 || kind + other === 4 || over[other]?.length === 0) continue;
      const top = bestBelow(over[other] as readonly Way<Item>[], height);
      if (!top) continue;
      const worth = way.worth + slot.worth + top.worth;
      const pieces = way.pieces + slot.pieces + top.pieces;
      if (!(best && asGood(best, { worth, pieces }))) best = { worth, pieces, crossing, top };
    }
  }
  if (!best?.crossing) return alone;
  return joined(best.crossing, best.top as Way<Item>, gap);
}

/** One way out of what lies below a slot, the slot, and what lies above it, slid down like the rest. */
function joined<Item>({ way, slot, lower }: Crossing<Item>, top: Way<Item>, gap: number): Way<Item> {
  const on = (below: Way<Item>, one: Slot<Item>, at: number): Way<Item> => ({
    free: at + one.extent + gap,
    worth: below.worth + one.worth,
    pieces: below.pieces + one.pieces,
    top: one,
    lower: at,
    below,
  });
  return [...slotsOf(top)].reverse().reduce(
    (below, above) => {
      const { low, high } = above.slot;
      return on(below, { ...above.slot, low: 0 - high, high: 0 - low }, Math.max(below.free, 0 - high));
    },
    on(way, slot, lower),
  );
}
