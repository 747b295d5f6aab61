import { describe, expect, it } from "vitest";
import { readAnswer } from "../../../src/pane/job/spill";
import { measure, readStand } from "../../../src/pane/job/readStand";
import { HostProblem, type WorkbookHost } from "../../../src/workbook/host";
import type { CellValue } from "../../../src/workbook/plan";
import { out } from "../../../src/workbook/tables";

type Answers = Readonly<Record<string, readonly (readonly CellValue[])[]>>;

/** A host of which only the spilled answers matter. */
const host = (answers: Answers) =>
  ({
    readSpill: async (name: string) =>
      answers[name] ?? (await Promise.reject(new HostProblem("missing name", `The named cell ${name} is missing.`))),
  }) as unknown as WorkbookHost;

const summary = [
  ["Measure", "Value", "Margin +/- at 95 %", "Margin %", "Low", "High"],
  ["Trees per acre", 87, 15, 17.2, 72, 102],
  ["Basal area ft2 per acre", 94.3, 14.4, 15.3, 79.8, 108.7],
  ["Quadratic mean diameter in", 14.1, 0.3, 2.1, 13.8, 14.4],
  ["Volume per acre", 8071, 1779, 22, 6292, 9851],
];

describe("the answers of the sheet Stand", () => {
  it("are read as numbers with their margins", async () => {
    const stand = await readStand(host({ [out.summary]: summary, [out.tract]: [[258272, 56928, 201344, 315200]] }));
    expect(measure(stand.summary, "Volume")).toMatchObject({ value: 8071, margin: 1779, percent: 22, low: 6292 });
    expect(stand.tract).toMatchObject({ value: 258272, margin: 56928, low: 201344, high: 315200 });
    expect(stand.tract?.percent).toBeCloseTo(22.04, 2);
    expect(stand.lacking).toBe("");
  });

  it("keep a value whose margin is not known yet", async () => {
    const single = [summary[0] as CellValue[], ["Volume per acre", 8071, "#N/A", "#N/A", "#N/A", "#N/A"]];
    const stand = await readStand(host({ [out.summary]: single }));
    expect(measure(stand.summary, "Volume")).toEqual({
      what: "Volume per acre",
      value: 8071,
      margin: null,
      percent: null,
      low: null,
      high: null,
    });
  });

  it("say what is lacking when there are no trees", async () => {
    const stand = await readStand(host({ [out.summary]: [summary[0] as CellValue[], ["No trees yet"]] }));
    expect(stand.lacking).toBe("No trees yet.");
  });

  it("leave the totals of the classes out of the chart", async () => {
    const classes = [
      ["Trees per acre by DBH class in", "ro", "sm", "All species"],
      [10, 4, 6, 10],
      [12, 3, 0, 3],
      ["All classes", 7, 6, 13],
    ];
    expect((await readStand(host({ [out.stand]: classes }))).classes).toEqual([
      { inches: 10, total: 10 },
      { inches: 12, total: 3 },
    ]);
  });
});

describe("an answer that is none", () => {
  it.each([
    ["#NAME?", "Press Ctrl+Alt+F9"],
    ["#SPILL!", "Clear the cells"],
    ["#N/A", "at least 2 points"],
    ["#VALUE!", "Check names the rows"],
    ["#NULL!", "#NULL!"],
  ])("%s is told as a sentence", async (error, told) => {
    const answer = await readAnswer(host({ [out.summary]: [[error]] }), out.summary);
    expect(answer.kind === "none" && answer.because).toContain(told);
  });

  it("a missing name is told, and any other problem is passed on", async () => {
    const answer = await readAnswer(host({}), out.tract);
    expect(answer).toEqual({ kind: "none", because: `The named cell ${out.tract} is missing.` });
    const busy = { readSpill: () => Promise.reject(new HostProblem("busy", "Busy.")) } as unknown as WorkbookHost;
    await expect(readAnswer(busy, out.tract)).rejects.toThrow("Busy.");
  });
});
