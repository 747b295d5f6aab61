import fc from "fast-check";
import { expect, it } from "vitest";
import { InvalidInput } from "../../../src/core/basis/problem";
import { feet } from "../../../src/core/basis/units";
import { logsFromHeight } from "../../../src/core/tree/logsFromHeight";

const logs = (height: number, logLength = 16, trim = 0.3, step = 0.5) =>
  logsFromHeight({ height: feet(height), logLength: feet(logLength), trim: feet(trim), step });

it("42 ft counts as 2.5 logs, as in Ohio State University Extension F-35 (seen in a web copy)", () => {
  expect(logs(42)).toBe(2.5);
});

it.each([
  [16.3, 1],
  [41, 2.5], // 41 / 16.3 = 2.515
  [44.8, 2.5], // 2.748
  [44.9, 3], // 2.755
  [48.9, 3],
  [4, 0], // 0.245: less than a quarter log
  [4.1, 0.5],
])("%s ft is %s logs to the nearest half, divided out by hand", (height, expected) => {
  expect(logs(height)).toBe(expected);
});

it.each([
  [28.525, 2], // 1.75 times 16.3, but 1.7499999999999998 as decimals are stored
  [36.675, 2.5], // 2.25 times
  [93.725, 6], // 5.75 times
])("%s ft, just half way, goes up to %s logs however decimals are stored", (height, expected) => {
  expect(logs(height)).toBe(expected);
});

it("counts in other lengths and steps", () => {
  expect(logs(41, 8, 0, 1)).toBe(5);
  expect(logs(41, 16, 0.3, 0.1)).toBe(2.5);
  expect(logs(41, 16, 0.3, 0.25)).toBe(2.5);
});

it("is never more than half a step from the height", () => {
  fc.assert(
    fc.property(fc.double({ min: 0.1, max: 200, noNaN: true }), (height) => {
      expect(Math.abs(logs(height) - height / 16.3)).toBeLessThanOrEqual(0.25 + 1e-6);
    }),
  );
});

it.each([0, -5, NaN])("refuses a height of %s", (bad) => expect(() => logs(bad)).toThrow(InvalidInput));
it("refuses a trim below 0 and a step of 0", () => {
  expect(() => logs(40, 16, -1)).toThrow(InvalidInput);
  expect(() => logs(40, 16, 0.3, 0)).toThrow(InvalidInput);
});
