import type { EntryKind } from "./entryKind";
import type { EntryState, PendingEntry, SavedEntry } from "./entryState";

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

/** The line that was entered last and is not among the workbook's yet, unless it is being taken out again. */
export function lastPending<E>(kind: EntryKind<E>, { pending, removing }: EntryState<E>): PendingEntry<E> | undefined {
  const going = removing.map(({ entry }) => kind.key(entry));
  return [...pending].reverse().find(({ entry, replaces }) => {
    if (replaces || !kind.isHere(entry)) return false;
    const place = going.indexOf(kind.key(entry));
    if (place < 0) return true;
    going.splice(place, 1);
    return false;
  });
}
