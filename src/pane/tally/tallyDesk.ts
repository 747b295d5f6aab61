import type { WorkbookHost } from "../../workbook/host";
import { plot as plotHeading } from "../../workbook/tables";
import { nextPoint, samePlot, treesOn, type Job, type SavedTree } from "../job/job";
import type { PaneState, TallyState } from "../paneState";
import type { Store } from "../store";
import { keepDraft, keptDraft, type DraftStore } from "./draft";
import { linesOf } from "./linesOf";
import { parseTallyLine, type ParsedLine } from "./parseTallyLine";
import { sayTree } from "./sayTree";
import { createTallyWrites } from "./tallyWrites";
import { writeTallyLine } from "./writeTallyLine";

export interface TallyDeskOptions {
  readonly store: Store<PaneState>;
  readonly host: WorkbookHost;
  readonly drafts: DraftStore | undefined;
  readonly refresh: () => Promise<void>;
  readonly say: (sentence: string) => void;
}

export type TallyDesk = ReturnType<typeof createTallyDesk>;

/** All that one can do at the tally box. Typing never waits for the workbook. */
export function createTallyDesk({ store, host, drafts, refresh, say }: TallyDeskOptions) {
  const job = () => store.get().job as Job;
  const now = () => store.get().tally;
  const set = (change: Partial<TallyState>) => {
    store.set({ tally: { ...now(), ...change } });
    keepDraft(drafts, job().stand, now());
  };
  const plotValue = (name: string) => job().plots.find((plot) => samePlot(plot.name, name))?.value ?? name;
  const writes = createTallyWrites({ host, now, set, plotValue, refresh, say });
  const lines = () => linesOf(job(), now());
  const edit = (saved: SavedTree | undefined) =>
    set({ editing: saved?.row, text: saved ? writeTallyLine(saved.tree) : "" });
  const boxIsFree = () => {
    if (now().text.trim() === "") return true;
    say("The line in the box is not saved yet. Press Enter to save it, or Esc to clear it.");
    return false;
  };

  const desk = {
    edit,
    retry: () => writes.retry(),

    read(): ParsedLine {
      const { text, pending, plot } = now();
      const last = pending.at(-1)?.tree ?? treesOn(job(), plot).at(-1)?.tree ?? job().trees.at(-1)?.tree;
      const known = last && last.species !== "" ? last.species : undefined;
      return parseTallyLine(text, { species: job().species, lastSpecies: known });
    },

    type: (text: string) => set({ text }),

    clear: () => set({ text: "", editing: undefined }),

    choose: (plot: string) => set({ plot, editing: undefined, text: now().editing === undefined ? now().text : "" }),

    /** Saves the line in the box; what cannot be read stays there, and what is missing is told below it. */
    enter() {
      const line = desk.read();
      if (line.kind === "unclear") say(line.because);
      if (line.kind !== "tree") return;
      const { plot, text, editing } = now();
      const replaced = editing === undefined ? undefined : job().trees.find(({ row }) => row === editing);
      set({ text: "", editing: undefined });
      writes.put({ plot, text, tree: line.tree, ...(replaced && { replaces: replaced.tree }) });
      say("");
    },

    /** From an empty box, or an unchanged older line, to the line before or after it. */
    step(towards: "earlier" | "later"): boolean {
      const { text, editing } = now();
      const shown = lines();
      const at = shown.findIndex(({ row }) => row === editing);
      if (text !== (at < 0 ? "" : writeTallyLine((shown[at] as SavedTree).tree))) return false;
      const next = at + (towards === "earlier" ? 1 : -1);
      if (next < -1 || next >= shown.length) return false;
      edit(shown[next]);
      return true;
    },

    remove(saved: SavedTree) {
      if (now().editing === saved.row) desk.clear();
      writes.remove(saved.plot, saved.tree);
      say(`Removed ${sayTree(saved.tree, job().species)}.`);
    },

    /** Takes the last line back out of the tally and puts its text in the box. */
    undo() {
      if (!boxIsFree()) return;
      const { pending, plot } = now();
      const waiting = pending.filter((one) => samePlot(one.plot, plot) && !one.written && !one.replaces).at(-1);
      const saved = lines()[0];
      if (waiting) {
        if (!writes.drop(waiting.id)) writes.remove(waiting.plot, waiting.tree);
        set({ text: waiting.text });
      } else if (saved) {
        writes.remove(saved.plot, saved.tree);
        set({ text: writeTallyLine(saved.tree) });
      } else return say(`Point ${plot} has no line to take back.`);
      return say("The last line is back in the box.");
    },

    /** Marks the point as visited, empty or not, and goes on to the next one. */
    finish({ empty }: { readonly empty: boolean }) {
      if (!boxIsFree()) return;
      const { plot, pending } = now();
      const trees = lines().length + pending.filter((one) => samePlot(one.plot, plot)).length;
      if (!empty && trees === 0)
        return say(`Point ${plot} has no trees yet. If there are none, choose "No trees here".`);
      if (empty && trees > 0) return say(`Point ${plot} has trees. Remove them first if it is empty.`);
      const next = nextPoint(job(), plot);
      writes.changePlot(plot, { [plotHeading.visited]: "Yes", [plotHeading.none]: empty ? "Yes" : null });
      set({ plot: next ?? plot, editing: undefined });
      const done = `Point ${plot} ${empty ? "has no trees" : "is finished"}.`;
      return say(next === undefined ? `${done} That was the last one.` : `${done} Now point ${next}.`);
    },

    /** Leaves out what could not be written; a line goes back into the box. */
    leaveOut() {
      const line = now().pending.find(({ id }) => id === now().held?.id);
      if (line && !boxIsFree()) return;
      writes.leaveOut();
      if (line) set({ text: line.text, plot: line.plot });
    },

    /**
     * To be called before the workbook is read; what it returns is called after. What was written before the reading
     * began is then in what was read and waits no more. Picks a point when none is picked.
     */
    beforeReading() {
      const written = new Set([...now().pending, ...now().removing].flatMap((one) => (one.written ? [one.id] : [])));
      return () => {
        const { pending, removing, plot } = now();
        const known = job().plots.some(({ name }) => samePlot(name, plot));
        const tally = {
          ...now(),
          pending: pending.filter(({ id }) => !written.has(id)),
          removing: removing.filter(({ id }) => !written.has(id)),
          plot: known ? plot : (nextPoint(job()) ?? job().plots.at(-1)?.name ?? ""),
        };
        store.set({ tally }); // not set(), which would keep it as the draft before the old one is brought back
      };
    },

    /** Brings back what was typed when the pane last closed. */
    restore() {
      const draft = keptDraft(drafts, job().stand);
      if (!draft) return;
      const known = job().plots.some(({ name }) => samePlot(name, draft.plot));
      set({ text: draft.text, plot: known ? draft.plot : now().plot });
      writes.restore(draft.pending);
    },
  };
  return desk;
}
