import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { feet } from "../../../src/core/basis/units";
import { randomStart } from "../../../src/core/cruise/gridInOutline";
import { gridPoints, type MapPoint } from "../../../src/core/cruise/gridPoints";

const at = (east: number, north: number): MapPoint => ({ east: feet(east), north: feet(north) });
const grid = (width: number, depth: number, spacing: number, start: MapPoint) =>
  gridPoints(feet(width), feet(depth), feet(spacing), start);

describe("a grid over a rectangle", () => {
  it("is walked up one line and down the next", () => {
    expect(grid(250, 250, 100, at(20, 30))).toEqual([
      at(20, 30),
      at(20, 130),
      at(20, 230),
      at(120, 230),
      at(120, 130),
      at(120, 30),
      at(220, 30),
      at(220, 130),
      at(220, 230),
    ]);
  });

  it("has points on the far edge", () => expect(grid(0.3, 0.3, 0.1, at(0.1, 0.1))).toHaveLength(9));

  it("has every point inside, each one spacing from the one before, and on average as many as the area over the cell", () => {
    const size = fc.integer({ min: 100, max: 3000 });
    fc.assert(
      fc.property(size, size, fc.integer({ min: 50, max: 600 }), fc.nat(1e6), (width, depth, spacing, seed) => {
        let points: MapPoint[];
        try {
          points = grid(width, depth, spacing, randomStart(feet(spacing), seed));
        } catch {
          return;
        }
        for (const { east, north } of points) {
          expect(east >= 0 && east <= width && north >= 0 && north <= depth).toBe(true);
        }
        for (let i = 1; i < points.length; i += 1) {
          const [one, next] = [points[i - 1] as MapPoint, points[i] as MapPoint];
          expect(Math.hypot(one.east - next.east, one.north - next.north)).toBeCloseTo(spacing, 6);
        }
      }),
    );
    let sum = 0;
    for (let seed = 0; seed < 4000; seed += 1) sum += grid(1000, 700, 300, randomStart(feet(300), seed)).length;
    // 1000 x 700 / 300^2 = 7.78 points; the mean of 4000 draws lies within 0.1 of it
    expect(Math.abs(sum / 4000 - 700_000 / 90_000)).toBeLessThan(0.1);
  });

  it("says what is wrong", () => {
    expect(() => grid(100, 100, 500, at(200, 20))).toThrow("No point falls inside; use a smaller spacing.");
    expect(() => grid(900, 900, 100, at(150, 20))).toThrow("The start should lie within one spacing of the corner");
    expect(() => grid(1e5, 1e5, 100, at(50, 50))).toThrow("Spacing should be wider: that would be 1000000 points.");
    expect(() => grid(0, 100, 100, at(50, 50))).toThrow("Width should be above 0 ft. You have 0.");
  });
});
