import { describe, expect, it } from "vitest";
import { boardTally, BoardUnits, TallyMeasureName } from "../../src/functions/boards";
import { tallyMeasures } from "../../src/core/lumber/tallyMeasure";
import { column } from "../support/cells";

const NONE = null as never;
const thickness = column([1, 2, 1]);
const width = column([8, 4, 8]);
const length = column([12, 12, 12]);

it("offers the conventions there are", () => {
  expect(Object.values(TallyMeasureName)).toEqual(tallyMeasures.map(({ title }) => title));
});

it("adds up by size, with all boards in the last row, and says how they were counted", () => {
  expect(boardTally(thickness, width, length, column([2, 3, ""]))).toEqual([
    ["Size in x in x ft", "Pieces", "Board feet, as given"],
    ["1 x 8 x 12", 3, 24],
    ["2 x 4 x 12", 3, 24],
    ["All boards", 6, 48],
  ]);
});

it("adds up by group where there is one", () => {
  expect(boardTally(thickness, width, length, column([2, 3, 1]), column(["sheathing", "", "Sheathing"]))).toEqual([
    ["Group", "Pieces", "Board feet, as given"],
    ["sheathing", 3, 24],
    ["(blank)", 3, 24],
    ["All boards", 6, 48],
  ]);
});

it("counts hardwood by surface measure and softwood by name", () => {
  const three = [column([0.75]), column([6]), column([9]), column([2])] as const;
  const all = (measure: TallyMeasureName) => boardTally(...three, NONE, measure).at(-1)?.[2] as unknown;
  expect(all(TallyMeasureName.hardwood)).toBe(9); // 4.5 ft2 each: one counted as 4, one as 5, an inch thick
  expect(all(TallyMeasureName.softwoodNominal)).toBe(9);
  expect(all(TallyMeasureName.asGiven)).toBe(6.75);
  expect(boardTally(...three, NONE, "surface measure" as never)[0]?.[2]).toBe("Board feet, hardwood");
});

it("reads and names metric sizes", () => {
  const [header, first] = boardTally([[2.54]], [[20.32]], [[3.6576]], [[10]], NONE, NONE, BoardUnits.metric);
  expect(header?.[0]).toBe("Size cm x cm x m");
  expect(first?.slice(0, 2)).toEqual(["2.54 x 20.32 x 3.6576", 10]);
  expect(first?.[2]).toBeCloseTo(80, 9);
});

it("says that there are no boards yet", () => {
  const empty = column(["", 0, null]);
  expect(boardTally(empty, empty, empty, empty)).toEqual([
    ["Size in x in x ft", "Pieces", "Board feet, as given"],
    ["No boards yet", "", ""],
  ]);
});

describe("a line that cannot be counted", () => {
  it("is passed over when it has no measure at all", () => {
    expect(boardTally(column([1, ""]), column([8, 0]), column([12, null]), column([1, 7])).at(-1)).toEqual([
      "All boards",
      1,
      8,
    ]);
  });

  it("is named when one of its measures is missing, and others are counted", () => {
    expect(() => boardTally(column([1, 1, 1]), column([8, "", "x"]), column([12, 12, 12]), column([1, 1, 1]))).toThrow(
      "Row 2: Width is missing. And 1 more row has a problem.",
    );
  });

  it("is named when its pieces are no whole number, or its size a date", () => {
    expect(() => boardTally([[1]], [[8]], [[12]], [[2.5]])).toThrow(
      "Row 1: Pieces should be a whole number. You have 2.5.",
    );
    expect(() => boardTally([["1/8"]], [[8]], [[12]], [[1]])).toThrow(/^Row 1: This looks like a date/);
  });

  it("keeps lists of different lengths apart, and lists the conventions", () => {
    expect(() => boardTally(column([1, 1]), column([8, 8, 8]), [[12]], [[1]])).toThrow("need the same number of rows");
    expect(() => boardTally([[1]], [[8]], [[12]], [[1]], NONE, "Log" as never)).toThrow(
      'Measure should be one of: As given, Softwood nominal, Hardwood. You have "Log".',
    );
  });
});
