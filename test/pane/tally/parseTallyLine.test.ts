import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { parseTallyLine } from "../../../src/pane/tally/parseTallyLine";
import type { TallyTree } from "../../../src/pane/tally/tallyTree";
import { writeTallyLine } from "../../../src/pane/tally/writeTallyLine";

const species = [
  { code: "ro", name: "red oak" },
  { code: "sm", name: "sugar maple" },
  { code: "yp", name: "yellow-poplar" },
  { code: "cx", name: "" },
];
const parse = (text: string, lastSpecies?: string) => parseTallyLine(text, { species, lastSpecies });
const tree = (change: Partial<TallyTree>): TallyTree => ({
  species: "ro",
  dbh: 14.3,
  logs: 2.5,
  height: null,
  count: 1,
  cull: null,
  note: "",
  ...change,
});

describe("a legible line is a tree", () => {
  it.each<[string, TallyTree]>([
    ["ro 14.3 2.5", tree({})],
    ["ro,14.3,2.5", tree({})],
    ["  ro ,  14.3 ,, 2.5  ", tree({})],
    ["RO 14.3 2.5", tree({})],
    ["red oak 14.3 2.5", tree({})],
    ["Red  Oak 14.3 2.5", tree({})],
    ["yellow poplar 14.3 2.5", tree({ species: "yp" })],
    ["yellow-poplar 14.3 2.5", tree({ species: "yp" })],
    ["ro 14 3/10 2.5", tree({})],
    ["ro 14 3/10 2 1/2", tree({})],
    ["ro 14.3 2 1/2", tree({})],
    ["ro 14.3 1/2", tree({ logs: 0.5 })],
    ["ro 14 1/2", tree({ dbh: 14.5, logs: null })],
    ["ro 14. 2", tree({ dbh: 14, logs: 2 })],
    ["ro 14.3 .5", tree({ logs: 0.5 })],
    ["ro 14.3", tree({ logs: null })],
    ["ro 14.3 0", tree({ logs: 0 })],
    ["ro 14.3 2.5 x2", tree({ count: 2 })],
    ["ro 14.3 2.5 X2", tree({ count: 2 })],
    ["ro 14.3 2.5 x0.5", tree({ count: 0.5 })],
    ["ro x2 14.3 2.5", tree({ count: 2 })],
    ["ro 14.3 2.5 c10", tree({ cull: 10 })],
    ["ro 14.3 2.5 c0", tree({ cull: 0 })],
    ["ro 14.3 2.5 c10 x2", tree({ cull: 10, count: 2 })],
    ["ro 14.3 2.5 @27.5", tree({ distance: 27.5 })],
    ["ro @27.5 14.3 2.5 x2 /edge", tree({ distance: 27.5, count: 2, note: "edge" })],
    ["ro 14.3 2.5 x2 c10 /fork at 20 ft, 3/4 hollow", tree({ count: 2, cull: 10, note: "fork at 20 ft, 3/4 hollow" })],
    ["ro 14.3 2.5 /  two   stems ", tree({ note: "two stems" })],
    ["ro 14.3 2.5,/near fence", tree({ note: "near fence" })],
    ["ro 14.3 /x2", tree({ logs: null, note: "x2" })],
    ["ro 14.3 2.5 /and/or", tree({ note: "and/or" })],
    ["rp 14.3 2.5", tree({ species: "rp" })],
    ["cx 14.3 2.5", tree({ species: "cx" })],
    ["ro 143 2.5", tree({ dbh: 143 })],
    ["érable 14.3 2.5", tree({ species: "érable" })],
  ])("%s", (text, expected) => {
    expect(parse(text)).toEqual({ kind: "tree", tree: expected });
  });
});

describe("a line that starts with a number repeats the last species", () => {
  it.each<[string, TallyTree]>([
    ["16.2", tree({ dbh: 16.2, logs: null })],
    ["16.2 2", tree({ dbh: 16.2, logs: 2 })],
    ["16 1/4 2", tree({ dbh: 16.25, logs: 2 })],
    [".9", tree({ dbh: 0.9, logs: null })],
    ["x3 16.2 2", tree({ dbh: 16.2, logs: 2, count: 3 })],
  ])("%s", (text, expected) => {
    expect(parse(text, "ro")).toEqual({ kind: "tree", tree: expected });
  });

  it("and a named one does not", () => {
    expect(parse("sm 12 1", "ro")).toEqual({ kind: "tree", tree: tree({ species: "sm", dbh: 12, logs: 1 }) });
  });
});

describe("a blank line does nothing", () => {
  it.each(["", "   ", " , ", "\t"])("%j", (text) => {
    expect(parse(text, "ro")).toEqual({ kind: "blank" });
  });
});

describe("what cannot be a tree says what is missing", () => {
  it.each([
    ["14.3 2.5", "Start with a species"],
    ["ro", "Type the DBH in inches after ro."],
    ["ro x2", "Type the DBH"],
    ["ro 0 2", "above 0"],
    ["ro -14 2", '"-14" is not a number'],
    ["ro 14.3in 2", '"14.3in" is not a number'],
    ["ro 14.3 two", '"two" is not a number'],
    ["black cherry 14 2", '"black cherry" is not in your species list. Pick it'],
    ["red oaks 14 2", '"red oaks" is not in your species list. Did you mean ro (red oak)?'],
    ["sugar mapel", '"sugar mapel" is not in your species list. Did you mean sm (sugar maple)?'],
    ["ro 14.3 2.5 3", "3 is left over"],
    ["ro 14.3 2.5 x0", "The count should be a number above 0"],
    ["ro 14.3 2.5 x", "The count should be a number above 0"],
    ["ro 14.3 2.5 x2 x3", "x is given twice"],
    ["ro 14.3 2.5 c101", "Cull should be 0 to 100 percent"],
    ["ro 14.3 2.5 c", "Cull should be 0 to 100 percent"],
    ["ro 14.3 2.5 c5 c5", "c is given twice"],
    ["ro 14.3 2.5 @0", "The taped distance should be a number of feet above 0, like @27.5."],
    ["ro 14.3 2.5 @near", '"@near" is not a number'],
    ["ro 14.3 2.5 @8 @9", "@ is given twice"],
    ["ro 14 3/0 2", '"3/0" is not a number'],
    ["ro 12345678 2", "is not a number"],
    ["ro 1e3 2", '"1e3" is not a number'],
    ["ro . 2", '"." is not a number'],
    ["/just a note", "A note belongs to a tree"],
  ])("%s", (text, because) => {
    const line = parse(text);
    expect(line.kind).toBe("unclear");
    expect(line.kind === "unclear" && line.because).toContain(because);
  });
});

describe("whatever is typed", () => {
  const hundredths = (most: number) => fc.integer({ min: 1, max: most * 100 }).map((steps) => steps / 100);
  const anyTree: fc.Arbitrary<TallyTree> = fc.record({
    species: fc.constantFrom("ro", "sm", "yp", "cx", "rp", "zz"),
    dbh: hundredths(200),
    logs: fc.option(fc.integer({ min: 0, max: 20 }).map((halves) => halves / 2)),
    height: fc.option(hundredths(200)),
    count: fc.integer({ min: 1, max: 40 }),
    cull: fc.option(fc.integer({ min: 0, max: 100 })),
    note: fc.string({ maxLength: 30 }).map((text) =>
      text
        .trim()
        .replace(/\s+/g, " ")
        .replace(/^\/+\s*/, ""),
    ),
  });

  it("reading never throws, and always says what it made of it", () => {
    fc.assert(
      fc.property(fc.oneof(fc.string(), fc.string({ unit: "binary" })), fc.boolean(), (text, repeats) => {
        const line = parse(text, repeats ? "ro" : undefined);
        if (line.kind === "unclear") expect(line.because).toMatch(/\.$/);
        if (line.kind === "tree") {
          expect(line.tree.dbh).toBeGreaterThan(0);
          expect(line.tree.count).toBeGreaterThan(0);
          expect(Number.isFinite(line.tree.dbh + line.tree.count + (line.tree.logs ?? 0))).toBe(true);
        }
      }),
    );
  });

  it("also for strings made of the grammar's own pieces", () => {
    const pieces = fc.constantFrom(
      "ro",
      "14",
      "14.3",
      "3/10",
      "/",
      "/n",
      "x",
      "x2",
      "c",
      "c5",
      "h",
      "h85",
      "@",
      "@9",
      "85ft",
      "logs",
      ",",
      " ",
      "  ",
      ".",
      "-",
      "1e9",
    );
    fc.assert(
      fc.property(fc.array(pieces, { maxLength: 8 }), (parts) => {
        expect(["blank", "tree", "unclear"]).toContain(parse(parts.join(" "), "ro").kind);
        expect(["blank", "tree", "unclear"]).toContain(parse(parts.join(""), "ro").kind);
      }),
    );
  });

  it("a tree written as a line is read back as the same tree", () => {
    const taped = fc.option(hundredths(300), { nil: undefined });
    const anyTapedTree = fc
      .tuple(anyTree, taped)
      .map(([one, distance]) => (distance === undefined ? one : { ...one, distance }));
    fc.assert(
      fc.property(anyTapedTree, (given) => {
        expect(parse(writeTallyLine(given))).toEqual({ kind: "tree", tree: given });
        const inFeet = writeTallyLine(given, "feet");
        expect(parseTallyLine(inFeet, { species, heightIs: "feet" })).toEqual({ kind: "tree", tree: given });
      }),
    );
  });
});
