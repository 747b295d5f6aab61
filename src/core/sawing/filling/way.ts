import { HAIR } from "./hair";

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

/** The filling worth most among those that leave everything from a height upward free. */
export function bestBelow<Item>(ways: readonly Way<Item>[], height: number): Way<Item> | undefined {
  let low = 0;
  let high = ways.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((ways[middle] as Way<Item>).free <= height + HAIR) low = middle + 1;
    else high = middle;
  }
  return ways[low - 1];
}

/** Its slots, from the lowest to the highest, each with its lower end. */
export function slotsOf<Item>(way: Way<Item> | undefined): { readonly slot: Slot<Item>; readonly lower: number }[] {
  const slots = [];
  for (let one = way; one?.top; one = one.below) slots.push({ slot: one.top, lower: one.lower });
  return slots.reverse();
}

interface Weighed {
  readonly worth: number;
  readonly pieces: number;
}

/** Worth more, or as much with no more pieces. */
export const asGood = (one: Weighed, other: Weighed): boolean =>
  isAsGood(one.worth, one.pieces, other.worth, other.pieces);

export function isAsGood(worth: number, pieces: number, otherWorth: number, otherPieces: number): boolean {
  const more = worth - otherWorth;
  const rounding = HAIR * Math.max(1, worth);
  return more > rounding || (more >= -rounding && pieces <= otherPieces);
}
