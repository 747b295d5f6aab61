import type { PaneState } from "./paneState";
import { sentence } from "./sentence";
import type { Store } from "./store";

const QUIET_FOR = 500; // ms, work shorter than this shows nothing

/** Does work with the workbook, one verb at a time: shows it when it takes long, and says why when it fails. */
export const createRunner =
  (store: Store<PaneState>) =>
  async (doing: string, work: () => Promise<void>): Promise<boolean> => {
    const timer = setTimeout(() => store.set({ busy: doing }), QUIET_FOR);
    store.set({ problem: "" });
    try {
      await work();
      return true;
    } catch (problem) {
      store.set({ problem: sentence(problem) });
      return false;
    } finally {
      clearTimeout(timer);
      store.set({ busy: "" });
    }
  };
