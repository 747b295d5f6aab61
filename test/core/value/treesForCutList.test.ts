import { describe, expect, it } from "vitest";
import { acres, inches, percent, squareFeetPerAcre } from "../../../src/core/basis/units";
import { pointSample } from "../../../src/core/cruise/methods/pointSample";
import { sameSize } from "../../../src/core/cruise/plotSizes";
import { treesForCutList, type StandingOrder } from "../../../src/core/value/treesForCutList";
import { finished, newProgram, piece } from "../../support/cutLists";

/** Points of one kind of tree each, all 16 in and two logs: so many at each point. */
const stand = (counts: readonly number[], dbh = 16): StandingOrder => ({
  cruise: {
    method: pointSample,
    size: sameSize(squareFeetPerAcre(10)),
    plots: counts.length,
    plot: counts.map((_, i) => i),
    dbh: counts.map(() => dbh),
    count: counts,
  },
  logs: counts.map(() => 2),
  formClass: percent(78),
  acres: acres(10),
  confidence: percent(95),
  classWidth: 2,
  sawing: { pieces: [piece(1, 6, 16)], kerf: inches(0.125), mill: {} },
  counts: [100],
});

describe("trees that a cut list takes", () => {
  it("are the list over what one gives, where all trees are alike: then no margin comes from the sample", () => {
    const one = finished(treesForCutList(stand([3, 5, 4]), newProgram));
    const twice = finished(treesForCutList({ ...stand([3, 5, 4]), counts: [200] }, newProgram));
    expect(one.trees.margin).toBeCloseTo(0, 9);
    expect(twice.trees.value).toBeCloseTo(2 * one.trees.value, 6);
    expect(one.classes).toHaveLength(1);
    expect(one.classes[0]).toMatchObject({ dbh: 16 });
    expect(one.classes[0]?.takes).toBeCloseTo(one.trees.value, 9);
    // 4 trees of 16 in on a point on average: 4 x 10 / (pi 16^2 / 576) = 28.65 trees an acre, 286.5 on 10 acres.
    expect(one.standing?.value).toBeCloseTo((40 / ((Math.PI * 16 ** 2) / 576)) * 10, 6);
  });

  it("carry the margin of a ratio of means: two points of thick trees, two of thin ones", () => {
    const mixed = stand([4, 4, 4, 4]);
    const cruise = { ...mixed.cruise, dbh: [12, 20, 12, 20] };
    const { trees, classes } = finished(treesForCutList({ ...mixed, cruise }, newProgram));
    expect(trees.margin).toBeGreaterThan(0);
    expect(trees.low).toBeLessThan(trees.value);
    // By trees per acre, thin trees outnumber thick ones as their basal areas do inversely: (20 / 12)^2 to 1.
    const [thin, thick] = classes;
    expect((thin?.takes ?? 0) / (thick?.takes ?? 1)).toBeCloseTo((20 / 12) ** 2, 6);
    expect((thin?.takes ?? 0) + (thick?.takes ?? 0)).toBeCloseTo(trees.value, 9);
  });

  it("leave out of the number what no tree gives, and say so", () => {
    const order = stand([3, 5, 4]);
    const pieces = [piece(1, 6, 16), piece(14, 14, 16)];
    const { never, trees } = finished(
      treesForCutList({ ...order, sawing: { ...order.sawing, pieces }, counts: [100, 1] }, newProgram),
    );
    expect(never).toEqual([1]);
    expect(trees.value).toBeCloseTo(finished(treesForCutList(order, newProgram)).trees.value, 6);
  });

  it("join logs of 16 ft for a beam of 30 ft, and say why when there is nothing to fell or one point only", () => {
    const order = stand([3, 5, 4], 20);
    const pieces = [piece(6, 8, 30)];
    const beam = finished(treesForCutList({ ...order, sawing: { ...order.sawing, pieces }, counts: [1] }, newProgram));
    expect(beam.never).toEqual([]);
    expect(() =>
      finished(treesForCutList({ ...order, cruise: { ...order.cruise, count: [0, 0, 0] } }, newProgram)),
    ).toThrow("No tree that may be felled is in the tally yet.");
    expect(() => finished(treesForCutList(stand([3]), newProgram))).toThrow("at least 2 plots");
  });
});
