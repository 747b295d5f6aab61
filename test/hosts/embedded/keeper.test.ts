import type { IWorkbookData } from "@univerjs/core";
import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import type { BrowserStorage } from "../../../src/hosts/embedded/page/browserStorage";
import { keeper } from "../../../src/hosts/embedded/page/keeper";
import { openedFile, saved } from "../../../src/hosts/embedded/page/saved";

const WORKBOOK = { sheetOrder: ["a"], sheets: { a: { id: "a" } } } as unknown as IWorkbookData;

function storageOver(entries: Map<string, unknown>): BrowserStorage {
  return {
    read: (key) => Promise.resolve(entries.get(key)),
    write: (key, value) => Promise.resolve(void entries.set(key, value)),
    remove: (key) => Promise.resolve(void entries.delete(key)),
  };
}

function prepared(current?: unknown) {
  const entries = new Map<string, unknown>(current === undefined ? [] : [["current", current]]);
  const told: string[] = [];
  let snapshots = 0;
  const snapshot = () => {
    snapshots += 1;
    return WORKBOOK;
  };
  const keep = keeper(storageOver(entries), snapshot, (state) => told.push(state));
  return { entries, told, keep, snapshots: () => snapshots };
}

beforeEach(() => void vi.useFakeTimers());
afterEach(() => void vi.useRealTimers());

describe("saving in the browser", () => {
  it("waits until changes pause, then saves once", async () => {
    const { entries, told, keep, snapshots } = prepared();
    keep.changed();
    await vi.advanceTimersByTimeAsync(300);
    keep.changed();
    await vi.advanceTimersByTimeAsync(300);
    expect(snapshots()).toBe(0);
    await vi.advanceTimersByTimeAsync(300);
    expect(snapshots()).toBe(1);
    expect(entries.get("current")).toMatchObject({ format: "woodlot-workbook", version: 1, workbook: WORKBOOK });
    expect(told).toEqual(["saving", "saved"]);
  });

  it("saves at once when the page is left, and not again when nothing changed", async () => {
    const { keep, snapshots } = prepared();
    keep.changed();
    await keep.flush();
    await keep.flush();
    await vi.advanceTimersByTimeAsync(1000);
    expect(snapshots()).toBe(1);
  });

  it("says when the browser keeps nothing", async () => {
    const told: string[] = [];
    const storage = { ...storageOver(new Map()), write: () => Promise.reject(new Error("full")) };
    const keep = keeper(
      storage,
      () => WORKBOOK,
      (state) => told.push(state),
    );
    keep.changed();
    await keep.flush();
    expect(told).toEqual(["saving", "failed"]);
  });
});

describe("opening what was saved", () => {
  it("gives nothing for a first visit, and the workbook for a second", async () => {
    expect(await prepared().keep.restore()).toBeUndefined();
    expect((await prepared(saved(WORKBOOK, "then")).keep.restore())?.workbook).toEqual(WORKBOOK);
  });

  it.each([
    ["another thing", { some: "thing" }, "not a workbook saved from this page"],
    ["another version", { ...saved(WORKBOOK, ""), version: 99 }, "another version of this page (99)"],
    [
      "lost sheets",
      saved({ sheetOrder: ["a", "b"], sheets: { a: {} } } as unknown as IWorkbookData, ""),
      "sheets are missing",
    ],
    ["no workbook", { format: "woodlot-workbook", version: 1 }, "sheets are missing"],
  ])("keeps aside and says so: %s", async (_, broken, sentence) => {
    const { entries, keep } = prepared(broken);
    await expect(keep.restore()).rejects.toThrow(sentence);
    expect(entries.has("current")).toBe(false);
    expect(await keep.keptAside()).toEqual(broken);
  });

  it("says when a file is no such workbook", () => {
    expect(() => openedFile("{")).toThrow("damaged");
    expect(openedFile(JSON.stringify(saved(WORKBOOK, "then"))).workbook).toEqual(WORKBOOK);
  });
});
