import { polygonArea, polygonContains } from "d3-polygon";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { feet } from "../../../src/core/basis/units";
import { gridInOutline } from "../../../src/core/cruise/gridInOutline";
import type { MapPoint } from "../../../src/core/cruise/gridPoints";
import { isInside, outlineAcres, requireOutline, type Outline } from "../../../src/core/cruise/outline";
import { withHoles } from "../../../src/core/cruise/withHoles";

const at = (east: number, north: number): MapPoint => ({ east: feet(east), north: feet(north) });
const box = (west: number, south: number, wide: number, deep = wide): Outline => [
  at(west, south),
  at(west + wide, south),
  at(west + wide, south + deep),
  at(west, south + deep),
];
const pairs = (ring: Outline) => ring.map(({ east, north }): [number, number] => [east, north]);

/** The library d3-polygon, asked of each ring by itself, so that it knows nothing of how they are joined. */
const areaOf = (ring: Outline) => Math.abs(polygonArea(pairs(ring)));
const holds = (outer: Outline, holes: readonly Outline[], { east, north }: MapPoint) =>
  polygonContains(pairs(outer), [east, north]) && !holes.some((hole) => polygonContains(pairs(hole), [east, north]));

/** A star of corners about a middle, in order around it: never crossing itself. */
const star = (east: number, north: number, reach: readonly number[]): MapPoint[] =>
  reach.map((far, spoke) => {
    const turn = (2 * Math.PI * spoke) / reach.length;
    return at(east + far * Math.cos(turn), north + far * Math.sin(turn));
  });

describe("an outline with holes", () => {
  it("of ten acres is without the acre of its pond, and no point of the grid falls into it", () => {
    const pond = box(200, 200, Math.sqrt(43_560));
    const joined = withHoles(box(0, 0, 660), [pond]);
    expect(outlineAcres(joined)).toBeCloseTo(9, 9);
    const points = gridInOutline(joined, { spacing: feet(40), seed: 3 });
    expect(points.filter((point) => isInside(pond, point))).toEqual([]);
    const all = gridInOutline(box(0, 0, 660), { spacing: feet(40), seed: 3 });
    expect(points).toHaveLength(all.filter((point) => !isInside(pond, point)).length);
  });

  it("is what the library makes of its rings, for any stars in a star, however each goes round", () => {
    const spokes = (low: number, high: number) =>
      fc.array(fc.integer({ min: low, max: high }), { minLength: 3, maxLength: 12 });
    const inner = fc.record({ reach: spokes(20, 95), back: fc.boolean(), place: fc.nat(8) });
    fc.assert(
      fc.property(
        fc.array(fc.integer({ min: 560, max: 900 }), { minLength: 8, maxLength: 24 }),
        fc.boolean(),
        fc.uniqueArray(inner, { minLength: 1, maxLength: 5, selector: ({ place }) => place }),
        fc.array(fc.tuple(fc.integer({ min: -900, max: 900 }), fc.integer({ min: -900, max: 900 })), { maxLength: 60 }),
        (reach, back, inside, asked) => {
          const outer = back ? star(0, 0, reach).reverse() : star(0, 0, reach);
          const holes = inside.map(({ reach: own, back: turned, place }) => {
            const hole = star(200 * ((place % 3) - 1), 200 * (Math.floor(place / 3) - 1), own);
            return turned ? hole.reverse() : hole;
          });
          const joined = withHoles(outer, holes);
          requireOutline(joined);
          const area = areaOf(outer) - holes.reduce((sum, hole) => sum + areaOf(hole), 0);
          expect(outlineAcres(joined) * 43_560).toBeCloseTo(area, 4);
          for (const [east, north] of asked) {
            // A quarter of a foot aside, since a corner or a side may fall either way
            const point = at(east + 0.253, north + 0.127);
            expect(isInside(joined, point)).toBe(holds(outer, holes, point));
          }
        },
      ),
    );
  });

  it.each<[string, readonly Outline[], string]>([
    ["reaches beyond it", [box(600, 100, 100)], "A hole should lie inside the outline."],
    ["lies outside", [box(900, 100, 100)], "A hole should lie inside the outline."],
    ["crosses another", [box(100, 100, 100), box(150, 150, 100)], "Two holes of the outline cross each other"],
    ["lies in another", [box(100, 100, 200), box(150, 150, 50)], "Two holes of the outline cross each other"],
    ["is a line", [[at(100, 100), at(200, 200)]], "A hole needs 3 corners or more. You have 2."],
  ])("is refused where a hole %s", (_, holes, says) => {
    expect(() => withHoles(box(0, 0, 660), holes)).toThrow(says);
  });
});
