import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { sampleVariance } from "../../../src/core/basis/statistics";
import { successiveDifferenceError } from "../../../src/core/cruise/successiveDifferences";

describe("the error of a walked grid by its neighbours", () => {
  it("by hand: 10, 14, 12, 20 have differences 4, -2 and 8; 84 over 2 x 4 x 3", () => {
    expect(successiveDifferenceError([10, 14, 12, 20])).toBeCloseTo(Math.sqrt(84 / 24), 12);
  });

  it("is below the usual one where neighbours are alike, and above it where they alternate", () => {
    const slope = Array.from({ length: 20 }, (_, i) => 5 * i);
    const usual = (values: readonly number[]) => Math.sqrt(sampleVariance(values) / values.length);
    expect(successiveDifferenceError(slope)).toBeLessThan(usual(slope) / 3);
    const waves = slope.map((_, i) => (i % 2) * 50);
    expect(successiveDifferenceError(waves)).toBeGreaterThan(usual(waves));
  });

  it("is on average the usual one where the order means nothing", () => {
    // All orders of three values: the squares of both must agree in the mean
    const orders = (a: number, b: number, c: number) => [
      [a, b, c],
      [a, c, b],
      [b, a, c],
      [b, c, a],
      [c, a, b],
      [c, b, a],
    ];
    const one = fc.integer({ min: 0, max: 100 });
    fc.assert(
      fc.property(one, one, one, (a, b, c) => {
        const squares = orders(a, b, c).map((order) => successiveDifferenceError(order) ** 2);
        expect(squares.reduce((sum, square) => sum + square, 0) / 6).toBeCloseTo(sampleVariance([a, b, c]) / 3, 8);
      }),
    );
  });

  it("needs two plots", () => expect(() => successiveDifferenceError([3])).toThrow("at least 2 plots. You have 1."));
});
