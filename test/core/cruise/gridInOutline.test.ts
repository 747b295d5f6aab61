import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { feet } from "../../../src/core/basis/units";
import { checkPoint, gridInOutline, type GridLayout } from "../../../src/core/cruise/gridInOutline";
import type { MapPoint } from "../../../src/core/cruise/gridPoints";
import { isInside } from "../../../src/core/cruise/outline";
import { startCorners } from "../../../src/core/cruise/startCorners";

const at = (east: number, north: number): MapPoint => ({ east: feet(east), north: feet(north) });
const near = (value: number) => expect.closeTo(value, 6) as unknown;
const apart = (one: MapPoint, other: MapPoint) => Math.hypot(one.east - other.east, one.north - other.north);

/** An L: 600 by 600 ft less its north-east quarter; 270,000 ft2. */
const outline = [at(0, 0), at(600, 0), at(600, 300), at(300, 300), at(300, 600), at(0, 600)];
const inside = (seed: number, rest: Partial<GridLayout> = {}) =>
  gridInOutline(outline, { spacing: feet(100), seed, ...rest });

describe("a grid in an outline", () => {
  it("keeps the points inside, in walking order, and drops the others", () => {
    const points = inside(7);
    expect(points.every(({ east, north }) => !(east > 300 && north > 300))).toBe(true);
    expect(points.length).toBe(27);
    for (let i = 1; i < points.length; i += 1)
      expect(apart(points[i - 1] as MapPoint, points[i] as MapPoint)).toBeLessThan(401);
  });

  it("is the same for the same seed, and another for another", () => {
    expect(inside(7)).toEqual(inside(7));
    expect(inside(8)).not.toEqual(inside(7));
  });

  it("has, over many starts, as many points as acres over acres, at any angle of the lines", () => {
    for (const bearing of [0, 37, 90]) {
      let sum = 0;
      for (let seed = 0; seed < 2000; seed += 1) sum += inside(seed, { spacing: feet(170), bearing }).length;
      // 270,000 / 170^2 = 9.34; the mean of 2000 draws lies within 0.15 of it
      expect(Math.abs(sum / 2000 - 270_000 / 170 ** 2), String(bearing)).toBeLessThan(0.15);
    }
  });

  it("may lie anywhere on the map", () => {
    const moved = outline.map(({ east, north }) => at(east - 5000, north + 900));
    const there = gridInOutline(moved, { spacing: feet(100), seed: 7 });
    expect(there.map(({ east, north }) => [east, north])).toEqual(
      inside(7).map(({ east, north }) => [near(east - 5000), near(north + 900)]),
    );
  });

  it("runs its lines in the direction asked for, from north over east", () => {
    for (const bearing of [0, 30, 90, 135]) {
      const points = inside(3, { bearing });
      const next = points.find((point, i) => i > 0 && apart(point, points[i - 1] as MapPoint) < 100.001);
      const before = points[points.indexOf(next as MapPoint) - 1] as MapPoint;
      const angle = (Math.atan2(before.east - (next?.east ?? 0), before.north - (next?.north ?? 0)) * 180) / Math.PI;
      const off = Math.abs(((((angle - bearing) % 180) + 270) % 180) - 90);
      expect(off < 1e-6 || Math.abs(off - 90) < 1e-6, `${bearing}: ${angle}`).toBe(true);
    }
  });

  it("begins the walk at the corner asked for, with the same points", () => {
    const all = startCorners.map((from) => inside(7, { from }));
    const sorted = all.map((points) => points.map(({ east, north }) => `${east} ${north}`).sort());
    for (const one of sorted) expect(one).toEqual(sorted[0]);
    const firsts = all.map(([first]) => first as MapPoint);
    expect((firsts[0]?.east ?? 0) < (firsts[1]?.east ?? 0)).toBe(true);
    expect((firsts[0]?.north ?? 0) < (firsts[2]?.north ?? 0)).toBe(true);
  });

  it("holds at any angle and seed: every point inside, no two nearer than the spacing", () => {
    fc.assert(
      fc.property(
        fc.nat(1e6),
        fc.integer({ min: 0, max: 360 }),
        fc.integer({ min: 60, max: 200 }),
        (seed, bearing, spacing) => {
          const points = inside(seed, { bearing, spacing: feet(spacing) });
          for (const point of points) expect(isInside(outline, point)).toBe(true);
          points.forEach((one, i) =>
            points.slice(i + 1).forEach((other) => expect(apart(one, other)).toBeGreaterThan(spacing - 1e-6)),
          );
        },
      ),
      { numRuns: 60 },
    );
  });

  it("says of a plot outside that it is none", () => {
    expect(checkPoint("7", at(450, 450), outline)).toBe(
      "Plot 7 lies outside the tract, so it is no plot of this cruise. Take it off the plot list.",
    );
    expect(checkPoint("7", at(150, 450), outline)).toBe("");
  });

  it("says what is wrong", () => {
    expect(() => gridInOutline(outline.slice(0, 2), { spacing: feet(100), seed: 1 })).toThrow(
      "An outline needs 3 corners or more. You have 2.",
    );
    expect(() => gridInOutline([at(0, 0), at(5, 0), at(0, 5)], { spacing: feet(500), seed: 3 })).toThrow(
      "No point falls inside",
    );
    expect(() => inside(7.5)).toThrow("The seed should be a whole number from 0 to 2147483647. You have 7.5.");
    expect(() => inside(7, { bearing: 400 })).toThrow(
      "Bearing of the lines should be between 0 and 360 degrees. You have 400. Missing a decimal point?",
    );
  });
});
