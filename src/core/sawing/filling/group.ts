import type { Slot } from "./way";

/** Slots of one extent, those worth most first. */
export interface Group<Item> {
  readonly slots: readonly Slot<Item>[];
  /** What such a slot is to the bed. */
  readonly kind: BedKind;
}

/** 0: cannot stay on the bed. 1: can. 2: must, so that one such slot is the most that a filling can have. */
export type BedKind = 0 | 1 | 2;
export const BED_KINDS: readonly BedKind[] = [0, 1, 2];

/** The slots of all groups in columns of plain numbers, and where each group ends among them. */
export function columnsOf<Item>(groups: readonly Group<Item>[]) {
  const slots: Slot<Item>[] = [];
  const ends: number[] = [];
  const kinds: BedKind[] = [];
  for (const group of groups) {
    for (const slot of group.slots) slots.push(slot);
    ends.push(slots.length);
    kinds.push(group.kind);
  }
  const lows: number[] = [];
  const highs: number[] = [];
  const extents: number[] = [];
  const worths: number[] = [];
  const pieces: number[] = [];
  for (const slot of slots) {
    lows.push(slot.low);
    highs.push(slot.high);
    extents.push(slot.extent);
    worths.push(slot.worth);
    pieces.push(slot.pieces);
  }
  return { slots, lows, highs, extents, worths, pieces, kinds, ends };
}
