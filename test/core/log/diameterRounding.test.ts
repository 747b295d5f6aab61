import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  diameterRoundings,
  fractionDropped,
  halfAlternate,
  halfDown,
  halfUp,
  notToWhole,
  rounderFor,
  type DiameterRounding,
} from "../../../src/core/log/diameterRounding";

const rounded = (rounding: DiameterRounding, diameters: readonly number[]) => diameters.map(rounding.start());

describe("what becomes of a fraction of an inch", () => {
  const measured = [10.4, 10.5, 10.6, 11.5, 12.5, 12.99];

  it.each([
    [notToWhole, measured],
    [halfUp, [10, 11, 11, 12, 13, 13]], // 10 is 9 1/2 to just under 10 1/2, Idaho Board of Scaling Practices
    [halfDown, [10, 10, 11, 11, 12, 13]], // 8 and 13 in average 10.5 and scale 10, Idaho contest rules
    [halfAlternate, [10, 11, 11, 11, 13, 13]], // 10.5 up, 11.5 down, 12.5 up: halves shared evenly, Georgia 2-14-80(e)
    [fractionDropped, [10, 10, 10, 11, 12, 12]], // FOR 274
  ])("$title", (rounding, expected) => {
    expect(rounded(rounding, measured)).toEqual(expected);
  });

  it("is the same after a conversion from metric that is a hair off", () => {
    for (const hair of [-2e-12, 2e-12]) {
      expect(rounded(halfUp, [10.5 + hair])).toEqual([11]);
      expect(rounded(halfDown, [10.5 + hair])).toEqual([10]);
      expect(rounded(halfAlternate, [10.5 + hair, 10.5 + hair])).toEqual([11, 10]);
      expect(rounded(fractionDropped, [12 + hair])).toEqual([12]);
    }
  });
});

describe.each(diameterRoundings)("$title", (rounding) => {
  it("keeps whole inches, moves a diameter by less than an inch, and is named with its source", () => {
    fc.assert(
      fc.property(fc.double({ min: 1, max: 100, noNaN: true }), (diameter) => {
        expect(Math.abs((rounded(rounding, [diameter])[0] ?? NaN) - diameter)).toBeLessThan(1);
      }),
    );
    expect(rounded(rounding, [8, 20, 20, 31])).toEqual([8, 20, 20, 31]);
    expect(rounding.sources.length > 0).toBe(rounding !== notToWhole);
  });
});

it("half alternate starts anew with each list, shares halves evenly and asks for the whole list", () => {
  const halves = Array.from({ length: 10 }, (_, i) => i + 0.5);
  const sum = (values: readonly number[]) => values.reduce((total, one) => total + one, 0);
  expect(sum(rounded(halfAlternate, halves))).toBe(sum(halves));
  expect(rounded(halfAlternate, halves)).toEqual(rounded(halfAlternate, halves));
  expect(() => rounderFor(halfAlternate, 1)).toThrow(
    '"Half alternate" needs the whole column of diameters in one formula; one log cannot tell whose turn it is.',
  );
  expect(rounderFor(halfAlternate, 2)(10.5)).toBe(11);
  expect(rounderFor(halfUp, 1)(10.5)).toBe(11);
});
