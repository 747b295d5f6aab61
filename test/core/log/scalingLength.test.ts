import fc from "fast-check";
import { expect, it } from "vitest";
import { OutOfRange } from "../../../src/core/basis/problem";
import { scalingLength } from "../../../src/core/log/scalingLength";

it.each([
  [16.5, 0, 1, 16],
  [16.33, 0.33, 2, 16], // 16 ft 4 in with 4 in of trim
  [16.33, 1 / 3, 2, 16], // the same, trim to the digit: the slip of two decimals is let pass
  [16.3, 0.33, 2, 14], // short of its trim: the next class of 2 ft, Idaho contest rules
  [15.9, 0, 2, 14],
  [12, 0, 1, 12],
  [5.2, 0.15, 0.1, 5], // metres
])("%f less trim of %f in steps of %f is %f", (length, trim, step, expected) => {
  expect(scalingLength(length, trim, step)).toBe(expected);
});

it("is a whole number of steps, never more than was measured, and less by under a step", () => {
  const step = fc.constantFrom(0.1, 0.5, 1, 2);
  fc.assert(
    fc.property(
      fc.double({ min: 6, max: 60, noNaN: true }),
      fc.double({ min: 0, max: 2, noNaN: true }),
      step,
      (length, trim, by) => {
        const scaled = scalingLength(length, trim, by);
        expect(scaled / by).toBeCloseTo(Math.round(scaled / by), 6);
        expect(scaled).toBeLessThanOrEqual(length - trim + 0.01 + 1e-9);
        expect(scaled).toBeGreaterThan(length - trim - by - 1e-9);
      },
    ),
  );
});

it("says when nothing is left, and refuses what is no length", () => {
  expect(() => scalingLength(2.1, 0.33, 2)).toThrow(OutOfRange);
  expect(() => scalingLength(2.1, 0.33, 2)).toThrow(
    "A log of 2.1 ft has no whole step of 2 ft beyond its trim of 0.33 ft.",
  );
  expect(() => scalingLength(0, 0, 1)).toThrow("Length should be above 0 ft. You have 0.");
  expect(() => scalingLength(16, -1, 1)).toThrow("Trim should be 0 or more ft. You have -1.");
  expect(() => scalingLength(16, 0, 0)).toThrow("Step should be above 0 ft. You have 0.");
  expect(() => scalingLength(1e300, 0, 1, "m")).toThrow("Length should be at most 1000 m. You have 1.000e+300.");
});
