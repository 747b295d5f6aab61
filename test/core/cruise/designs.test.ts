import quantile from "@stdlib/stats-base-dists-t-quantile";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { weightedMean } from "../../../src/core/basis/statistics";
import { acres, percent, squareFeetPerAcre } from "../../../src/core/basis/units";
import { classTable } from "../../../src/core/cruise/classTable";
import type { Cruise } from "../../../src/core/cruise/cruise";
import { estimate } from "../../../src/core/cruise/estimate";
import { fixedPlots } from "../../../src/core/cruise/methods/fixedPlots";
import { fullTally } from "../../../src/core/cruise/methods/fullTally";
import { strips } from "../../../src/core/cruise/methods/strips";
import { estimateBy } from "../../../src/core/cruise/plotDesign";
import { partTotals, plotTotals } from "../../../src/core/cruise/plotTotals";
import { sizeByDiameter, sizePerPlot } from "../../../src/core/cruise/plotSizes";
import { quadraticMeanDiameterOf } from "../../../src/core/cruise/quadraticMeanDiameter";
import { plotCruise, pointCruise } from "../../support/cruises";
import { numberIn } from "../../support/published";
import { surveyAnswer, surveySamples } from "../../support/surveyAnswers";

const at95 = percent(95);

describe("a basal area factor of its own at each point", () => {
  const lines = [0, 0, 0, 1, 1, 2].map((plot) => ({ plot, dbh: 14 }));

  it("gives a half sweep twice the basal area of a tree, a quarter sweep four times, and each is one point", () => {
    const cruise: Cruise = {
      ...pointCruise(10, 3, lines),
      size: sizePerPlot([10, 20, 40]),
    };
    const { basalArea, design } = plotTotals(cruise);
    // 3 trees of 10, 2 of 20 and 1 of 40 square feet: a mean of 110/3 over 3 points
    for (const [point, area] of [30, 40, 40].entries()) expect(basalArea[point]).toBeCloseTo(area, 9);
    expect(design.weight).toBeUndefined();
    expect(estimate(basalArea, at95).value).toBeCloseTo(110 / 3, 9);
  });

  it("is one factor where all are alike", () => {
    const one = plotTotals(pointCruise(10, 3, lines));
    const each = plotTotals({
      ...pointCruise(10, 3, lines),
      size: sizePerPlot([10, 10, 10]),
    });
    expect({ ...each, design: one.design }).toEqual(one);
  });
});

describe("nested plots", () => {
  const nested = sizeByDiameter([
    { leastDbh: 10, size: acres(0.1) },
    { leastDbh: 0, size: acres(0.01) },
  ]);

  it("expand each tree by its own plot, a tree of just the breakpoint by the large one", () => {
    const lines = [4, 9.9, 10, 18].map((dbh) => ({ plot: 0, dbh }));
    const { trees } = plotTotals({ ...plotCruise(1, 1, lines), size: nested });
    expect(trees[0]).toBeCloseTo(100 + 100 + 10 + 10, 9);
  });

  it("refuse a tree that is too thin for any of them", () => {
    const large = sizeByDiameter([{ leastDbh: 5, size: acres(0.1) }]);
    expect(large.leastDbh).toBe(5);
    expect(() => plotTotals({ ...plotCruise(1, 1, [{ plot: 0, dbh: 4 }]), size: large })).toThrow(
      "No plot of yours takes in a tree of 4 in.",
    );
  });

  it("are no strips: those weigh by one area each", () => {
    expect(() => plotTotals({ ...plotCruise(1, 1, []), method: strips, size: nested })).toThrow(
      "Strip size cannot go by the diameter of the tree.",
    );
  });
});

const stripCruise = (sizes: readonly number[], lines: Parameters<typeof plotCruise>[2]): Cruise => ({
  ...plotCruise(1, sizes.length, lines),
  method: strips,
  size: sizePerPlot(sizes),
});

describe("strips", () => {
  it.each(surveySamples("cruise/survey-strips.csv"))("sample %s agrees with the package survey", (sample, rows) => {
    const lines = rows.map((row, plot) => ({
      plot,
      dbh: 12,
      count: numberIn(row, "trees"),
    }));
    const { trees, design } = plotTotals(
      stripCruise(
        rows.map((row) => numberIn(row, "acres")),
        lines,
      ),
    );
    const { value, margin, low, high } = estimateBy(design, trees, at95);
    const theirs = surveyAnswer("strips", sample);
    expect(value / theirs("mean")).toBeCloseTo(1, 8);
    expect(margin / quantile(0.975, rows.length - 1) / theirs("standard error")).toBeCloseTo(1, 7);
    expect(low / theirs("low")).toBeCloseTo(1, 7);
    expect(high / theirs("high")).toBeCloseTo(1, 7);
  });

  it("hold all that was tallied over all the acres walked, in classes and species too", () => {
    const line = fc.record({
      plot: fc.integer({ min: 0, max: 2 }),
      dbh: fc.double({ min: 1, max: 40, noNaN: true }),
      volume: fc.integer({ min: 0, max: 900 }),
    });
    fc.assert(
      fc.property(fc.array(line, { minLength: 1, maxLength: 30 }), (lines) => {
        const cruise = stripCruise([1.2, 0.5, 2.3], lines);
        const { trees, volume = [], design } = plotTotals(cruise);
        const { weight } = design;
        expect(weightedMean(trees, weight)).toBeCloseTo(lines.length / 4, 9);
        const all = lines.reduce((sum, one) => sum + one.volume, 0) / 4;
        expect(weightedMean(volume, weight)).toBeCloseTo(all, 6);
        const kinds = lines.map((_, at) => at % 3);
        const { amounts } = classTable(cruise, kinds, 3, 2, "volume");
        expect(amounts.flat().reduce((sum, one) => sum + one, 0)).toBeCloseTo(all, 6);
        const parts = partTotals(cruise, kinds, 3).map((part) => weightedMean(part.trees, weight));
        expect(parts.reduce((sum, one) => sum + one, 0)).toBeCloseTo(lines.length / 4, 9);
      }),
    );
  });

  it("of one size are plots", () => {
    const lines = [0, 0, 1, 2].map((plot) => ({ plot, dbh: 10 + plot }));
    const strip = plotTotals(stripCruise([0.5, 0.5, 0.5], lines));
    const plain = plotTotals(plotCruise(0.5, 3, lines));
    const one = estimateBy(strip.design, strip.trees, at95);
    expect(one.value).toBeCloseTo(estimate(plain.trees, at95).value, 9);
    expect(one.margin).toBeCloseTo(estimate(plain.trees, at95).margin, 9);
    expect(quadraticMeanDiameterOf(strip)).toBeCloseTo(quadraticMeanDiameterOf(plain) ?? NaN, 9);
  });
});

it("a tally of every tree is the tally over the acres, and knows that it has no sampling error", () => {
  const lines = Array.from({ length: 12 }, (_, at) => ({
    plot: at % 2,
    dbh: 12,
  }));
  const cruise: Cruise = {
    ...plotCruise(1, 2, lines),
    method: fullTally,
    size: sizePerPlot([2, 4]),
  };
  const { trees, design } = plotTotals(cruise);
  expect([...trees]).toEqual([3, 1.5]);
  expect(weightedMean(trees, design.weight)).toBe(2);
  expect(fullTally.complete).toBe(true);
  expect([fixedPlots, strips].some((method) => method.complete)).toBe(false);
});

it("a size is asked for by every method", () => {
  expect(() => strips.treesPerAcre(12 as never, acres(0))).toThrow("Strip size should be above 0 ac. You have 0.");
  expect(() => fullTally.treesPerAcre(12 as never, acres(NaN))).toThrow("Tract size needs a number in ac");
  expect(() => fullTally.treesPerAcre(0 as never, squareFeetPerAcre(10))).toThrow("DBH should be above 0 in.");
});
