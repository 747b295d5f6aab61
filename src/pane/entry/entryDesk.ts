import type { WorkbookHost } from "../../workbook/host";
import { keepDraft, keptDraft, type DraftStore } from "./draft";
import type { EntryKind, ParsedEntry } from "./entryKind";
import { entryLines, lastPending } from "./entryLines";
import type { EntryState, SavedEntry } from "./entryState";
import { createEntryWrites } from "./entryWrites";

/** Where lines go, when there is more than one place for them. */
export interface EntryPlace<E> {
  readonly now: () => string;
  readonly of: (entry: E) => string;
  readonly goTo: (place: string) => void;
}

export interface EntryDeskOptions<E> {
  readonly kind: EntryKind<E>;
  readonly now: () => EntryState<E>;
  /** Changes what is shown, and nothing else. */
  readonly put: (change: Partial<EntryState<E>>) => void;
  readonly place?: EntryPlace<E>;
  readonly stand: () => string;
  readonly host: WorkbookHost;
  readonly drafts: DraftStore | undefined;
  readonly refresh: () => Promise<void>;
  readonly say: (sentence: string) => void;
}

/** All that one can do at a box for lines, whatever they are lines of. */
export interface EntryDesk<E> {
  readonly kind: EntryKind<E>;
  read(): ParsedEntry<E>;
  /** Lines in the workbook that belong here, the last one first. */
  lines(): readonly SavedEntry<E>[];
  type(text: string): void;
  clear(): void;
  edit(saved: SavedEntry<E> | undefined): void;
  enter(): void;
  step(towards: "earlier" | "later"): boolean;
  remove(saved: SavedEntry<E>): void;
  undo(): void;
  retry(): void;
  leaveOut(): void;
  /** Tells what keeps the box from being left, and answers whether it may be. */
  boxIsFree(): boolean;
  /** Puts another write behind the lines. */
  also(run: () => Promise<void>): void;
  /** Keeps what is typed, after a change that did not come from here. */
  keep(): void;
  beforeReading(): () => void;
  restore(): void;
}

/** A desk for lines of one kind. Typing never waits for the workbook. */
export function createEntryDesk<E>(options: EntryDeskOptions<E>): EntryDesk<E> {
  const { kind, now, put, place, stand, host, drafts, refresh, say } = options;
  const keep = () => {
    const { text, pending } = now();
    keepDraft(drafts, kind.table, stand(), { place: place?.now() ?? "", text, pending });
  };
  const set = (change: Partial<EntryState<E>>) => {
    put(change);
    keep();
  };
  const writes = createEntryWrites({ kind, host, now, set, refresh, say });
  const lines = () => entryLines(kind, now());
  const changed = () => kind.saved().find(({ row }) => row === now().editing)?.entry;

  const desk: EntryDesk<E> = {
    kind,
    lines,
    keep,
    also: (run) => writes.also(run),
    retry: () => writes.retry(),
    read: () => kind.read(now().text, changed()),
    type: (text) => set({ text }),
    clear: () => set({ text: "", editing: undefined }),
    edit: (saved) => set({ editing: saved?.row, text: saved ? kind.write(saved.entry) : "" }),

    boxIsFree() {
      if (now().text.trim() === "") return true;
      say("The line in the box is not saved yet. Press Enter to save it, or Esc to clear it.");
      return false;
    },

    /** Saves the line in the box; what cannot be read stays there, and what is missing is told below it. */
    enter() {
      const line = desk.read();
      if (line.kind === "unclear") say(line.because);
      if (line.kind !== "entry") return;
      const { text } = now();
      const replaces = changed();
      set({ text: "", editing: undefined });
      writes.put({ text, entry: line.entry, ...(replaces && { replaces }) });
      say("");
    },

    /** From an empty box, or an unchanged older line, to the line before or after it. */
    step(towards) {
      const { text, editing } = now();
      const shown = lines();
      const at = shown.findIndex(({ row }) => row === editing);
      if (text !== (at < 0 ? "" : kind.write((shown[at] as SavedEntry<E>).entry))) return false;
      const next = at + (towards === "earlier" ? 1 : -1);
      if (next < -1 || next >= shown.length) return false;
      desk.edit(shown[next]);
      return true;
    },

    remove({ row, entry }) {
      if (now().editing === row) desk.clear();
      writes.remove(entry);
      say(`Removed ${kind.say(entry)}.`);
    },

    /** Takes the last line back out of the workbook and puts its text in the box. */
    undo() {
      if (!desk.boxIsFree()) return;
      const waiting = lastPending(kind, now());
      const saved = lines()[0];
      if (waiting) {
        if (waiting.written || !writes.drop(waiting.id)) writes.remove(waiting.entry);
        set({ text: kind.write(waiting.entry) });
      } else if (saved) {
        writes.remove(saved.entry);
        set({ text: kind.write(saved.entry) });
      } else return say(kind.nothingToUndo());
      return say("The last line is back in the box.");
    },

    /** Leaves out what could not be written; a line goes back into the box. */
    leaveOut() {
      const line = now().pending.find(({ id }) => id === now().held?.id);
      if (line && !desk.boxIsFree()) return;
      writes.leaveOut();
      if (!line) return;
      place?.goTo(place.of(line.entry));
      set({ text: line.text });
    },

    /**
     * To be called before the workbook is read; what it returns is called after. What was written before the reading
     * began is then in what was read and waits no more.
     */
    beforeReading() {
      const written = new Set([...now().pending, ...now().removing].flatMap((one) => (one.written ? [one.id] : [])));
      return () => {
        const { pending, removing } = now();
        // put(), not set(), which would keep it as the draft before the old one is brought back
        put({
          pending: pending.filter(({ id }) => !written.has(id)),
          removing: removing.filter(({ id }) => !written.has(id)),
        });
      };
    },

    /** Brings back what was typed when the pane last closed. */
    restore() {
      const draft = keptDraft<E>(drafts, kind.table, stand());
      if (!draft) return;
      place?.goTo(draft.place);
      set({ text: draft.text });
      writes.restore(draft.pending);
    },
  };
  return desk;
}
