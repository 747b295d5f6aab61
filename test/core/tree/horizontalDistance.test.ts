import fc from "fast-check";
import { expect, it } from "vitest";
import { InvalidInput } from "../../../src/core/basis/problem";
import { feet, percent } from "../../../src/core/basis/units";
import { horizontalDistance, slopeStretch } from "../../../src/core/tree/horizontalDistance";

it("100 ft on 30 % is 95.78 ft level: 100 / sqrt(1.09), worked by hand", () => {
  expect(horizontalDistance(feet(100), percent(30))).toBeCloseTo(95.78, 2);
});

it("the 3-4-5 triangle: 50 ft on 75 % is 40 ft level", () => {
  expect(horizontalDistance(feet(50), percent(75))).toBeCloseTo(40, 9);
});

it("is the distance times the cosine of the angle, uphill and downhill alike", () => {
  fc.assert(
    fc.property(
      fc.double({ min: 1, max: 500, noNaN: true }),
      fc.double({ min: 0, max: 200, noNaN: true }),
      (distance, slope) => {
        const level = horizontalDistance(feet(distance), percent(slope));
        expect(level).toBeCloseTo(distance * Math.cos(Math.atan(slope / 100)), 6);
        expect(horizontalDistance(feet(distance), percent(-slope))).toBe(level);
        expect(level * slopeStretch(percent(slope))).toBeCloseTo(distance, 6);
      },
    ),
  );
});

it("refuses ground too steep to stand on", () => {
  expect(() => horizontalDistance(feet(50), percent(400))).toThrow(
    new InvalidInput("Slope should be between -200 and 200 %. You have 400. Missing a decimal point?"),
  );
  expect(() => horizontalDistance(feet(-1), percent(10))).toThrow(InvalidInput);
});
