import { boardKind } from "./boards/boardKind";
import { createEntryDesk } from "./entry/entryDesk";
import type { Job } from "./job/job";
import { logKind } from "./logs/logKind";
import { createTallyDesk, type DeskOptions } from "./tally/tallyDesk";

/** The desks for trees, logs and boards, and what holds for all of them. */
export function createDesks(options: DeskOptions) {
  const { store, ...rest } = options;
  const job = () => store.get().job as Job;
  const shared = { ...rest, stand: () => job().stand };
  const logs = () => store.get().logs;
  const boards = () => store.get().boards;

  const desk = createTallyDesk(options);
  const logDesk = createEntryDesk({
    ...shared,
    kind: logKind(job, logs),
    now: logs,
    put: (change) => store.set({ logs: { ...logs(), ...change } }),
  });
  const boardDesk = createEntryDesk({
    ...shared,
    kind: boardKind(job, boards),
    now: boards,
    put: (change) => store.set({ boards: { ...boards(), ...change } }),
    place: {
      now: () => boards().log,
      of: ({ log }) => log,
      goTo: (log) => store.set({ boards: { ...boards(), log } }),
    },
  });
  const all = [desk, logDesk, boardDesk];

  return {
    desk,
    logDesk,
    boardDesk,
    /** To be called before the workbook is read; what it returns is called after. */
    beforeReading() {
      const settle = all.map((one) => one.beforeReading());
      return () => settle.forEach((one) => one());
    },
    restore: () => all.forEach((one) => one.restore()),
  };
}
