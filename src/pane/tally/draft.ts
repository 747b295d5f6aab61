import type { TallyTree } from "./tallyTree";

/** A line that was entered but is not in the workbook yet. */
export interface PendingTree {
  readonly id: number;
  readonly plot: string;
  readonly text: string;
  readonly tree: TallyTree;
  /** The tree that it takes the place of, when a line was edited. */
  readonly replaces?: TallyTree;
  /** True once it is in the workbook, while that is being read again. */
  readonly written?: boolean;
}

/** What would be lost if the pane closed now. */
export interface Draft {
  readonly plot: string;
  readonly text: string;
  readonly pending: readonly PendingTree[];
}

const KEY = "woodlot.tally";

/** Where drafts are kept; a browser may refuse storage, and then the pane goes on without it. */
export type DraftStore = Pick<Storage, "getItem" | "setItem" | "removeItem">;

export function keepDraft(store: DraftStore | undefined, stand: string, { plot, text, pending }: Draft): void {
  const draft: Draft = { plot, text, pending: pending.filter(({ written }) => !written) };
  try {
    if (text === "" && draft.pending.length === 0) store?.removeItem(`${KEY}.${stand}`);
    else store?.setItem(`${KEY}.${stand}`, JSON.stringify(draft));
  } catch {
    // Storage is full or forbidden: nothing on the screen depends on it.
  }
}

export function keptDraft(store: DraftStore | undefined, stand: string): Draft | undefined {
  try {
    const draft = JSON.parse(store?.getItem(`${KEY}.${stand}`) ?? "null") as Draft | null;
    const sound = typeof draft?.plot === "string" && typeof draft.text === "string" && Array.isArray(draft.pending);
    return sound ? draft : undefined;
  } catch {
    return undefined;
  }
}
