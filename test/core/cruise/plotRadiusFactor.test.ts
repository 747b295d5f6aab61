import { expect, it } from "vitest";
import { InvalidInput } from "../../../src/core/basis/problem";
import { squareFeetPerAcre } from "../../../src/core/basis/units";
import { toFace } from "../../../src/core/cruise/measureTo";
import { plotRadiusFactor } from "../../../src/core/cruise/plotRadiusFactor";
import { expectAsPrinted } from "../../support/expectAsPrinted";

it("the constant is the 8.696 of the Kentucky forestry teaching slides", () => {
  expectAsPrinted(plotRadiusFactor(squareFeetPerAcre(1)), 8.696, 0.001);
});

it.each([
  [5, 3.89, 0.01],
  [10, 2.75, 0.01],
  [20, 1.944, 0.001],
])("BAF %s is %s ft per inch, as in Point Sampling, Forest Measurements II slides", (baf, printed, printedTo) => {
  // 1.9445 is printed cut off, not rounded: the third decimal holds within a whole step.
  const step = baf === 20 ? 2 * printedTo : printedTo;
  expectAsPrinted(plotRadiusFactor(squareFeetPerAcre(baf)), printed, step);
});

it("BAF 10 is 2.75 exactly, since 43560 / 5760 is 2.75 squared", () => {
  expect(plotRadiusFactor(squareFeetPerAcre(10))).toBe(2.75);
});

it("to the face half a diameter is left out: 1/24 ft for each inch", () => {
  expect(plotRadiusFactor(squareFeetPerAcre(10), toFace)).toBeCloseTo(2.75 - 0.5 / 12, 12);
});

it.each([0, -1, NaN, 50_000])("refuses a factor of %s", (bad) => {
  expect(() => plotRadiusFactor(squareFeetPerAcre(bad), toFace)).toThrow(InvalidInput);
});
