import type { Slot } from "./filling/way";
import type { Flitch } from "./flitches";
import type { Face } from "./outline";
import type { RoomFor } from "./room";
import { toTheBark, type Sides } from "./sides";

/**
 * The flitches as slots of a stack whose line crosses the pith at 0. One is left out when another of its thickness is
 * worth as much and may lie wherever it may: it can never be missed. In a group, those worth most first.
 */
export function candidates(
  roomFor: RoomFor,
  groups: readonly (readonly Flitch[])[],
  face: Face,
  sides: Sides = toTheBark,
): readonly (readonly Slot<Flitch>[])[] {
  return groups.map((group) => undominated(withRoom(roomFor, group, face, sides))).filter((group) => group.length > 0);
}

/** Every flitch of a group that has room. */
export function withRoom(
  roomFor: RoomFor,
  group: readonly Flitch[],
  face: Face,
  sides: Sides,
): readonly Slot<Flitch>[] {
  const slots: Slot<Flitch>[] = [];
  for (const item of group) {
    const room = roomFor(item, face, sides);
    if (!room) continue;
    const { thickness: extent, worth, boards } = item;
    slots.push({ extent, low: room.low, high: room.high, worth, pieces: boards.length, item });
  }
  // Flitches come sorted by worth, so that sorting is hardly ever needed.
  if (!slots.every((slot, i) => i === 0 || bestFirst(slots[i - 1] as Slot<Flitch>, slot) <= 0)) slots.sort(bestFirst);
  return slots;
}

export function undominated(group: readonly Slot<Flitch>[]): readonly Slot<Flitch>[] {
  const kept: Slot<Flitch>[] = [];
  for (const slot of group) {
    if (!kept.some(({ low, high }) => low <= slot.low && high >= slot.high)) kept.push(slot);
  }
  return kept;
}

const bestFirst = (a: Slot<Flitch>, b: Slot<Flitch>): number =>
  b.worth - a.worth ||
  a.pieces - b.pieces ||
  b.high - a.high ||
  a.low - b.low ||
  b.item.length - a.item.length ||
  a.item.width - b.item.width;

/** The slots as they are seen from the other end of their line. */
export const fromOtherEnd = (slots: readonly Slot<Flitch>[]): readonly Slot<Flitch>[] =>
  slots.map((slot) => ({ ...slot, low: 0 - slot.high, high: 0 - slot.low }));
