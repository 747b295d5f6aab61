import type { WorkbookHost } from "../../workbook/host";
import type { TableRow } from "../../workbook/plan";
import { PLOTS, TREES } from "../../workbook/tables";
import type { TallyState } from "../paneState";
import { sentence } from "../sentence";
import type { PendingTree } from "./draft";
import { findPlotRow, findTreeRow } from "./findRow";
import type { TallyTree } from "./tallyTree";
import { treeRow } from "./treeRow";
import { createWriteQueue } from "./writeQueue";

export interface TallyWritesOptions {
  readonly host: WorkbookHost;
  readonly now: () => TallyState;
  readonly set: (change: Partial<TallyState>) => void;
  /** The point as its own table has it: a number where the workbook has a number. */
  readonly plotValue: (name: string) => string | number;
  readonly refresh: () => Promise<void>;
  readonly say: (sentence: string) => void;
}

export type TallyWrites = ReturnType<typeof createTallyWrites>;

/** All writes of the tally, one after the other. What is not written yet stays in sight, with the reason if one failed. */
export function createTallyWrites({ host, now, set, plotValue, refresh, say }: TallyWritesOptions) {
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

  const write = (pending: PendingTree) =>
    queue.add({
      id: pending.id,
      run: async () => {
        const row = treeRow(plotValue(pending.plot), pending.tree);
        if (pending.replaces) await host.updateRow(TREES, await findTreeRow(host, pending.plot, pending.replaces), row);
        else await host.appendRows(TREES, [row]);
      },
    });

  return {
    put(tree: Omit<PendingTree, "id">) {
      const pending = { ...tree, id: newId() };
      set({ pending: [...now().pending, pending] });
      write(pending);
    },

    remove(plot: string, tree: TallyTree) {
      const id = newId();
      set({ removing: [...now().removing, { id, plot, tree }] });
      queue.add({ id, run: async () => host.deleteRow(TREES, await findTreeRow(host, plot, tree)) });
    },

    changePlot(plot: string, changes: TableRow) {
      queue.add({ id: newId(), run: async () => host.updateRow(PLOTS, await findPlotRow(host, plot), changes) });
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

    /** Leaves out the write that failed and goes on with the others; gives the line back when it was one. */
    leaveOut(): PendingTree | undefined {
      const { held, pending, removing } = now();
      if (!held) return undefined;
      const line = pending.find(({ id }) => id === held.id);
      queue.drop(held.id);
      const left = pending.filter(({ id }) => id !== held.id);
      const next = restoring ? left.find(({ written }) => !written) : undefined;
      set({
        pending: left,
        removing: removing.filter(({ id }) => id !== held.id),
        held: next && { id: next.id, why: held.why },
      });
      if (!next) queue.retry();
      return line;
    },

    /** Lines kept from when the pane last closed wait to be looked at, since some may have been written after all. */
    restore(kept: readonly PendingTree[]) {
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
