import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { feet, inches } from "../../../src/core/basis/units";
import { boardTally } from "../../../src/core/lumber/boardTally";
import { asGiven, hardwoodMeasure, softwoodNominal, tallyMeasures } from "../../../src/core/lumber/tallyMeasure";

const line = (thickness: number, width: number, length: number, pieces = 1, name = "boards") => ({
  thickness: inches(thickness),
  width: inches(width),
  length: feet(length),
  pieces,
  name,
});

const counted = (measure: (typeof tallyMeasures)[number], ...lines: ReturnType<typeof line>[]) =>
  boardTally(lines, measure).reduce((sum, part) => sum + part.boardFeet, 0);

it("counts one plank three ways: as it measures, by its name, and by its surface", () => {
  expect(counted(asGiven, line(1.5, 3.5, 8))).toBe(3.5);
  expect(counted(softwoodNominal, line(2, 4, 8))).toBeCloseTo(16 / 3, 9); // 5.333 bf in a 2 x 4 of 8 ft
  expect(counted(hardwoodMeasure, line(2, 4, 8))).toBe(6); // surface 2 2/3, taken as 3
});

it("counts a board under 1 in as 1 in thick by both trade conventions, but not as given", () => {
  expect(tallyMeasures.map((measure) => counted(measure, line(0.75, 12, 8)))).toEqual([6, 8, 8]);
});

describe("exact halves of surface measure", () => {
  const half = (pieces: number) => line(1, 6, 9, pieces); // 4.5 ft2

  it("go down and up in turn over the boards of a tally, the first one down", () => {
    expect([1, 2, 3, 4, 10].map((pieces) => counted(hardwoodMeasure, half(pieces)))).toEqual([4, 9, 13, 18, 45]);
  });

  it("take their turn from line to line, whole measures in between making no difference", () => {
    expect(counted(hardwoodMeasure, half(1), line(1, 12, 8), half(1))).toBe(4 + 8 + 5);
  });

  it("come out the same, however like boards are split into lines", () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 1, max: 9 }), { minLength: 1, maxLength: 6 }), (counts) => {
        const all = counts.reduce((sum, pieces) => sum + pieces, 0);
        expect(counted(hardwoodMeasure, ...counts.map(half))).toBe(counted(hardwoodMeasure, half(all)));
      }),
    );
  });
});

it("gathers lines by name, in the order in which names first come, whatever their case", () => {
  const parts = boardTally([line(1, 12, 8, 2, "FAS"), line(1, 12, 8, 1, "No. 1"), line(1, 12, 10, 1, "fas")], asGiven);
  expect(parts).toEqual([
    { name: "FAS", pieces: 3, boardFeet: 26 },
    { name: "No. 1", pieces: 1, boardFeet: 8 },
  ]);
  expect(boardTally([], asGiven)).toEqual([]);
});
