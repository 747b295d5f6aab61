import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { InvalidInput } from "../../../src/core/basis/problem";
import { feet, inches } from "../../../src/core/basis/units";
import { surfaceMeasure } from "../../../src/core/lumber/surfaceMeasure";
import { hardwoodMeasure } from "../../../src/core/lumber/tallyMeasure";
import { expectAsPrinted } from "../../support/expectAsPrinted";
import { numberIn, published } from "../../support/published";

const measure = (width: number, length: number) => surfaceMeasure(inches(width), feet(length));

describe("examples from print", () => {
  const { rows, printedTo, source } = published("lumber/surfaceMeasure.csv");

  it.each(rows)(`$thickness x $width in x $length ft: $surface ft2, $volume bf, as in ${source}`, (row) => {
    const [thickness, width, length] = ["thickness", "width", "length"].map((column) => numberIn(row, column));
    const board = { thickness: inches(thickness ?? NaN), width: inches(width ?? NaN), length: feet(length ?? NaN) };
    expectAsPrinted(surfaceMeasure(board.width, board.length), numberIn(row, "surface"), printedTo);
    expectAsPrinted(hardwoodMeasure.counter()({ ...board, pieces: 1 }), numberIn(row, "volume"), printedTo);
  });
});

it("drops a fraction of a foot, and keeps that of an inch", () => {
  expect(measure(12, 8.9)).toBe(8);
  expect([measure(7, 8), measure(6.5, 8)]).toEqual([5, 4]); // 4 2/3 and 4 1/3
  expect(measure(12, 8 - 1e-12)).toBe(8); // 8 ft, come out of a conversion from metres a hair off
});

it("sends an exact half to the even number", () => {
  expect([measure(6, 9), measure(6, 11), measure(6, 13), measure(6, 15)]).toEqual([4, 6, 6, 8]); // 4.5, 5.5, 6.5, 7.5
});

it("is a whole number within a half of width times whole feet over 12, and never falls with the width", () => {
  const width = fc.double({ min: 3, max: 40, noNaN: true });
  fc.assert(
    fc.property(width, fc.integer({ min: 4, max: 20 }), (wide, long) => {
      expect(Number.isInteger(measure(wide, long))).toBe(true);
      expect(Math.abs(measure(wide, long) - (wide * long) / 12)).toBeLessThanOrEqual(0.5 + 1e-8);
      expect(measure(wide + 1, long)).toBeGreaterThanOrEqual(measure(wide, long));
    }),
  );
});

it.each([0, -1, NaN, Infinity])("refuses %f", (wrong) => {
  expect(() => measure(wrong, 8)).toThrow(InvalidInput);
  expect(() => measure(8, wrong)).toThrow(InvalidInput);
});
