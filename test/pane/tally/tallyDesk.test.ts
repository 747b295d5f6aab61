import { beforeEach, describe, expect, it } from "vitest";
import { demoWorkbook } from "../../../src/demo/demoWorkbook";
import { createRefresher } from "../../../src/pane/refresher";
import { firstState } from "../../../src/pane/paneState";
import { createStore } from "../../../src/pane/store";
import { createTallyDesk } from "../../../src/pane/tally/tallyDesk";
import { plot, PLOTS, tree, TREES } from "../../../src/workbook/tables";
import { cruiseCalculation } from "../../support/cruiseCalculation";
import { memoryHost, type MemoryHost } from "../../support/memoryHost";

const storage = () => {
  const kept = new Map<string, string>();
  return {
    getItem: (key: string) => kept.get(key) ?? null,
    setItem: (key: string, value: string) => void kept.set(key, value),
    removeItem: (key: string) => void kept.delete(key),
  };
};

async function desk(host: MemoryHost, drafts = storage()) {
  const store = createStore(firstState);
  const say = (said: string) => store.set({ said });
  const refresher = createRefresher(store, host, () => made.beforeReading());
  const made = createTallyDesk({ store, host, drafts, refresh: refresher.refresh, say });
  await refresher.refresh();
  return { made, store, drafts, tally: () => store.get().tally };
}

const trees = (host: MemoryHost) => host.book.tables.get(TREES)?.rows ?? [];
const plots = (host: MemoryHost) => host.book.tables.get(PLOTS)?.rows ?? [];
const line = (row: Readonly<Record<string, unknown>> | undefined) =>
  row && [tree.plot, tree.species, tree.dbh, tree.logs, tree.count].map((heading) => row[heading]).join(" ");

/** The demo as it was before its last two points were tallied. */
function halfDone(): MemoryHost {
  const host = memoryHost(cruiseCalculation);
  void host.lay(
    demoWorkbook().map((sheet) => ({
      ...sheet,
      tables: sheet.tables.map((table) =>
        table.name === TREES
          ? { ...table, rows: table.rows.filter((row) => Number(row[tree.plot]) <= 12) }
          : table.name === PLOTS
            ? { ...table, rows: table.rows.map((row, at) => ({ ...row, [plot.visited]: at < 12 ? "Yes" : null })) }
            : table,
      ),
    })),
  );
  return host;
}

describe("the tally desk", () => {
  let host: MemoryHost;
  beforeEach(async () => {
    host = halfDone();
    await host.idle();
  });

  it("begins at the first point that is not done", async () => {
    const { tally } = await desk(host);
    expect(tally().plot).toBe("13");
  });

  it("saves lines in the order in which they were typed, however slow the workbook is", async () => {
    const { made, tally } = await desk(host);
    const before = trees(host).length;
    host.wait = 4;
    for (const text of ["ro 14.3 2.5", "16", "sm 11.8 1 x2", "14 1/2 2"]) {
      made.type(text);
      made.enter();
      expect(tally().text).toBe("");
    }
    expect(tally().pending).toHaveLength(4);
    await host.idle();
    expect(trees(host).slice(before).map(line)).toEqual([
      "13 ro 14.3 2.5 1",
      "13 ro 16  1",
      "13 sm 11.8 1 2",
      "13 sm 14.5 2 1",
    ]);
    expect(tally().pending).toEqual([]);
  });

  it("keeps what could not be written, says why, and writes it in order when tried again", async () => {
    const { made, tally } = await desk(host);
    const before = trees(host).length;
    host.refuse("Excel is busy with a cell.");
    made.type("ro 14.3 2.5");
    made.enter();
    made.type("wo 16 2");
    made.enter();
    await host.idle();
    expect(tally().held?.why).toBe("Excel is busy with a cell.");
    expect(tally().pending.map(({ text }) => text)).toEqual(["ro 14.3 2.5", "wo 16 2"]);
    expect(trees(host)).toHaveLength(before);

    host.refuse(undefined);
    made.retry();
    await host.idle();
    expect(trees(host).slice(before).map(line)).toEqual(["13 ro 14.3 2.5 1", "13 wo 16 2 1"]);
    expect(tally().held).toBeUndefined();
  });

  it("puts a line that could not be written back into the box, and goes on with the next", async () => {
    const { made, tally } = await desk(host);
    const before = trees(host).length;
    host.refuse("Excel is busy with a cell.");
    ["ro 14.3 2.5", "wo 16 2"].forEach((text) => {
      made.type(text);
      made.enter();
    });
    await host.idle();
    host.refuse(undefined);
    made.leaveOut();
    await host.idle();
    expect(tally().text).toBe("ro 14.3 2.5");
    expect(trees(host).slice(before).map(line)).toEqual(["13 wo 16 2 1"]);
  });

  it("leaves a line that it cannot read in the box", async () => {
    const { made, tally, store } = await desk(host);
    made.type("ro fourteen");
    made.enter();
    expect(tally()).toMatchObject({ text: "ro fourteen", pending: [] });
    expect(store.get().said).toContain('"fourteen" is not a number');
  });

  it("does nothing on a blank line", async () => {
    const { made, tally } = await desk(host);
    made.enter();
    await host.idle();
    expect(tally().pending).toEqual([]);
    expect(host.log.filter((entry) => entry.startsWith("append"))).toEqual([]);
  });

  it("undoes the last line and puts its text back, one line at a time", async () => {
    const { made, tally } = await desk(host);
    const before = trees(host).length;
    for (const text of ["ro 14.3 2.5", "wo 16 2 x2 c10 /fork"]) {
      made.type(text);
      made.enter();
    }
    await host.idle();
    made.undo();
    expect(tally().text).toBe("wo 16 2 x2 c10 /fork");
    made.clear();
    made.undo();
    expect(tally().text).toBe("ro 14.3 2.5");
    await host.idle();
    expect(trees(host)).toHaveLength(before);
    made.clear();
    made.undo();
    expect(tally().text).toBe("");
  });

  it("undoes the last line even while the workbook is being written or read again, each line once", async () => {
    const { made, tally } = await desk(host);
    const before = trees(host).map(line);
    host.wait = 4;
    for (const text of ["ro 14.3 2.5", "wo 16 2", "sm 12 1"]) {
      made.type(text);
      made.enter();
    }
    await expect.poll(() => trees(host).length, { interval: 1 }).toBe(before.length + 3);
    await expect.poll(() => tally().pending.every(({ written }) => written), { interval: 1 }).toBe(true);
    expect(tally().pending).not.toEqual([]);
    const undone = ["sm 12 1", "wo 16 2", "ro 14.3 2.5"].map((wanted) => {
      made.undo();
      const { text } = tally();
      made.clear();
      return [text, wanted];
    });
    expect(undone.map(([text]) => text)).toEqual(undone.map(([, wanted]) => wanted));
    await host.idle();
    expect(trees(host).map(line)).toEqual(before);
    expect(tally().held).toBeUndefined();
  });

  it("does not undo over a line that is being typed", async () => {
    const { made, tally, store } = await desk(host);
    made.type("ro 14.3 2.5");
    made.undo();
    expect(tally().text).toBe("ro 14.3 2.5");
    expect(store.get().said).toContain("not saved yet");
  });

  it("changes an earlier line in its own row, wherever a sort has put it", async () => {
    const { made, tally } = await desk(host);
    for (const text of ["ro 14.3 2.5", "wo 16 2"]) {
      made.type(text);
      made.enter();
    }
    await host.idle();
    expect(made.step("earlier")).toBe(true);
    expect(made.step("earlier")).toBe(true);
    expect(tally().text).toBe("ro 14.3 2.5");
    trees(host).reverse();
    made.type("ro 14.8 2.5");
    made.enter();
    await host.idle();
    expect(trees(host).slice(0, 2).map(line)).toEqual(["13 wo 16 2 1", "13 ro 14.8 2.5 1"]);
  });

  it("steps up and down through earlier lines, and not away from a changed one", async () => {
    const { made, tally } = await desk(host);
    made.choose("12");
    expect(made.step("later")).toBe(false);
    made.step("earlier");
    const last = tally().text;
    expect(last).not.toBe("");
    made.step("earlier");
    made.step("later");
    expect(tally().text).toBe(last);
    made.step("later");
    expect(tally()).toMatchObject({ text: "", editing: undefined });
    made.type("ro 1");
    expect(made.step("earlier")).toBe(false);
  });

  it("finishes a point and goes on to the next one; an empty one counts as empty", async () => {
    const { made, tally, store } = await desk(host);
    made.finish({ empty: false });
    expect(store.get().said).toContain("no trees yet");
    made.type("ro 14.3 2.5");
    made.enter();
    made.finish({ empty: false });
    expect(tally().plot).toBe("14");
    made.finish({ empty: true });
    await host.idle();
    expect(
      plots(host)
        .slice(12)
        .map((row) => [row[plot.visited], row[plot.none]]),
    ).toEqual([
      ["Yes", null],
      ["Yes", "Yes"],
    ]);
  });

  it("will not finish over a line in the box, nor call a point with trees empty", async () => {
    const { made, tally } = await desk(host);
    made.type("ro 14");
    made.finish({ empty: false });
    expect(tally().plot).toBe("13");
    made.enter();
    made.finish({ empty: true });
    expect(tally().plot).toBe("13");
  });

  it("brings back what was typed when the pane closed, and writes waiting lines only when told to", async () => {
    const first = await desk(host);
    const before = trees(host).length;
    host.refuse("Excel is busy with a cell.");
    first.made.type("ro 14.3 2.5");
    first.made.enter();
    first.made.type("wo 1");
    await host.idle();

    host.refuse(undefined);
    const second = await desk(host, first.drafts);
    second.made.restore();
    await host.idle();
    expect(second.tally().text).toBe("wo 1");
    expect(second.tally().held?.why).toContain("may not have reached the workbook");
    expect(trees(host)).toHaveLength(before);

    second.made.retry();
    await host.idle();
    expect(trees(host).slice(before).map(line)).toEqual(["13 ro 14.3 2.5 1"]);
  });

  it("goes on without storage", async () => {
    const full = { getItem: () => "{", setItem: () => expect.fail("storage is full"), removeItem: () => undefined };
    const { made, tally } = await desk(host, full);
    made.restore();
    made.type("ro 14.3");
    expect(tally().text).toBe("ro 14.3");
  });
});
