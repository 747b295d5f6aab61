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
  readonly top?: Slot<Item>;
  readonly lower: number;
  readonly below?: Way<Item>;
}

export interface Limits {
  /** One slot at least must have this extent: it stays on the bed, under the lowest blade. Left out: none need have it. */
  readonly leastOfOne?: number;
  /** One slot at most may exceed this extent: it stays on the bed, and never has to pass above the blade. */
  readonly mostOfOthers?: number;
}

/** Whether a filling has a slot that can stay on the bed: none yet, one, or one so thick that it must stay there. */
const STATES = 3;

/**
 * The ways to fill a line with slots, a gap between neighbours: for every height the filling below it that is worth
 * most, and of the fewest pieces among equals. Sorted by height; each is worth more than every lower one.
 *
 * Exact, without a grid. In any filling each slot can be slid down until it meets its own bound or the gap above the
 * slot below. Only such places need be tried: from a height where the line is free, each slot starts there or at its
 * own bound. Of two fillings, the one that stands no higher and is worth no less can replace the other, so only those
 * not so beaten are carried on.
 *
 * @param groups slots by extent; in a group each has narrower bounds than the next one and is worth more
 */
export function waysToFill<Item>(
  groups: readonly (readonly Slot<Item>[])[],
  gap: number,
  { leastOfOne = 0, mostOfOthers = Infinity }: Limits = {},
): readonly Way<Item>[] {
  const lists = Array.from({ length: STATES }, (): Way<Item>[] => []);
  (lists[0] as Way<Item>[]).push({ free: -Infinity, worth: 0, pieces: 0, lower: -Infinity });
  // A list grows while it is walked; a filling never goes back to an earlier state.
  lists.forEach((ways, state) => {
    for (let i = 0; i < ways.length; i += 1) {
      for (const group of groups) {
        const extent = group[0]?.extent ?? 0;
        const stays = extent + HAIR >= leastOfOne;
        const mustStay = extent > mostOfOthers + HAIR;
        if (mustStay && (state === 2 || !stays)) continue;
        const kind = mustStay ? 2 : stays ? 1 : 0;
        extend(lists[Math.max(kind, state)] as Way<Item>[], ways[i] as Way<Item>, group, gap);
      }
    }
  });
  const [none = [], one = [], thick = []] = lists;
  const sound = leastOfOne > 0 ? [] : none;
  return merged(merged(sound, one), thick);
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

function extend<Item>(ways: Way<Item>[], way: Way<Item>, group: readonly Slot<Item>[], gap: number): void {
  for (const slot of group) {
    const lower = Math.max(way.free, slot.low);
    const upper = lower + slot.extent;
    if (upper > slot.high + HAIR) continue;
    keep(ways, upper + gap, way.worth + slot.worth, way.pieces + slot.pieces, slot, lower, way);
    // The rest of the group may lie farther out and is worth less: at this same height it can only lose.
    if (lower === way.free) return;
  }
}

/** Its parts come one by one, since most ways are beaten and need never be put together. */
function keep<Item>(
  ways: Way<Item>[],
  free: number,
  worth: number,
  pieces: number,
  top: Slot<Item>,
  lower: number,
  below: Way<Item>,
): void {
  const at = countUpTo(ways, free);
  const under = ways[at - 1];
  if (under && isAsGood(under.worth, under.pieces, worth, pieces)) return;
  let end = at;
  while (
    end < ways.length &&
    isAsGood(worth, pieces, (ways[end] as Way<Item>).worth, (ways[end] as Way<Item>).pieces)
  ) {
    end += 1;
  }
  const way = { free, worth, pieces, top, lower, below };
  if (end === at + 1) ways[at] = way;
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

function merged<Item>(some: readonly Way<Item>[], more: readonly Way<Item>[]): readonly Way<Item>[] {
  if (some.length === 0) return more;
  if (more.length === 0) return some;
  if (some.length === 1 && !some[0]?.top) return [...some, ...more];
  const ways = [...some];
  for (const { free, worth, pieces, top, lower, below } of more) {
    if (top && below) keep(ways, free, worth, pieces, top, lower, below);
  }
  return ways;
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
