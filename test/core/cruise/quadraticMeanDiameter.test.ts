import quantile from "@stdlib/stats-base-dists-t-quantile";
import { describe, expect, it } from "vitest";
import { OutOfRange } from "../../../src/core/basis/problem";
import { mean } from "../../../src/core/basis/statistics";
import { percent } from "../../../src/core/basis/units";
import { evenPlots } from "../../../src/core/cruise/plotDesign";
import { plotTotals, type PlotTotals } from "../../../src/core/cruise/plotTotals";
import {
  estimateQuadraticMeanDiameter,
  quadraticMeanDiameter,
  quadraticMeanDiameterOf,
} from "../../../src/core/cruise/quadraticMeanDiameter";
import { fourPointLines, pointCruise } from "../../support/cruises";
import { numberIn, published } from "../../support/published";

const at95 = percent(95);

const priestRiver = (): PlotTotals => {
  const { rows } = published("cruise/priest-river-points.csv");
  const column = (name: string) => Float64Array.from(rows, (row) => numberIn(row, name));
  return {
    tally: new Float64Array(rows.length),
    trees: column("trees"),
    basalArea: column("basal area"),
    design: evenPlots(rows.length),
  };
};

/** Standard error by leaving out one plot after another: no formula of ours takes part. */
function jackknife({ trees, basalArea }: PlotTotals): number {
  const n = trees.length;
  const without = (left: number) => {
    const rest = (values: Float64Array) => values.filter((_, plot) => plot !== left).reduce((sum, one) => sum + one, 0);
    return Math.sqrt((rest(basalArea) / rest(trees)) * (576 / Math.PI));
  };
  const values = Array.from({ length: n }, (_, left) => without(left));
  const centre = mean(values);
  return Math.sqrt(((n - 1) / n) * values.reduce((sum, value) => sum + (value - centre) ** 2, 0));
}

describe("quadratic mean diameter", () => {
  it("of 10, 14 and 18 in is the root of 620 over 3", () => {
    expect(quadraticMeanDiameter([10, 14, 18], [1, 1, 1])).toBeCloseTo(Math.sqrt(620 / 3), 12);
  });

  it("weighs each diameter by the trees it stands for", () => {
    expect(quadraticMeanDiameter([10, 20], [3, 1])).toBeCloseTo(Math.sqrt(175), 12);
  });

  it("is never below the mean diameter", () => {
    expect(quadraticMeanDiameter([6, 30], [5, 1])).toBeGreaterThan((5 * 6 + 30) / 6);
  });

  it("has nothing to work on without trees", () => {
    expect(() => quadraticMeanDiameter([], [])).toThrow(OutOfRange);
    expect(() => quadraticMeanDiameter([12], [0])).toThrow("Nothing to work on yet.");
    expect(quadraticMeanDiameterOf(plotTotals(pointCruise(10, 3, [])))).toBeUndefined();
    expect(estimateQuadraticMeanDiameter(plotTotals(pointCruise(10, 3, [])), at95)).toBeUndefined();
  });
});

describe("its margin of error", () => {
  it("agrees with the jackknife on the 180 points of Priest River to 2 percent", () => {
    const totals = priestRiver();
    const found = estimateQuadraticMeanDiameter(totals, at95);
    const jackknifed = quantile(0.975, totals.trees.length - 1) * jackknife(totals);
    expect(Math.abs((found?.margin ?? NaN) / jackknifed - 1)).toBeLessThan(0.02);
  });

  it("is of the jackknife's size even on four points, where both are rough", () => {
    const totals = plotTotals(pointCruise(10, 4, fourPointLines));
    const jackknifed = quantile(0.975, 3) * jackknife(totals);
    const ratio = (estimateQuadraticMeanDiameter(totals, at95)?.margin ?? NaN) / jackknifed;
    expect(ratio).toBeGreaterThan(0.6);
    expect(ratio).toBeLessThan(1.4);
  });

  it("is 0 where every tree is alike, however the plots differ in number", () => {
    const tally = [0, 0, 0, 1, 2, 2].map((plot) => ({ plot, dbh: 14 }));
    const found = estimateQuadraticMeanDiameter(plotTotals(pointCruise(10, 4, tally)), at95);
    expect(found?.value).toBeCloseTo(14, 10);
    expect(found?.margin).toBeCloseTo(0, 9);
  });

  it("needs two plots", () => {
    expect(() => estimateQuadraticMeanDiameter(plotTotals(pointCruise(10, 1, [{ plot: 0, dbh: 14 }])), at95)).toThrow(
      OutOfRange,
    );
  });
});
