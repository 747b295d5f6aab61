import { expect, it } from "vitest";
import { percent } from "../../../src/core/basis/units";
import { combinedDeduction } from "../../../src/core/log/deduction";

const combined = (...deductions: readonly number[]) => combinedDeduction(deductions.map(percent));

it("adds shares of the gross scale, up to the whole log", () => {
  expect(combined()).toBe(0);
  expect(combined(15, 0, 10)).toBe(25);
  expect(combined(60, 50)).toBe(100);
  expect(combined(100)).toBe(100);
});

it("asks about a share of one, and refuses what is no percent", () => {
  expect(() => combined(10, 0.15)).toThrow(
    "Deduction is 0.15: 0.15 %, or 15 %? Type 15 for 15 %; below 1 % nothing is deducted.",
  );
  expect(() => combined(-1)).toThrow("Deduction should be between 0 and 100 %. You have -1.");
  expect(() => combined(NaN)).toThrow("Deduction needs a number in %, but it is missing or too large to use.");
});
