import fc from "fast-check";
import { expect, it } from "vitest";
import { InvalidInput } from "../../../src/core/basis/problem";
import { feet, inches } from "../../../src/core/basis/units";
import { boardMeasure } from "../../../src/core/lumber/boardMeasure";

const bf = (thickness: number, width: number, length: number, pieces?: number) =>
  boardMeasure(inches(thickness), inches(width), feet(length), pieces);

it("is 1 for the board foot itself, 1 in x 12 in x 1 ft", () => {
  expect(bf(1, 12, 1)).toBe(1);
});

it("counts nominal and actual measures as they are given", () => {
  expect(bf(2, 4, 12)).toBe(8); // a nominal 2 x 4
  expect(bf(1.5, 3.5, 12) / bf(2, 4, 12)).toBeCloseTo(0.656, 3); // dressed dry, PS 20 sizes
  expect(bf(0.75, 12, 1)).toBe(0.75); // thinner than 1 in
});

it("multiplies by the number of boards, and is 12 to the cubic foot", () => {
  const measure = fc.double({ min: 0.1, max: 30, noNaN: true });
  fc.assert(
    fc.property(measure, measure, measure, fc.integer({ min: 1, max: 500 }), (thickness, width, length, pieces) => {
      const cubicFeet = (thickness / 12) * (width / 12) * length * pieces;
      expect(bf(thickness, width, length, pieces)).toBeCloseTo(12 * cubicFeet, 6);
    }),
  );
});

it.each([0, -1, NaN, Infinity])("refuses %f anywhere", (wrong) => {
  expect(() => bf(wrong, 8, 12)).toThrow(InvalidInput);
  expect(() => bf(1, wrong, 12)).toThrow(InvalidInput);
  expect(() => bf(1, 8, wrong)).toThrow(InvalidInput);
  expect(() => bf(1, 8, 12, wrong)).toThrow(InvalidInput);
});
