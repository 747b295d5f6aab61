import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { LogLine } from "../../../src/pane/logs/logLine";
import { parseLogLine } from "../../../src/pane/logs/parseLogLine";
import { writeLogLine } from "../../../src/pane/logs/writeLogLine";

const species = [
  { code: "ro", name: "red oak" },
  { code: "wo", name: "white oak" },
  { code: "yp", name: "yellow-poplar" },
  { code: "d", name: "" },
];
const parse = (text: string, lastSpecies?: string) => parseLogLine(text, { species, lastSpecies });
const log = (change: Partial<LogLine> = {}): LogLine => ({
  species: "wo",
  smallEnd: 14,
  length: 16,
  largeEnd: null,
  sweep: null,
  deduction: null,
  note: "",
  ...change,
});

describe("a legible line is a log", () => {
  it.each<[string, LogLine]>([
    ["wo 14 16", log()],
    ["WO,14,16", log()],
    ["white oak 14 16", log()],
    ["yellow poplar 14 16", log({ species: "yp" })],
    ["wo 14 3/10 16", log({ smallEnd: 14.3 })],
    ["wo 14.3 16 1/2", log({ smallEnd: 14.3, length: 16.5 })],
    ["wo 14 16 18", log({ largeEnd: 18 })],
    ["wo 14 16 17 1/2", log({ largeEnd: 17.5 })],
    ["wo 14 16 d5", log({ deduction: 5 })],
    ["wo 14 16 D5", log({ deduction: 5 })],
    ["wo d5 14 16", log({ deduction: 5 })],
    ["wo 14 16 18 d0", log({ largeEnd: 18, deduction: 0 })],
    ["wo 14 16 d100", log({ deduction: 100 })],
    ["wo 14 16 d0.15", log({ deduction: 0.15 })],
    ["wo 14 16 d.15", log({ deduction: 0.15 })],
    ["wo 14 16 18 d5 /seam, 3/4 of the way", log({ largeEnd: 18, deduction: 5, note: "seam, 3/4 of the way" })],
    ["wo 14 16 / two   words ", log({ note: "two words" })],
    ["wo 14 16 s1.5", log({ sweep: 1.5 })],
    ["wo 14 16 S1.5", log({ sweep: 1.5 })],
    ["wo s2 14 16 18 d5", log({ largeEnd: 18, sweep: 2, deduction: 5 })],
    ["wo 14 16 d5 s.75 /crook", log({ sweep: 0.75, deduction: 5, note: "crook" })],
    ["wo 14 16 s0", log({ sweep: 0 })],
    ["sassafras 14 16 s2", log({ species: "sassafras", sweep: 2 })],
    ["zz 14 16", log({ species: "zz" })],
    ["d 14 16", log({ species: "d" })],
    ["wo 18 16 14", log({ smallEnd: 18, largeEnd: 14 })],
  ])("%s", (text, expected) => {
    expect(parse(text)).toEqual({ kind: "entry", entry: expected });
  });

  it("a number alone repeats the species", () => {
    expect(parse("12 10 d5", "ro")).toEqual({
      kind: "entry",
      entry: log({ species: "ro", smallEnd: 12, length: 10, deduction: 5 }),
    });
  });
});

describe("what is missing is told", () => {
  it.each([
    ["14 16", "Start with a species"],
    ["wo", "Type the small end in inches after wo."],
    ["wo 14", "Type the length in feet after 14 in."],
    ["wo 14 16 18 20", "20 is left over"],
    ["wo fourteen 16", '"fourteen" is not a number'],
    ["wo -14 16", '"-14" is not a number'],
    ["wo 0 16", "The small end should be above 0 in."],
    ["wo 14 0", "The length should be above 0 ft."],
    ["wo 14 16 0", "The large end should be above 0 in."],
    ["wo 14 16 d", 'The deduction should be 0 to 100 percent, like d5. You have "d".'],
    ["wo 14 16 d101", 'You have "d101".'],
    ["wo 14 16 d5%", 'You have "d5%".'],
    ["wo 14 16 d5 d6", "d is given twice"],
    ["wo 14 16 s", 'The sweep should be a number of inches, like s1.5. You have "s".'],
    ["wo 14 16 s1in", 'The sweep should be a number of inches, like s1.5. You have "s1in".'],
    ["wo 14 16 s1 s2", "s is given twice"],
    ["s2 14 16", "Start with a species"],
    ["/a note", "A note belongs to a log."],
  ])("%s", (text, because) => {
    const line = parse(text);
    expect(line.kind).toBe("unclear");
    expect(line.kind === "unclear" && line.because).toContain(because);
  });

  it.each(["", "   ", ",", "/", " / "])("a blank line is nothing: %j", (text) => {
    expect(parse(text)).toEqual({ kind: "blank" });
  });
});

describe("whatever is typed", () => {
  const measure = fc.integer({ min: 1, max: 99_999 }).map((hundredths) => hundredths / 100);
  const anyLog: fc.Arbitrary<LogLine> = fc.record({
    species: fc.constantFrom("ro", "wo", "yp", "d", "zz"),
    smallEnd: measure,
    length: measure,
    largeEnd: fc.option(measure),
    sweep: fc.option(fc.integer({ min: 0, max: 1000 }).map((hundredths) => hundredths / 100)),
    deduction: fc.option(fc.integer({ min: 0, max: 1000 }).map((tenths) => tenths / 10)),
    note: fc.constantFrom("", "sweep", "rot, 3/4 hollow", "d5 and/or seam"),
  });

  it("a log written as a line is read back as the same log", () => {
    fc.assert(
      fc.property(anyLog, (given) => {
        expect(parse(writeLogLine(given))).toEqual({ kind: "entry", entry: given });
      }),
    );
  });

  it("reading never throws, and always says what it made of it", () => {
    const pieces = fc.constantFrom(
      "wo",
      "14",
      "16.5",
      "3/10",
      "5/4",
      "/",
      "/n",
      "d",
      "d5",
      "s",
      "s1.5",
      "x2",
      ",",
      " ",
      ".",
      "-",
      "1e9",
    );
    const typed = fc.oneof(
      fc.string(),
      fc.string({ unit: "binary" }),
      fc.array(pieces, { maxLength: 8 }).map((parts) => parts.join(" ")),
    );
    fc.assert(
      fc.property(typed, fc.boolean(), (text, repeats) => {
        const line = parse(text, repeats ? "ro" : undefined);
        if (line.kind === "unclear") expect(line.because).toMatch(/\.$/);
        if (line.kind !== "entry") return;
        const { smallEnd, length, largeEnd, sweep, deduction } = line.entry;
        expect(Math.min(smallEnd, length, largeEnd ?? 1)).toBeGreaterThan(0);
        expect(Number.isFinite(smallEnd + length + (largeEnd ?? 0))).toBe(true);
        expect(sweep ?? 0).toBeGreaterThanOrEqual(0);
        expect(deduction ?? 0).toBeGreaterThanOrEqual(0);
        expect(deduction ?? 0).toBeLessThanOrEqual(100);
      }),
    );
  });
});
