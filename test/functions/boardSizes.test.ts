import { describe, expect, it } from "vitest";
import {
  dressedSize,
  LumberKindName,
  SeasoningName,
  targetThickness,
  BoardSizeUnits,
} from "../../src/functions/boardSizes";
import { surfaceMeasure } from "../../src/functions/boards";
import { lumberKinds, seasonings } from "../../src/core/lumber/dressedSize";
import { column } from "../support/cells";

const NONE = null as never;

describe("DRESSEDSIZE", () => {
  it("offers the kinds and seasonings there are", () => {
    expect(Object.values(LumberKindName)).toEqual(lumberKinds.map(({ title }) => title));
    expect(Object.values(SeasoningName)).toEqual(seasonings.map(({ title }) => title));
  });

  it("is 1.5 for a 2 and 3.5 for a 4, dry softwood being meant unless it is said otherwise", () => {
    expect(dressedSize(column([2, 4, ""]))).toEqual([[1.5], [3.5], [""]]);
    expect(dressedSize([[4]], SeasoningName.green)).toEqual([[3.5625]]);
    expect(dressedSize([[1]], NONE, LumberKindName.hardwood)).toEqual([[0.8125]]);
    expect(dressedSize([[6]], SeasoningName.green, LumberKindName.softwoodTimber)).toEqual([[5.5]]);
    // by the quarter: 4/4, 5/4 and 8/4 surface to 13/16, 1 1/16 and 1 3/4
    expect(dressedSize(column(["4/4", "5/4", "8/4"]), NONE, LumberKindName.hardwood)).toEqual([
      [0.8125],
      [1.0625],
      [1.75],
    ]);
  });

  it("has no value for a size that is not sold, in that cell only", () => {
    expect(dressedSize(column([13, 2]))).toMatchObject([[{ code: "#N/A" }], [1.5]]);
    expect(() => dressedSize([[2]], NONE, "Plywood" as never)).toThrow(
      'Kind should be one of: Softwood, Softwood timber, Hardwood. You have "Plywood".',
    );
  });
});

describe("SURFACEMEASURE", () => {
  it("is whole square feet for each board of a column", () => {
    expect(surfaceMeasure(column([6.25, 8, 10, ""]), column([8, 12, 13, 8]))).toEqual([[4], [8], [11], [""]]);
  });

  it("refuses a board under a foot long", () => {
    expect(surfaceMeasure([[6]], [[0.5]])).toMatchObject([
      [{ message: "Length should be between 1 and 120 ft. You have 0.5." }],
    ]);
  });
});

describe("TARGETTHICKNESS", () => {
  it("adds planing, makes up for shrinkage, then adds for uneven sawing: 0.946 in for a 3/4-in board (by hand)", () => {
    expect(targetThickness([[0.75]], [[4.5]], [[0.125]], [[0.03]])[0]?.[0]).toBeCloseTo(0.946, 3);
    expect(targetThickness([[1.56]], [[0]], [[0.06]])[0]?.[0]).toBeCloseTo(1.62, 9); // Brown, EM 8731, p. 12
  });

  it("is the same board in centimetres", () => {
    const [cells] = targetThickness([[2.54]], [[4.5]], [[0.254]], [[0.0762]], BoardSizeUnits.metric);
    const [inInches] = targetThickness([[1]], [[4.5]], [[0.1]], [[0.03]]);
    expect(cells?.[0]).toBeCloseTo((inInches?.[0] as number) * 2.54, 9);
  });

  it("leaves a blank blank, and asks about a share", () => {
    const [blank, share] = targetThickness(column(["", 1]), column([4, 0.045]));
    expect(blank).toEqual([""]);
    expect(share).toMatchObject([
      { code: "#VALUE!", message: expect.stringContaining("Type 4.5 for 4.5 %") as string },
    ]);
  });
});
