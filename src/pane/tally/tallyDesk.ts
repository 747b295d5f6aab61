import { HostProblem, type WorkbookHost } from "../../workbook/host";
import { PLOTS, plot as plotHeading } from "../../workbook/tables";
import { createEntryDesk } from "../entry/entryDesk";
import type { DraftStore } from "../entry/draft";
import { nextPoint, samePlot, type Job } from "../job/job";
import { plotsOf } from "../job/readTables";
import type { PaneState, TallyState } from "../paneState";
import type { Store } from "../store";
import { treeKind } from "./treeKind";

export interface DeskOptions {
  readonly store: Store<PaneState>;
  readonly host: WorkbookHost;
  readonly drafts: DraftStore | undefined;
  readonly refresh: () => Promise<void>;
  readonly say: (sentence: string) => void;
}

export type TallyDesk = ReturnType<typeof createTallyDesk>;

/** The desk for trees: lines of one point at a time, and the points themselves. */
export function createTallyDesk({ store, host, drafts, refresh, say }: DeskOptions) {
  const job = () => store.get().job as Job;
  const now = () => store.get().tally;
  const put = (change: Partial<TallyState>) => store.set({ tally: { ...now(), ...change } });
  const known = (plot: string) => job().plots.some(({ name }) => samePlot(name, plot));
  const kind = treeKind(job, now);
  const lines = createEntryDesk({
    kind,
    now,
    put,
    place: {
      now: () => now().plot,
      of: ({ plot }) => plot,
      goTo: (plot) => put({ plot: known(plot) ? plot : now().plot }),
    },
    stand: () => job().stand,
    host,
    drafts,
    refresh,
    say,
  });
  const go = (change: Partial<TallyState>) => {
    put(change);
    lines.keep();
  };

  return {
    ...lines,

    choose: (plot: string) => go({ plot, editing: undefined, text: now().editing === undefined ? now().text : "" }),

    /** Marks the point as visited, empty or not, and goes on to the next one. */
    finish({ empty }: { readonly empty: boolean }) {
      if (!lines.boxIsFree()) return;
      const { plot, pending } = now();
      const trees = lines.lines().length + pending.filter(({ entry }) => samePlot(entry.plot, plot)).length;
      if (!empty && trees === 0)
        return say(`Point ${plot} has no trees yet. If there are none, choose "No trees here".`);
      if (empty && trees > 0) return say(`Point ${plot} has trees. Remove them first if it is empty.`);
      const next = nextPoint(job(), plot);
      lines.also(async () =>
        host.updateRow(PLOTS, await findPlotRow(host, plot), {
          [plotHeading.visited]: "Yes",
          [plotHeading.none]: empty ? "Yes" : null,
        }),
      );
      go({ plot: next ?? plot, editing: undefined });
      const done = `Point ${plot} ${empty ? "has no trees" : "is finished"}.`;
      return say(next === undefined ? `${done} That was the last one.` : `${done} Now point ${next}.`);
    },

    /** As for every desk; and picks a point when none is picked. */
    beforeReading() {
      const settle = lines.beforeReading();
      return () => {
        settle();
        const { plot } = now();
        if (!known(plot)) put({ plot: nextPoint(job()) ?? job().plots.at(-1)?.name ?? "" });
      };
    },
  };
}

async function findPlotRow(host: WorkbookHost, plot: string): Promise<number> {
  const saved = plotsOf(await host.readTable(PLOTS)).find((one) => samePlot(one.name, plot));
  if (saved) return saved.row;
  throw new HostProblem(
    "refused",
    `Point ${plot} is no longer in the Plots table. Add it on the sheet Points, then try again.`,
  );
}
