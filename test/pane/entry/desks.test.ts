import { beforeEach, describe, expect, it } from "vitest";
import { demoWorkbook } from "../../../src/demo/demoWorkbook";
import { createDesks } from "../../../src/pane/desks";
import { firstState } from "../../../src/pane/paneState";
import { createRefresher } from "../../../src/pane/refresher";
import { createStore } from "../../../src/pane/store";
import { BOARDS, log, LOGS, sawn } from "../../../src/workbook/tables";
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

async function open(host: MemoryHost, drafts = storage()) {
  const store = createStore(firstState);
  const refresher = createRefresher(store, host, () => desks.beforeReading());
  const say = (said: string) => store.set({ said });
  const desks = createDesks({ store, host, drafts, refresh: refresher.refresh, say });
  await refresher.refresh();
  return { ...desks, store, drafts };
}

const rows = (host: MemoryHost, table: string) => host.book.tables.get(table)?.rows ?? [];
const logRows = (host: MemoryHost, from = 10) =>
  rows(host, LOGS)
    .slice(from)
    .map((row) => [row[log.log], row[log.species], row[log.smallEnd], row[log.length], row[log.deduction]].join(" "));

describe("the desks for logs and boards", () => {
  let host: MemoryHost;
  beforeEach(async () => {
    host = memoryHost(cruiseCalculation);
    await host.lay(demoWorkbook());
  });

  const enter = (desk: { type(text: string): void; enter(): void }, ...lines: readonly string[]) =>
    lines.forEach((text) => {
      desk.type(text);
      desk.enter();
    });

  it("number new logs on from the last one, however slow the workbook is", async () => {
    const { logDesk } = await open(host);
    host.wait = 4;
    enter(logDesk, "wo 14 16.4 d5", "12 10.4", "zz 11 8.4 12");
    await host.idle();
    expect(logRows(host)).toEqual(["11 wo 14 16.4 5", "12 wo 12 10.4 ", "13 zz 11 8.4 "]);
  });

  it("leave the number, the use and the second reading of a log alone when its line is changed", async () => {
    const { logDesk } = await open(host);
    logDesk.edit(logDesk.lines().find(({ entry }) => entry.name === "3"));
    enter(logDesk, "wo 15.9 16.4 18 d10");
    await host.idle();
    expect(rows(host, LOGS)[2]).toMatchObject({
      [log.log]: 3,
      [log.smallEnd]: 15.9,
      [log.second]: 16.8,
      [log.deduction]: 10,
      [log.use]: "Sell",
    });
    expect(rows(host, LOGS)).toHaveLength(10);
  });

  it("write the sweep of a log, put it back into its line, and take it off when it is left out of it", async () => {
    const { logDesk, store } = await open(host);
    enter(logDesk, "wo 14 16.4 18 s1.25 d5", "14 16.4");
    await host.idle();
    expect(rows(host, LOGS).map((row) => row[log.sweep])).toEqual([
      ...[null, null, null, null, null, 1.5, null, null, null, null],
      ...[1.25, null],
    ]);
    logDesk.edit(logDesk.lines().find(({ entry }) => entry.name === "6"));
    expect(store.get().logs.text).toBe("bc 13.2 12.4 14.5 s1.5 d10 /sweep");
    enter(logDesk, "bc 13.2 12.4 14.5 d10 /sweep");
    await host.idle();
    expect(rows(host, LOGS)[5]).toMatchObject({ [log.sweep]: null, [log.deduction]: 10, [log.note]: "sweep" });
  });

  it("take the last log back, text and all, and remove the one that is pointed at", async () => {
    const { logDesk, store } = await open(host);
    enter(logDesk, "wo 14 16.4 d5 /near the road");
    await host.idle();
    logDesk.undo();
    expect(store.get().logs.text).toBe("wo 14 16.4 d5 /near the road");
    await host.idle();
    expect(rows(host, LOGS)).toHaveLength(10);
    logDesk.clear();
    const first = logDesk.lines().at(-1);
    if (first) logDesk.remove(first);
    await host.idle();
    expect(logRows(host, 0)[0]).toMatch(/^2 /);
  });

  it("tell apart logs that read alike, by their numbers", async () => {
    const { logDesk } = await open(host);
    enter(logDesk, "wo 14 16.4", "wo 14 16.4", "wo 14 16.4");
    await host.idle();
    const middle = logDesk.lines().find(({ entry }) => entry.name === "12");
    if (middle) logDesk.remove(middle);
    await host.idle();
    expect(logRows(host).map((line) => line.split(" ")[0])).toEqual(["11", "13"]);
  });

  it("write boards under the log they are sawn from, with its species; a changed line keeps its log", async () => {
    const { boardDesk, store } = await open(host);
    const before = rows(host, BOARDS).length;
    store.set({ boards: { ...store.get().boards, log: "3" } });
    enter(boardDesk, "5/4 6 12 x4 /clear");
    store.set({ boards: { ...store.get().boards, log: "" } });
    enter(boardDesk, "1 8 12");
    await host.idle();
    const written = rows(host, BOARDS).slice(before);
    expect(written[0]).toMatchObject({
      [sawn.log]: 3,
      [sawn.species]: "wo",
      [sawn.thickness]: 1.25,
      [sawn.pieces]: 4,
      [sawn.grade]: "clear",
    });
    expect(written[1]).toMatchObject({ [sawn.log]: null, [sawn.thickness]: 1, [sawn.pieces]: 1 });
    boardDesk.edit(boardDesk.lines()[1]);
    enter(boardDesk, "1.25 6 12 x5");
    await host.idle();
    expect(rows(host, BOARDS)[before]).toMatchObject({ [sawn.log]: 3, [sawn.pieces]: 5 });
  });

  it("keep what was typed at each box apart, and bring it back", async () => {
    const first = await open(host);
    first.desk.type("ro 14");
    first.logDesk.type("wo 15");
    first.boardDesk.type("5/4 6");
    const second = await open(host, first.drafts);
    second.restore();
    const { tally, logs, boards } = second.store.get();
    expect([tally.text, logs.text, boards.text]).toEqual(["ro 14", "wo 15", "5/4 6"]);
  });

  it("keep a log that could not be written in sight, and write it once one tries again", async () => {
    const { logDesk, store } = await open(host);
    host.refuse("Excel is busy with a cell.");
    enter(logDesk, "wo 14 16.4");
    await host.idle();
    expect(store.get().logs.held?.why).toBe("Excel is busy with a cell.");
    expect(store.get().logs.pending.map(({ text }) => text)).toEqual(["wo 14 16.4"]);
    host.refuse(undefined);
    logDesk.retry();
    await host.idle();
    expect(logRows(host)).toEqual(["11 wo 14 16.4 "]);
  });
});
