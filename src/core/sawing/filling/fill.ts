import type { Ceiling } from "./ceiling";
import { HAIR } from "./hair";
import { BED_KINDS, columnsOf, type BedKind, type Group } from "./group";
import { UnbeatenWays } from "./unbeatenWays";
import type { Slot, Way } from "./way";
import { NONE, WayColumns } from "./wayColumns";

export interface FillLimits<Item> {
  /** No slot may end above this height. Left out: no such height. */
  readonly upTo?: number;
  /** The lowest place at or above a height where a slot may begin on a scale; above a slot of kind 2 it may differ. */
  readonly onScale?: (height: number, aboveBed: boolean) => number;
  /** A filling of the whole line worth less may be left out, and what stands above a height is known to be no more. */
  readonly atLeast?: { readonly worth: number; readonly ceiling: Ceiling };
  /** Told of the slots that would end above `upTo`, each on the best way below it. */
  readonly beyond?: (crossing: Crossing<Item>) => void;
}

/** A slot that ends above a height up to which the line is filled. */
export interface Crossing<Item> {
  /** The most that it or any slot below it is to the bed. */
  readonly kind: BedKind;
  readonly way: Way<Item>;
  readonly slot: Slot<Item>;
  readonly lower: number;
}

/**
 * The ways to fill a line with slots, a gap between neighbours: for every height the filling below it that is worth
 * most, and of the fewest pieces among equals. Sorted by height; each is worth more than every lower one. Parted by the
 * most that any of its slots is to the bed; the empty filling is in the first part.
 *
 * Exact, without a grid. In any filling each slot can be slid down until it meets its own bound or the gap above the
 * slot below. Only such places need be tried: from a height where the line is free, each slot starts there or at its
 * own bound. Of two fillings, the one that stands no higher and is worth no less can replace the other, so only those
 * not so beaten are carried on; and a slot at its own bound is put on the best of those below it only. On a scale the
 * same holds of its marks.
 */
export function waysByBed<Item>(
  groups: readonly Group<Item>[],
  gap: number,
  { upTo = Infinity, onScale, atLeast, beyond }: FillLimits<Item> = {},
): readonly (readonly Way<Item>[])[] {
  const { slots, lows, highs, extents, worths, pieces, kinds, ends } = columnsOf(groups);
  begin();
  const crossings = { kind: [] as BedKind[], way: [] as number[], slot: [] as number[], lower: [] as number[] };
  // A list grows while it is walked; a filling never goes back to an earlier part.
  for (const state of BED_KINDS) {
    const ways = lists[state] as UnbeatenWays;
    const firsts = groups.map((_, g) => (g === 0 ? 0 : (ends[g - 1] as number)));
    for (let i = 0; i < ways.count; i += 1) {
      const way = ways.way[i] as number;
      const free = ways.free[i] as number;
      const next = i + 1 < ways.count ? (ways.free[i + 1] as number) : Infinity;
      const lowest = onScale ? onScale(free, state === 2) : free;
      const worth = all.worth[way] as number;
      const boards = all.pieces[way] as number;
      for (let g = 0; g < groups.length; g += 1) {
        const own = kinds[g] as BedKind;
        if (own === 2 && state === 2) continue;
        const kind = own > state ? own : state;
        const first = firsts[g] as number;
        const last = ends[g] as number;
        for (let s = first; s < last; s += 1) {
          const low = lows[s] as number;
          if (low > lowest && next <= low) continue;
          const lower = low <= lowest ? lowest : onScale ? onScale(low, state === 2) : low;
          const upper = lower + (extents[s] as number);
          if (upper > (highs[s] as number) + HAIR) {
            if (s === firsts[g]) firsts[g] = s + 1; // from here upwards it never fits again
            continue;
          }
          const sum = worth + (worths[s] as number);
          if (atLeast && sum + atLeast.ceiling.above(upper + gap) < atLeast.worth) {
            if (lower === lowest) break;
            continue;
          }
          if (upper > upTo) {
            if (!beyond) continue;
            crossings.kind.push(kind);
            crossings.way.push(way);
            crossings.slot.push(s);
            crossings.lower.push(lower);
          } else {
            (lists[kind] as UnbeatenWays).keep(upper + gap, sum, boards + (pieces[s] as number), s, lower, way);
          }
          // The rest of the group is worth no more and can begin no lower: it can only lose.
          if (lower === lowest) break;
        }
      }
    }
  }
  return told(slots, crossings, beyond);
}

/** The ways to fill a line of whose slots none need stay on a bed. */
export function waysToFill<Item>(
  groups: readonly (readonly Slot<Item>[])[],
  gap: number,
  limits: FillLimits<Item> = {},
): readonly Way<Item>[] {
  return waysByBed(
    groups.map((slots) => ({ slots, kind: 0 })),
    gap,
    limits,
  )[0] as readonly Way<Item>[];
}

const all = new WayColumns();
const lists = BED_KINDS.map(() => new UnbeatenWays(all));

/** With the empty line as the only way. */
function begin(): void {
  all.count = 0;
  for (const list of lists) list.count = 0;
  (lists[0] as UnbeatenWays).keep(-Infinity, 0, 0, NONE, -Infinity, NONE);
}

interface CrossingColumns {
  readonly kind: readonly BedKind[];
  /** Numbers of the way and of the slot. */
  readonly way: readonly number[];
  readonly slot: readonly number[];
  readonly lower: readonly number[];
}

/** The ways that were not beaten, and the crossings, as objects. A way stands on one that was told before it. */
function told<Item>(
  slots: readonly Slot<Item>[],
  crossings: CrossingColumns,
  beyond: FillLimits<Item>["beyond"],
): readonly (readonly Way<Item>[])[] {
  const parts = lists.map((): Way<Item>[] => []);
  const wayOf = (number: number) => parts[all.part[number] as number]?.[all.place[number] as number];
  for (const [part, list] of lists.entries()) {
    for (let i = 0; i < list.count; i += 1) {
      const number = list.way[i] as number;
      const below = all.below[number] as number;
      all.part[number] = part;
      all.place[number] = i;
      parts[part]?.push({
        free: list.free[i] as number,
        worth: all.worth[number] as number,
        pieces: all.pieces[number] as number,
        top: slots[all.slot[number] as number],
        lower: all.lower[number] as number,
        below: below === NONE ? undefined : wayOf(below),
      });
    }
  }
  for (let i = 0; beyond && i < crossings.way.length; i += 1) {
    beyond({
      kind: crossings.kind[i] as BedKind,
      way: wayOf(crossings.way[i] as number) as Way<Item>,
      slot: slots[crossings.slot[i] as number] as Slot<Item>,
      lower: crossings.lower[i] as number,
    });
  }
  return parts;
}
