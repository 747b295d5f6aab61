import type { IWorkbookData } from "@univerjs/core";
import type { BrowserStorage } from "./browserStorage";
import { CannotOpen, opened, saved, type SavedWorkbook } from "./saved";

const CURRENT = "current";
const KEPT_ASIDE = "kept aside";
const QUIET_MS = 500;

export interface Keeper {
  /** What was saved here before; undefined when there is nothing. What cannot be read is kept aside, and CannotOpen thrown. */
  restore(): Promise<SavedWorkbook | undefined>;
  /** Sets the saved copy aside, as when it was read but would not open. */
  keepAside(): Promise<void>;
  keptAside(): Promise<unknown>;
  /** Notes a change; the workbook is saved once changes pause. */
  changed(): void;
  /** Saves now what is not saved yet. */
  flush(): Promise<void>;
}

/** Saves the workbook in this browser a moment after each change, so that a reload loses nothing. */
export function keeper(
  storage: BrowserStorage,
  snapshot: () => IWorkbookData,
  say: (state: "saving" | "saved" | "failed") => void,
): Keeper {
  let timer: ReturnType<typeof setTimeout> | undefined;
  let saving = Promise.resolve();

  const save = async () => {
    timer = undefined;
    try {
      await storage.write(CURRENT, saved(snapshot(), new Date().toISOString()));
      if (timer === undefined) say("saved");
    } catch {
      say("failed");
    }
  };
  const keepAside = async () => {
    await storage.write(KEPT_ASIDE, await storage.read(CURRENT));
    await storage.remove(CURRENT);
  };

  return {
    async restore() {
      const found = await storage.read(CURRENT);
      if (found === undefined) return undefined;
      try {
        return opened(found);
      } catch (problem) {
        if (problem instanceof CannotOpen) await keepAside();
        throw problem;
      }
    },
    keepAside,
    keptAside: () => storage.read(KEPT_ASIDE),
    changed() {
      if (timer === undefined) say("saving");
      clearTimeout(timer);
      timer = setTimeout(() => {
        saving = saving.then(save);
      }, QUIET_MS);
    },
    async flush() {
      if (timer !== undefined) {
        clearTimeout(timer);
        saving = saving.then(save);
      }
      await saving;
    },
  };
}
