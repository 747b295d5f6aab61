import fc from "fast-check";
import { expect, it } from "vitest";
import { InvalidInput } from "../../../src/core/basis/problem";
import { acres } from "../../../src/core/basis/units";
import { gridSpacing } from "../../../src/core/cruise/gridSpacing";

it("60 acres with 15 plots is 4 acres, 40 square chains, to a plot, as in Fixed area plot sampling slides", () => {
  expect((gridSpacing(acres(60), 15) / 66) ** 2).toBeCloseTo(40, 9);
  expect(gridSpacing(acres(60), 15)).toBeCloseTo(417.4, 1);
});

it("the squares of the grid cover the tract", () => {
  fc.assert(
    fc.property(fc.double({ min: 0.1, max: 10_000, noNaN: true }), fc.integer({ min: 1, max: 500 }), (tract, plots) => {
      expect((plots * gridSpacing(acres(tract), plots) ** 2) / 43_560 / tract).toBeCloseTo(1, 9);
    }),
  );
});

it.each([0, -1, NaN])("refuses %s acres or plots", (bad) => {
  expect(() => gridSpacing(acres(bad), 10)).toThrow(InvalidInput);
  expect(() => gridSpacing(acres(10), bad)).toThrow(InvalidInput);
});
