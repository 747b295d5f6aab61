import type { PendingEntry } from "./entryState";

/** What would be lost if the pane closed now. */
export interface Draft<E> {
  /** Where lines go: the point of a tally, the log of boards; "" where there is but one place. */
  readonly place: string;
  readonly text: string;
  readonly pending: readonly PendingEntry<E>[];
}

/** Where drafts are kept; a browser may refuse storage, and then the pane goes on without it. */
export type DraftStore = Pick<Storage, "getItem" | "setItem" | "removeItem">;

const keyOf = (table: string, stand: string) => `woodlot.${table.toLowerCase()}.${stand}`;

export function keepDraft<E>(
  store: DraftStore | undefined,
  table: string,
  stand: string,
  { place, text, pending }: Draft<E>,
): void {
  const draft: Draft<E> = { place, text, pending: pending.filter(({ written }) => !written) };
  try {
    if (text === "" && draft.pending.length === 0) store?.removeItem(keyOf(table, stand));
    else store?.setItem(keyOf(table, stand), JSON.stringify(draft));
  } catch {
    // Storage is full or forbidden: nothing on the screen depends on it.
  }
}

export function keptDraft<E>(store: DraftStore | undefined, table: string, stand: string): Draft<E> | undefined {
  try {
    const draft = JSON.parse(store?.getItem(keyOf(table, stand)) ?? "null") as Draft<E> | null;
    const sound = typeof draft?.place === "string" && typeof draft.text === "string" && Array.isArray(draft.pending);
    return sound ? draft : undefined;
  } catch {
    return undefined;
  }
}
