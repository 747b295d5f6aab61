import quantile from "@stdlib/stats-base-dists-t-quantile";
import { describe, expect, it } from "vitest";
import { InvalidInput, OutOfRange } from "../../../src/core/basis/problem";
import { mean, sampleVariance, studentT } from "../../../src/core/basis/statistics";
import { percent } from "../../../src/core/basis/units";

const confidences = [50, 68, 80, 90, 95, 98, 99, 99.9];
const degrees = [1, 2, 3, 4, 5, 7, 10, 13, 19, 30, 47.66, 59, 123.87, 179, 500, 1000, 10_000, 100_000, 1_000_000];

describe("Student's t", () => {
  it.each(confidences)("agrees with another library at %d percent confidence", (confidence) => {
    for (const df of degrees) {
      const other = quantile(0.5 + confidence / 200, df);
      expect(Math.abs(studentT(percent(confidence), df) / other - 1), `${df} degrees of freedom`).toBeLessThan(1e-7);
    }
  });

  it("is the normal deviate for more plots than anyone takes", () => {
    const normal = quantile(0.975, 1e15);
    for (const df of [1e6, 1e7, 1e9, 1e12]) expect(Math.abs(studentT(percent(95), df) / normal - 1)).toBeLessThan(2e-6);
  });

  it("falls as plots are added", () => {
    for (let df = 1; df < 400; df += 1) expect(studentT(percent(95), df + 1)).toBeLessThan(studentT(percent(95), df));
  });

  it("refuses what has no answer", () => {
    expect(() => studentT(percent(95), 0)).toThrow(OutOfRange);
    expect(() => studentT(percent(95), NaN)).toThrow(OutOfRange);
    expect(() => studentT(percent(0.95), 10)).toThrow("Confidence should be between 50 and 99.9 %. You have 0.95.");
    expect(() => studentT(percent(100), 10)).toThrow(InvalidInput);
  });
});

it("mean and variance by hand", () => {
  expect(mean([2, 4, 9])).toBe(5);
  expect(sampleVariance([2, 4, 9])).toBe(13);
});

it("variance keeps its digits far from zero", () => {
  expect(sampleVariance([1e9 + 2, 1e9 + 4, 1e9 + 9])).toBe(13);
});
