import type { EntryKind } from "./entryKind";
import type { EntryState, SavedEntry } from "./entryState";

/**
 * Lines of this place that are in the workbook, the last one first, without those that are being changed or removed
 * just now. Of lines that read the same, one goes for each change.
 */
export function entryLines<E>(kind: EntryKind<E>, { pending, removing }: EntryState<E>): readonly SavedEntry<E>[] {
  const going = [...pending.flatMap(({ replaces }) => replaces ?? []), ...removing.map(({ entry }) => entry)].map(
    kind.key,
  );
  return [...kind.saved()]
    .filter(({ entry }) => kind.isHere(entry))
    .reverse()
    .filter(({ entry }) => {
      const place = going.indexOf(kind.key(entry));
      if (place < 0) return true;
      going.splice(place, 1);
      return false;
    });
}
