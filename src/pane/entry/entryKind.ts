import type { TableContent } from "../../workbook/host";
import type { TableRow } from "../../workbook/plan";
import type { SavedEntry } from "./entryState";

/** What a typed line means: nothing yet, an entry that can be saved, or what is missing to make it one. */
export type ParsedEntry<E> =
  | { readonly kind: "blank" }
  | { readonly kind: "entry"; readonly entry: E }
  | { readonly kind: "unclear"; readonly because: string };

/** What a desk must know of the lines that are typed at it: trees, logs or boards. */
export interface EntryKind<E> {
  readonly table: string;
  readonly sheet: string;
  /** @param changes the entry that the line takes the place of, if it does */
  read(text: string, changes: E | undefined): ParsedEntry<E>;
  /** The line one would type for an entry, so that it can be put back into the box. */
  write(entry: E): string;
  /** An entry in words. */
  say(entry: E): string;
  /** Tells entries apart that read alike; two with the same key are the same. */
  readonly key: (entry: E) => string;
  /** Where the entry belongs, in words that follow "The line ...": " of point 9", or nothing. */
  whereabouts(entry: E): string;
  /** False for an entry of another place than the one that is shown. */
  isHere(entry: E): boolean;
  /** Cells of its row; computed columns are the workbook's own. */
  row(entry: E): TableRow;
  /** Entries of the table as it is read anew. */
  savedIn(table: TableContent): readonly SavedEntry<E>[];
  /** Entries of the workbook as it was last read. */
  saved(): readonly SavedEntry<E>[];
  /** Said when there is no line to take back. */
  readonly nothingToUndo: () => string;
}
