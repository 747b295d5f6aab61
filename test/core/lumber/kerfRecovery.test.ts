import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { InvalidInput } from "../../../src/core/basis/problem";
import { inches } from "../../../src/core/basis/units";
import { gainFromThinnerKerf, kerfRecovery } from "../../../src/core/lumber/kerfRecovery";

describe("kerf recovery", () => {
  it.each([
    [1, 1 / 16, 5.9],
    [1, 1 / 8, 11.1],
    [1, 1 / 4, 20],
    [2, 1 / 16, 3.0],
    [2, 1 / 8, 5.9],
    [2, 1 / 4, 11.1],
  ])("a board of %f in with a kerf of %f in loses %f % (worked by hand, to 0.1)", (thickness, kerf, lost) => {
    expect(100 - kerfRecovery(inches(thickness), inches(kerf))).toBeCloseTo(lost, 1);
  });

  it("loses nothing to a blade that splits", () => {
    expect(kerfRecovery(inches(1), inches(0))).toBe(100);
  });
});

describe("gain from a thinner kerf", () => {
  it("is 1/9 for inch boards from 1/8 in instead of 1/4 in", () => {
    expect(gainFromThinnerKerf(inches(1), inches(1 / 8), inches(1 / 4))).toBeCloseTo(100 / 9, 9);
  });

  it("is the number of boards out of a very wide cant, counted", () => {
    const cant = 1_000_000; // in
    const boards = (kerf: number) => Math.floor((cant + kerf) / (1.125 + kerf));
    const counted = 100 * (boards(5 / 32) / boards(9 / 32) - 1);
    expect(gainFromThinnerKerf(inches(1.125), inches(5 / 32), inches(9 / 32))).toBeCloseTo(counted, 3);
  });

  it("is the ratio of the two recoveries", () => {
    const width = fc.double({ min: 0.01, max: 3, noNaN: true });
    fc.assert(
      fc.property(width, width, width, (thickness, kerf, compare) => {
        const ratio = kerfRecovery(inches(thickness), inches(kerf)) / kerfRecovery(inches(thickness), inches(compare));
        expect(gainFromThinnerKerf(inches(thickness), inches(kerf), inches(compare))).toBeCloseTo(100 * (ratio - 1), 6);
      }),
    );
  });
});

it("refuses a board of no thickness and a kerf below 0", () => {
  expect(() => kerfRecovery(inches(0), inches(0.1))).toThrow(InvalidInput);
  expect(() => kerfRecovery(inches(1), inches(-0.1))).toThrow("Kerf should be 0 or more in. You have -0.1.");
  expect(() => gainFromThinnerKerf(inches(1), inches(0.1), inches(NaN))).toThrow(InvalidInput);
});
