/** Lets a plan survive the rounding of square roots; far below what any mill can set. [in] */
export const HAIR = 1e-9;

/** Something that takes up a stretch of a line and may lie anywhere within bounds of its own. */
export interface Slot<Item> {
  readonly extent: number;
  /** Its lower end must not lie below this ... */
  readonly low: number;
  /** ... nor its upper end above this. */
  readonly high: number;
  readonly worth: number;
  /** How many boards it counts as where two fillings are worth the same. */
  readonly pieces: number;
  readonly item: Item;
}

/** The best known way to fill the line up to a height. */
export interface Way<Item> {
  /** Lowest place where the next slot may begin: above the topmost one and its gap. */
  readonly free: number;
  readonly worth: number;
  readonly pieces: number;
  /** The topmost slot and its lower end; none in the empty line. */
  readonly top: Slot<Item> | undefined;
  readonly lower: number;
  readonly below: Way<Item> | undefined;
}

/** Slots of one extent, those worth most first. */
export interface Group<Item> {
  readonly slots: readonly Slot<Item>[];
  /** What such a slot is to the bed. */
  readonly kind: BedKind;
}

/** 0: cannot stay on the bed. 1: can. 2: must, so that one such slot is the most that a filling can have. */
export type BedKind = 0 | 1 | 2;
export const BED_KINDS: readonly BedKind[] = [0, 1, 2];

export interface FillLimits {
  /** No slot may end above this height. Left out: no such height. */
  readonly upTo?: number;
  /** The lowest place at or above a height where a slot may begin on a scale; above a slot of kind 2 it may differ. */
  readonly onScale?: (height: number, aboveBed: boolean) => number;
  /** Told of every slot that would end above `upTo`. */
  readonly beyond?: (kind: BedKind, way: Way<unknown>, slot: Slot<unknown>, lower: number) => void;
}

/**
 * The ways to fill a line with slots, a gap between neighbours: for every height the filling below it that is worth
 * most, and of the fewest pieces among equals. Sorted by height; each is worth more than every lower one. Parted by the
 * most that any of its slots is to the bed; the empty filling is in the first part.
 *
 * Exact, without a grid. In any filling each slot can be slid down until it meets its own bound or the gap above the
 * slot below. Only such places need be tried: from a height where the line is free, each slot starts there or at its
 * own bound. Of two fillings, the one that stands no higher and is worth no less can replace the other, so only those
 * not so beaten are carried on. On a scale the same holds of its marks.
 */
export function waysByBed<Item>(
  groups: readonly Group<Item>[],
  gap: number,
  limits: FillLimits = {},
): readonly (readonly Way<Item>[])[] {
  const { upTo = Infinity, onScale, beyond } = limits;
  const lists = BED_KINDS.map((): Way<Item>[] => []);
  (lists[0] as Way<Item>[]).push({
    free: -Infinity,
    worth: 0,
    pieces: 0,
    top: undefined,
    lower: -Infinity,
    below: undefined,
  });
  // A list grows while it is walked; a filling never goes back to an earlier part.
  for (const state of BED_KINDS) {
    const ways = lists[state] as Way<Item>[];
    for (let i = 0; i < ways.length; i += 1) {
      const way = ways[i] as Way<Item>;
      const lowest = onScale ? onScale(way.free, state === 2) : way.free;
      for (const { slots, kind: own } of groups) {
        if (own === 2 && state === 2) continue;
        const kind = own > state ? own : state;
        for (const slot of slots) {
          const lower = slot.low <= lowest ? lowest : onScale ? onScale(slot.low, state === 2) : slot.low;
          const upper = lower + slot.extent;
          if (upper > slot.high + HAIR) continue;
          if (upper > upTo) beyond?.(kind, way, slot, lower);
          else keep(lists[kind] as Way<Item>[], upper + gap, slot, lower, way);
          // The rest of the group is worth no more and can begin no lower: it can only lose.
          if (lower === lowest) break;
        }
      }
    }
  }
  return lists;
}

/** The ways to fill a line of whose slots none need stay on a bed. */
export function waysToFill<Item>(
  groups: readonly (readonly Slot<Item>[])[],
  gap: number,
  limits: FillLimits = {},
): readonly Way<Item>[] {
  return waysByBed(
    groups.map((slots) => ({ slots, kind: 0 })),
    gap,
    limits,
  )[0] as readonly Way<Item>[];
}

/** The filling worth most among those that leave everything from a height upward free. */
export function bestBelow<Item>(ways: readonly Way<Item>[], height: number): Way<Item> | undefined {
  return ways[countUpTo(ways, height) - 1];
}

/** Its slots, from the lowest to the highest, each with its lower end. */
export function slotsOf<Item>(way: Way<Item> | undefined): { readonly slot: Slot<Item>; readonly lower: number }[] {
  const slots = [];
  for (let one = way; one?.top; one = one.below) slots.push({ slot: one.top, lower: one.lower });
  return slots.reverse();
}

/** Most ways are beaten and are never put together. */
function keep<Item>(ways: Way<Item>[], free: number, top: Slot<Item>, lower: number, below: Way<Item>): void {
  const worth = below.worth + top.worth;
  const pieces = below.pieces + top.pieces;
  const at = countUpTo(ways, free);
  if (at > 0) {
    const under = ways[at - 1] as Way<Item>;
    if (isAsGood(under.worth, under.pieces, worth, pieces)) return;
  }
  let end = at;
  while (end < ways.length) {
    const over = ways[end] as Way<Item>;
    if (!isAsGood(worth, pieces, over.worth, over.pieces)) break;
    end += 1;
  }
  const way = { free, worth, pieces, top, lower, below };
  if (end === at + 1) ways[at] = way;
  else if (end === at && at === ways.length) ways.push(way);
  else ways.splice(at, end - at, way);
}

function countUpTo<Item>(ways: readonly Way<Item>[], height: number): number {
  let low = 0;
  let high = ways.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((ways[middle] as Way<Item>).free <= height + HAIR) low = middle + 1;
    else high = middle;
  }
  return low;
}

interface Weighed {
  readonly worth: number;
  readonly pieces: number;
}

/** Worth more, or as much with no more pieces. */
export const asGood = (one: Weighed, other: Weighed): boolean =>
  isAsGood(one.worth, one.pieces, other.worth, other.pieces);

function isAsGood(worth: number, pieces: number, otherWorth: number, otherPieces: number): boolean {
  const more = worth - otherWorth;
  const rounding = HAIR * Math.max(1, worth);
  return more > rounding || (more >= -rounding && pieces <= otherPieces);
}
