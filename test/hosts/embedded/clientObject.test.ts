import { describe, expect, it } from "vitest";
import { clientObject } from "../../../src/hosts/embedded/standin/clientObject";
import type { Engine } from "../../../src/hosts/embedded/standin/engine";
import { Batch } from "../../../src/hosts/embedded/standin/requestContext";
import { strict } from "../../../src/hosts/embedded/standin/strict";

interface Cell {
  value: number;
  name: string;
  unknown: string;
  clear(): void;
  sheet: Sheet;
}
interface Sheet {
  name: string;
  isNullObject: boolean;
  load(path?: string): Sheet;
}
interface Loadable {
  load(path?: unknown): unknown;
  isNullObject: boolean;
}

/** A stand-in over one number, without any grid. */
function batchOver(store: { value: number }) {
  const batch = new Batch({} as Engine, () => undefined);
  const cell = clientObject<Cell>(batch, {
    kind: "Excel.Cell",
    read: { value: () => store.value, name: () => "A1" },
    write: {
      value: (value) => {
        if (value < 0) throw new Error("refused");
        store.value = value;
      },
    },
    members: {
      clear: () => batch.enqueue(cell, () => void (store.value = 0)),
      get sheet() {
        return clientObject<Sheet>(batch, { kind: "Excel.Sheet", read: { name: () => "Setup" } });
      },
    },
  }) as Cell & Loadable;
  return { batch, cell };
}

const code = (wanted: string) => expect.objectContaining({ code: wanted }) as Error;

describe("load and sync", () => {
  it("refuses a property that was not loaded, and one that was loaded but not synchronized", async () => {
    const { batch, cell } = batchOver({ value: 7 });
    expect(() => cell.value).toThrow(code("PropertyNotLoaded"));
    cell.load("value");
    expect(() => cell.value).toThrow(code("PropertyNotLoaded"));
    await batch.sync();
    expect(cell.value).toBe(7);
    expect(() => cell.name).toThrow(code("PropertyNotLoaded"));
  });

  it.each(["value, name", ["value", "name"], { value: true, name: true }, { select: "value,name" }, undefined])(
    "takes the names of properties as %j",
    async (properties) => {
      const { batch, cell } = batchOver({ value: 7 });
      cell.load(properties);
      await batch.sync();
      expect([cell.value, cell.name]).toEqual([7, "A1"]);
    },
  );

  it("loads along a path to another object", async () => {
    const { batch, cell } = batchOver({ value: 7 });
    cell.load("sheet/name");
    await batch.sync();
    expect(cell.sheet.name).toBe("Setup");
  });

  it("reads as of its place in the queue", async () => {
    const { batch, cell } = batchOver({ value: 1 });
    cell.load("value");
    await batch.sync();
    cell.load("value");
    cell.clear();
    await batch.sync();
    expect(cell.value).toBe(1);
  });

  it("does nothing before sync, and stops at the first error", async () => {
    const store = { value: 1 };
    const { batch, cell } = batchOver(store);
    cell.value = 2;
    expect(store.value).toBe(1);
    cell.value = -1;
    cell.value = 3;
    await expect(batch.sync()).rejects.toThrow("refused");
    expect(store.value).toBe(2);
    await batch.sync();
    expect(store.value).toBe(2);
  });
});

describe("strictness", () => {
  it("names the member it lacks", async () => {
    const { batch, cell } = batchOver({ value: 1 });
    expect(() => cell.unknown).toThrow("NotImplemented: Excel.Cell.unknown");
    expect(() => (cell.name = "B2")).toThrow("NotImplemented: Excel.Cell.name =");
    cell.load("unknown");
    await expect(batch.sync()).rejects.toThrow("NotImplemented: Excel.Cell.unknown");
    expect(() => strict<{ a: number }>("Office.x", {}).a).toThrow("NotImplemented: Office.x.a");
  });

  it("refuses an object of a batch that has ended, unless it was tracked", async () => {
    const store = { value: 1 };
    const { batch, cell } = batchOver(store);
    batch.close();
    expect(() => cell.clear()).toThrow(code("InvalidObjectPath"));
    expect(() => cell.load("value")).toThrow(code("InvalidObjectPath"));
    batch.track(cell);
    cell.clear();
    await batch.sync();
    expect(store.value).toBe(0);
    batch.untrack(cell);
    expect(() => cell.clear()).toThrow(code("InvalidObjectPath"));
  });

  it("knows after sync whether an object stands for anything, and asks nothing of one that does not", async () => {
    const { batch } = batchOver({ value: 1 });
    let there = false;
    const sheet = clientObject<Sheet>(batch, {
      kind: "Excel.Sheet",
      exists: () => there,
      read: { name: () => fail() },
    });
    expect(() => sheet.isNullObject).toThrow(code("PropertyNotLoaded"));
    sheet.load("name");
    await batch.sync();
    expect(sheet.isNullObject).toBe(true);
    expect(() => sheet.name).toThrow(code("PropertyNotLoaded"));
    there = true;
    const found = clientObject<Sheet>(batch, { kind: "Excel.Sheet", exists: () => there });
    await batch.sync();
    expect(found.isNullObject).toBe(false);
  });
});

function fail(): never {
  throw new Error("It read what is not there.");
}
