import { describe, expect, it } from "vitest";
import { acres, inches, percent, squareFeetPerAcre } from "../../../src/core/basis/units";
import { pointSample } from "../../../src/core/cruise/methods/pointSample";
import { fullTally } from "../../../src/core/cruise/methods/fullTally";
import { evenPlots } from "../../../src/core/cruise/plotDesign";
import { sameSize, sizePerPlot } from "../../../src/core/cruise/plotSizes";
import { ratioOfMeans } from "../../../src/core/cruise/ratioOfMeans";
import { stratifiedPlots } from "../../../src/core/cruise/stratifiedPlots";
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

  it("go by the size of each plot, and by the land of each stratum", () => {
    const order = stand([4, 4, 4, 4]);
    const cruise = { ...order.cruise, dbh: [12, 20, 12, 20] };
    const shareOf = (changed: Partial<StandingOrder["cruise"]>) => {
      const { trees, classes } = finished(treesForCutList({ ...order, cruise: { ...cruise, ...changed } }, newProgram));
      return { trees, share: (classes[0]?.takes ?? 0) / (classes[1]?.takes ?? 1) };
    };
    // A half sweep sees half the trees, each for twice as many: the thin ones weigh twice as much.
    const sized = shareOf({ size: sizePerPlot([20, 10, 20, 10]) });
    expect(sized.share).toBeCloseTo(2 * (20 / 12) ** 2, 6);
    // Three quarters of the land lie in the stratum of the thin trees. Inside a stratum all are alike: no margin.
    const strata = [
      { name: "Low", acres: acres(30) },
      { name: "High", acres: acres(10) },
    ];
    const parted = shareOf({ design: stratifiedPlots(strata, { stratum: [0, 1, 0, 1] }) });
    expect(parted.share).toBeCloseTo(3 * (20 / 12) ** 2, 6);
    expect(parted.trees.margin).toBeCloseTo(0, 6);
    const plain = shareOf({});
    expect(shareOf({ design: evenPlots(4, 16) }).trees.margin).toBeCloseTo(plain.trees.margin * Math.sqrt(3 / 4), 6);
  });

  it("have the margin of the ratio of means where plots weigh the same", () => {
    // 20-in trees only at points 2 and 4, of 1 and 3 trees; 12-in trees at the others. With n trees per acre and u of
    // the list on each point, and g what a tree gives, u = g n: the margin follows from g alone.
    const order = stand([4, 1, 5, 3]);
    const dbh = [12, 20, 12, 20];
    const { trees, classes } = finished(treesForCutList({ ...order, cruise: { ...order.cruise, dbh } }, newProgram));
    const alone = (size: number) => finished(treesForCutList(stand([1, 1, 1], size), newProgram)).trees.value;
    const n = dbh.map((d, i) => ([4, 1, 5, 3][i] as number) * (10 / ((Math.PI * d ** 2) / 576)));
    const u = dbh.map((d, i) => (n[i] as number) / alone(d));
    const { value, standardError } = ratioOfMeans(u, n);
    expect(trees.value).toBeCloseTo(1 / value, 6);
    expect(trees.margin).toBeCloseTo((3.182446 * standardError) / value ** 2, 4); // t of 3 degrees, 95 %, printed 3.182
    expect(classes).toHaveLength(2);
  });

  it("leave the margin at 0 where every tree was tallied", () => {
    const order = stand([4, 1, 5]);
    const cruise = { ...order.cruise, method: fullTally, size: sizePerPlot([10, 10, 10]), dbh: [12, 20, 12] };
    const { trees, standing } = finished(treesForCutList({ ...order, cruise, acres: acres(30) }, newProgram));
    expect(trees.margin).toBe(0);
    expect(standing).toMatchObject({ margin: 0 });
    expect(standing?.value).toBeCloseTo(10, 9); // as many as were tallied on the 30 acres
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
