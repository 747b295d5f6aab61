import { describe, expect, it } from "vitest";
import { weightedMean } from "../../../src/core/basis/statistics";
import { inches } from "../../../src/core/basis/units";
import { designOf } from "../../../src/core/cruise/cruise";
import type { TreesJob, TreesSample } from "../../../src/pane/solver/jobs";
import { sampleOf } from "../../../src/pane/solver/sampleOf";

const plain: TreesSample = {
  sizes: [10, 20, 10],
  nested: [],
  strata: [],
  stratum: ["", "", ""],
  cluster: ["", "", ""],
  population: null,
};
const read = (sample: Partial<TreesSample>, method = "Point") =>
  sampleOf({ method, sample: { ...plain, ...sample } } as TreesJob);
const strata = [
  { name: "Low", acres: 30 },
  { name: "High", acres: 10 },
];

describe("the plots that trees for a list are counted on", () => {
  it("have each its own size, or sizes by the diameter of the tree", () => {
    expect([0, 1, 2].map((plot) => read({}).size.ofTree(plot, 12))).toEqual([10, 20, 10]);
    const nested = [
      { leastDbh: 5, size: 0.05 },
      { leastDbh: 11, size: 0.2 },
    ];
    const { size } = read({ nested }, "Fixed");
    expect([size.ofTree(1, 8), size.ofTree(1, 14)]).toEqual([0.05, 0.2]);
    // With a gauge from 11 in on, a tree of 8 in stands for as many as its fixed plot of 1/20 acre says: 20.
    const mixed = read({ nested: [nested[0] as never, { leastDbh: 11, size: 10 }] }, "Point and fixed");
    expect(mixed.method.treesPerAcre(inches(8), mixed.size.ofTree(0, 8))).toBeCloseTo(20, 9);
    expect(() => read({}, "Point and fixed")).toThrow("two rows of nested plots");
  });

  it("weigh their strata's land, and say which point has none", () => {
    const values = [8, 8, 4];
    const sample = read({ strata, stratum: ["low", "Low", "High"] });
    const drawn = designOf({ ...sample, plot: [], dbh: [], count: [] });
    expect(weightedMean(values, drawn.weight)).toBeCloseTo((30 * 8 + 10 * 4) / 40, 9);
    expect(() => read({ strata, stratum: ["Low", "High", ""] })).toThrow("have no stratum");
    expect(() => read({ strata, stratum: ["Low", "High", "Swamp"] })).toThrow("Stratum Swamp of a point is not in");
    expect(() => read({ stratum: ["Low", "", ""] })).toThrow("the list of strata on Design is empty");
  });

  it("stand in clusters, or cover some of a tract; not both", () => {
    const cluster = ["A", "A", "B"];
    expect(read({ cluster }).design?.errorOf([1, 1, 4]).degreesOfFreedom).toBe(1);
    expect(read({ population: 12 }, "Fixed").design?.errorOf([1, 2, 3]).standardError).toBeCloseTo(
      Math.sqrt((1 / 3) * (1 - 3 / 12)),
      9,
    );
    expect(read({ population: 12 }).design).toBeUndefined();
    expect(() => read({ cluster, strata, stratum: ["Low", "Low", "High"] })).toThrow("Clusters go with plots");
    expect(() => read({ cluster: ["A", "", "B"] })).toThrow("have no cluster");
  });
});
