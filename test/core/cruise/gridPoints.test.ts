import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { feet } from "../../../src/core/basis/units";
import { checkPoint, gridInOutline, randomStart } from "../../../src/core/cruise/gridInOutline";
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

describe("a grid in an outline", () => {
  // An L: 600 by 600 ft less its north-east quarter; 270,000 ft2
  const outline = [at(0, 0), at(600, 0), at(600, 300), at(300, 300), at(300, 600), at(0, 600)];
  const inside = (seed: number) => gridInOutline(outline, feet(100), seed);

  it("keeps the points inside, in walking order, and drops the others", () => {
    const points = inside(7);
    expect(points.every(({ east, north }) => !(east > 300 && north > 300))).toBe(true);
    expect(points.length).toBe(27);
  });

  it("is the same for the same seed, and another for another", () => {
    expect(inside(7)).toEqual(inside(7));
    expect(inside(8)).not.toEqual(inside(7));
  });

  it("has, over many starts, as many points as acres over acres", () => {
    const wide = (seed: number) => gridInOutline(outline, feet(170), seed).length;
    let sum = 0;
    for (let seed = 0; seed < 4000; seed += 1) sum += wide(seed);
    expect(Math.abs(sum / 4000 - 270_000 / 170 ** 2)).toBeLessThan(0.15);
  });

  it("may lie anywhere on the map", () => {
    const moved = outline.map(({ east, north }) => at(east - 5000, north + 900));
    expect(gridInOutline(moved, feet(100), 7)).toEqual(
      inside(7).map(({ east, north }) => at(east - 5000, north + 900)),
    );
  });

  it("says of a plot outside that it is none", () => {
    expect(checkPoint("7", at(450, 450), outline)).toBe(
      "Plot 7 lies outside the tract, so it is no plot of this cruise. Take it off the plot list.",
    );
    expect(checkPoint("7", at(150, 450), outline)).toBe("");
    expect(() => gridInOutline(outline.slice(0, 2), feet(100), 1)).toThrow(
      "An outline needs 3 corners or more. You have 2.",
    );
    expect(() => gridInOutline([at(0, 0), at(1, 0), at(0, 1)], feet(500), 3)).toThrow("No point falls inside");
  });
});
