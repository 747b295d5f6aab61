import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { feet } from "../../../src/core/basis/units";
import type { MapPoint } from "../../../src/core/cruise/gridPoints";
import { outlineAcres, sidesThatCross, withoutRepeats } from "../../../src/core/cruise/outline";
import { withoutLoops } from "../../../src/core/cruise/withoutLoops";

const at = (east: number, north: number): MapPoint => ({ east: feet(east), north: feet(north) });
const square = (side: number) => [at(0, 0), at(side, 0), at(side, side), at(0, side)];

describe("the acres of an outline", () => {
  it("are 10 for a square of ten chains", () => {
    expect(outlineAcres(square(660))).toBeCloseTo(10, 12);
    expect(outlineAcres([...square(660)].reverse())).toBeCloseTo(10, 12);
  });

  it("are those of triangles, whichever corner comes first and wherever it lies", () => {
    const size = fc.integer({ min: 10, max: 5000 });
    fc.assert(
      fc.property(size, size, fc.integer({ min: -9999, max: 9999 }), fc.nat(2), (base, height, away, first) => {
        const corners = [at(away, away), at(away + base, away), at(away + base / 3, away + height)];
        const turned = [...corners.slice(first), ...corners.slice(0, first)];
        expect(outlineAcres(turned)).toBeCloseTo((base * height) / 2 / 43_560, 6);
      }),
    );
  });

  it("are refused where the corners are no outline", () => {
    expect(() => outlineAcres([at(0, 0), at(660, 660), at(660, 0), at(0, 660)])).toThrow(
      "The sides that begin at corners 1 and 3 cross each other. List the corners in order around the tract.",
    );
    expect(() => outlineAcres([at(0, 0), at(10, 0), at(20, 0)])).toThrow("The corners lie in one line");
    expect(() => outlineAcres(Array.from({ length: 5001 }, (_, i) => at(i, i * i)))).toThrow(
      "An outline may have 5000 corners at most. You have 5001; thin the track out first.",
    );
  });

  it("need no corner twice", () => {
    expect(withoutRepeats([...square(100), at(0, 0)])).toEqual(square(100));
    expect(withoutRepeats([at(0, 0), at(0, 0), at(5, 0), at(5, 5)])).toHaveLength(3);
  });
});

describe("a walked track", () => {
  const walked = [at(0, 0), at(660, 0), at(660, 660), at(330, 660), at(330, 670), at(336, 655), at(0, 660)];

  it("loses the knot where one stood still", () => {
    expect(sidesThatCross(walked)).toEqual([2, 4]);
    const { track, loops } = withoutLoops(walked);
    expect(loops).toBe(1);
    expect(sidesThatCross(track)).toBeUndefined();
    expect(outlineAcres(track)).toBeCloseTo(10, 1);
  });

  it("loses the crossing where it ended past its start", () => {
    const over = [at(10, 0), at(660, 0), at(660, 660), at(0, 660), at(0, -8), at(20, 6)];
    const { track, loops } = withoutLoops(over);
    expect(loops).toBe(1);
    expect(outlineAcres(track)).toBeCloseTo(10, 1);
  });

  it("keeps a large loop, which is refused by name", () => {
    const eight = [at(0, 0), at(660, 660), at(660, 0), at(0, 660)];
    expect(withoutLoops(eight)).toEqual({ track: eight, loops: 0 });
  });

  it("is left alone when it has none", () => expect(withoutLoops(square(100)).loops).toBe(0));
});
