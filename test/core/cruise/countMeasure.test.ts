import quantile from "@stdlib/stats-base-dists-t-quantile";
import { describe, expect, it } from "vitest";
import { percent, squareFeet } from "../../../src/core/basis/units";
import { classTable } from "../../../src/core/cruise/classTable";
import {
  combinedError,
  countMeasure,
  wholePointsMeasured,
  type MeasuredTree,
} from "../../../src/core/cruise/countMeasure";
import { estimate } from "../../../src/core/cruise/estimate";
import { answersOf } from "../../support/answers";
import { pointCruise } from "../../support/cruises";
import { expectAsPrinted } from "../../support/expectAsPrinted";
import { numberIn, published } from "../../support/published";

const at95 = percent(95);
const tree = (plot: number, volume: number, basalArea = 1, baf = 10, count = 1): MeasuredTree => ({
  plot,
  count,
  baf,
  basalArea: squareFeet(basalArea),
  volume,
});

describe("two errors combined", () => {
  const table = published("cruise/count-measure-errors.csv");
  it.each(table.rows)("$basal area % and $ratio % are $combined %, as worked out apart", (row) => {
    const [one, other] = [numberIn(row, "basal area") / 100, numberIn(row, "ratio") / 100];
    expectAsPrinted(100 * combinedError(one, other), numberIn(row, "combined"), numberIn(row, "printed to"));
    if (row["without product term"])
      expectAsPrinted(100 * Math.hypot(one, other), numberIn(row, "without product term"), numberIn(row, "printed to"));
  });

  it("begin with the error of the counts of Priest River", () => {
    const areas = published("cruise/priest-river-points.csv").rows.map((row) => numberIn(row, "basal area"));
    const { margin, value } = estimate(areas, at95);
    const { printed, printedTo } = answersOf("cruise/priest-river-answers.csv")("basal area standard error percent");
    expectAsPrinted((100 * margin) / quantile(0.975, 179) / value, printed, printedTo);
  });
});

describe("counted and measured points, worked by hand", () => {
  // Counts 4, 6, 8 at a factor of 10: mean 60, s = 20, e = 20 / sqrt(3) / 60.
  // Ratios 100, 120, 140, 160: mean 130, s = sqrt(2000 / 3), e = s / 2 / 130.
  const trees = [tree(0, 100), tree(1, 240, 2), tree(1, 70, 0.5), tree(2, 160)];
  const found = countMeasure([40, 60, 80], trees, at95);
  const [e, r] = [20 / Math.sqrt(3) / 60, Math.sqrt(2000 / 3) / 2 / 130];

  it("multiply", () => {
    expect(found.basalArea.value).toBeCloseTo(60, 10);
    expect(found.ratio.value).toBeCloseTo(130, 10);
    expect(found.volume.value).toBeCloseTo(7800, 9);
  });

  it("have each its margin, and the product one with and without the small term", () => {
    expect(found.basalArea.margin).toBeCloseTo(quantile(0.975, 2) * 60 * e, 4);
    expect(found.ratio.margin).toBeCloseTo(quantile(0.975, 3) * 130 * r, 4);
    const free = (e ** 2 + r ** 2) ** 2 / (e ** 4 / 2 + r ** 4 / 3);
    const t = quantile(0.975, free);
    expect(found.volume.margin).toBeCloseTo(t * 7800 * Math.sqrt(e ** 2 + r ** 2 - e ** 2 * r ** 2), 1);
    expect(found.volumeByPlainSum.margin).toBeCloseTo(t * 7800 * Math.sqrt(e ** 2 + r ** 2), 1);
    expect(found.volume.margin).toBeLessThan(found.volumeByPlainSum.margin);
  });

  it("weigh a tree by the basal area it stands for, where factors differ or a tree counts twice", () => {
    const mixed = [tree(0, 100, 1, 10), tree(1, 200, 1, 30)];
    expect(countMeasure([40, 60, 80], mixed, at95).ratio.value).toBeCloseTo(175, 9);
    const doubled = [tree(0, 100), tree(1, 200), tree(1, 200)];
    const twice = [tree(0, 100), tree(1, 200, 1, 10, 2)];
    expect(countMeasure([40, 60, 80], twice, at95).ratio.value).toBeCloseTo(
      countMeasure([40, 60, 80], doubled, at95).ratio.value,
      9,
    );
  });

  it("say what they lack", () => {
    expect(() => countMeasure([40], trees, at95)).toThrow("at least 2 plots. You have 1.");
    expect(() => countMeasure([40, 60], [tree(0, 100)], at95)).toThrow("at least 2 measured trees. You have 1.");
    expect(() => countMeasure([0, 0], trees, at95)).toThrow("Nothing to work on yet.");
  });
});

describe("whole points measured", () => {
  it.each<[string, number[], MeasuredTree[], boolean]>([
    ["every tree of point 1", [2, 6], [tree(0, 1), tree(0, 1)], true],
    ["some trees of each point", [2, 6], [tree(0, 1), tree(1, 1)], false],
    ["all of point 1, one of point 2", [2, 6], [tree(0, 1), tree(0, 1), tree(1, 1)], false],
    ["points of a single tree", [1, 1], [tree(0, 1), tree(1, 1)], false],
    ["a doubled tree and another", [3, 5], [tree(0, 1, 1, 10, 2), tree(0, 1)], true],
  ])("%s", (_, counts, trees, whole) => expect(wholePointsMeasured(counts, trees)).toBe(whole));
});

describe("a class of the stand table of Marshall and Iles", () => {
  // Newsletter article, john-bell-associates.com: factor 20, 12 measured points, 14 trees of the class of 17 in,
  // printed basal area of such a tree 1.5763 ft2; 123 ft2/ac on measured points, 132 on all. The answers were an image:
  // 14.803 and 15.886 were worked out apart.
  const { amounts } = classTable(pointCruise(20, 12, [{ plot: 0, dbh: 17, count: 14 }]), [0], 1, 2, "trees");

  it("has the trees that measured points give, and those that all points give", () => {
    const trees = amounts[0]?.[0] ?? NaN;
    expectAsPrinted(trees, 14.803, 0.001);
    expectAsPrinted((trees * 132) / 123, 15.886, 0.001);
    expectAsPrinted((14 * 20) / 12 / trees, 1.5763, 0.0001);
  });
});
