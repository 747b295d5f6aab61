import { HostProblem, type WorkbookHost } from "../../workbook/host";
import { sentence } from "../sentence";
import type { EntryKind } from "./entryKind";
import type { EntryState, PendingEntry } from "./entryState";
import { createWriteQueue } from "./writeQueue";

export interface EntryWritesOptions<E> {
  readonly kind: EntryKind<E>;
  readonly host: WorkbookHost;
  readonly now: () => EntryState<E>;
  readonly set: (change: Partial<EntryState<E>>) => void;
  readonly refresh: () => Promise<void>;
  readonly say: (sentence: string) => void;
}

/** All writes of a box, one after the other. What is not written yet stays in sight, with the reason if one failed. */
export function createEntryWrites<E>({ kind, host, now, set, refresh, say }: EntryWritesOptions<E>) {
  let lastId = 0;
  let restoring = false;
  const newId = () => (lastId += 1);

  const queue = createWriteQueue({
    onWritten: ({ id }) => {
      const mark = <T extends { readonly id: number }>(one: T): T => (one.id === id ? { ...one, written: true } : one);
      set({ held: undefined, pending: now().pending.map(mark), removing: now().removing.map(mark) });
    },
    onFailed: ({ id }, problem) => {
      set({ held: { id, why: sentence(problem) } });
      say("");
    },
    onDrained: () => void refresh(),
  });

  /**
   * Row of an entry now: the last one with its key. Row numbers are not remembered, because a table may be sorted or
   * cut short while the pane stands open.
   */
  const findRow = async (entry: E): Promise<number> => {
    const saved = [...kind.savedIn(await host.readTable(kind.table))]
      .reverse()
      .find((one) => kind.key(one.entry) === kind.key(entry));
    if (saved) return saved.row;
    throw new HostProblem(
      "refused",
      `The line "${kind.write(entry)}"${kind.whereabouts(entry)} is no longer in the ${kind.table} table, so it was not changed. Look at the sheet ${kind.sheet}.`,
    );
  };

  const write = ({ id, entry, replaces }: PendingEntry<E>) =>
    queue.add({
      id,
      run: async () => {
        if (replaces) await host.updateRow(kind.table, await findRow(replaces), kind.row(entry));
        else await host.appendRows(kind.table, [kind.row(entry)]);
      },
    });

  return {
    put(entered: Omit<PendingEntry<E>, "id">) {
      const pending = { ...entered, id: newId() };
      set({ pending: [...now().pending, pending] });
      write(pending);
    },

    remove(entry: E) {
      const id = newId();
      set({ removing: [...now().removing, { id, entry }] });
      queue.add({ id, run: async () => host.deleteRow(kind.table, await findRow(entry)) });
    },

    /** Something else that belongs between the lines, in its turn. */
    also(run: () => Promise<void>) {
      queue.add({ id: newId(), run });
    },

    /** Takes back a line that has not been written; false when that is too late. */
    drop(id: number): boolean {
      if (!queue.drop(id)) return false;
      set({ pending: now().pending.filter((one) => one.id !== id) });
      return true;
    },

    retry() {
      restoring = false;
      set({ held: undefined });
      queue.retry();
    },

    /** Leaves out the write that failed and goes on with the others. */
    leaveOut() {
      const { held, pending, removing } = now();
      if (!held) return;
      queue.drop(held.id);
      const left = pending.filter(({ id }) => id !== held.id);
      const next = restoring ? left.find(({ written }) => !written) : undefined;
      set({
        pending: left,
        removing: removing.filter(({ id }) => id !== held.id),
        held: next && { id: next.id, why: held.why },
      });
      if (!next) queue.retry();
    },

    /** Lines kept from when the pane last closed wait to be looked at, since some may have been written after all. */
    restore(kept: readonly PendingEntry<E>[]) {
      if (kept.length === 0) return;
      restoring = true;
      queue.hold();
      const pending = kept.map((one) => ({ ...one, id: newId() }));
      const why =
        "These lines may not have reached the workbook before the pane closed. Compare them with the list below.";
      set({ pending, held: { id: pending[0]?.id ?? 0, why } });
      pending.forEach(write);
    },
  };
}
