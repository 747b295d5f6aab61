import type { WorkbookHost } from "../workbook/host";
import { readBucking } from "./job/readBucking";
import { readCut } from "./job/readCut";
import { readComparison } from "./job/readComparison";
import type { Job } from "./job/job";
import { readJob } from "./job/readJob";
import { readLocalVolume } from "./job/readLocalVolume";
import { readMapped } from "./job/readMapped";
import { readProducts } from "./job/readProducts";
import { readSawing } from "./job/readSawing";
import { readStand } from "./job/readStand";
import type { PaneState } from "./paneState";
import { fitPrint } from "./sawing/fitPrint";
import { readOrders } from "./solver/readOrders";
import { sentence } from "./sentence";
import type { Store } from "./store";

const SETTLES_IN = 400; // ms, so that a burst of changes is read once

/**
 * Keeps the pane's picture of the workbook fresh: on demand, and a moment after anyone changed a cell.
 *
 * @param onRead called when a reading begins; what it returns is called with the cruise that was read
 */
export function createRefresher(store: Store<PaneState>, host: WorkbookHost, onRead: () => (job: Job) => void) {
  let reading: Promise<void> | undefined;
  let again = false;
  let timer: ReturnType<typeof setTimeout> | undefined;

  const readOnce = async () => {
    const onJob = onRead();
    try {
      const job = await readJob(host);
      store.set({ job: job ?? "none", unread: "" });
      if (!job) return;
      onJob(job);
      store.set({ mapped: await readMapped(host) });
      store.set({ stand: await readStand(host) });
      store.set({ products: await readProducts(host) });
      store.set({ comparison: await readComparison(host) });
      store.set({ cut: await readCut(host) });
      const sawing = await readSawing(host);
      store.set({ sawing });
      if (sawing !== "none") await fitPrint(host, sawing);
      store.set({ bucking: await readBucking(host) });
      store.set({ localVolume: await readLocalVolume(host) });
      store.set({ orders: await readOrders(host, job) });
    } catch (problem) {
      store.set({ unread: sentence(problem) });
    }
  };

  /** Reads now; when a reading is under way it may have begun too early, so one more follows it. */
  const refresh = async (): Promise<void> => {
    again = true;
    reading ??= (async () => {
      while (again) {
        again = false;
        await readOnce();
      }
      reading = undefined;
    })();
    return reading;
  };

  return {
    refresh,
    soon() {
      clearTimeout(timer);
      timer = setTimeout(() => void refresh(), SETTLES_IN);
    },
    stop: () => clearTimeout(timer),
  };
}
