/** A line that was entered but is not in the workbook yet, or not known to be. */
export interface PendingEntry<E> {
  readonly id: number;
  readonly text: string;
  readonly entry: E;
  /** What it takes the place of, when a line was edited. */
  readonly replaces?: E;
  /** True once it is in the workbook, while that is being read again. */
  readonly written?: boolean;
}

/** A line as it stands in the workbook. */
export interface SavedEntry<E> {
  /** Row of its table, counted from 0. */
  readonly row: number;
  readonly entry: E;
}

/** One box for a line at a time, and what has become of the lines. */
export interface EntryState<E> {
  readonly text: string;
  /** The row of the table that the box changes; undefined while it adds. */
  readonly editing: number | undefined;
  readonly pending: readonly PendingEntry<E>[];
  /** Lines that are being taken out of the workbook. */
  readonly removing: readonly { readonly id: number; readonly entry: E; readonly written?: boolean }[];
  /** The write that failed, and why; everything behind it waits. */
  readonly held: { readonly id: number; readonly why: string } | undefined;
}

export const noEntries = { text: "", editing: undefined, pending: [], removing: [], held: undefined } as const;
