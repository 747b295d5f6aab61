import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { InvalidInput } from "../../../src/core/basis/problem";
import { mean } from "../../../src/core/basis/statistics";
import { inches, percent, squareFeetPerAcre } from "../../../src/core/basis/units";
import { estimate } from "../../../src/core/cruise/estimate";
import { fixedPlots } from "../../../src/core/cruise/methods/fixedPlots";
import { pointSample } from "../../../src/core/cruise/methods/pointSample";
import { plotTotals } from "../../../src/core/cruise/plotTotals";
import { quadraticMeanDiameterOf } from "../../../src/core/cruise/quadraticMeanDiameter";
import { answersOf } from "../../support/answers";
import { fourPointLines, plotCruise, pointCruise, type Line } from "../../support/cruises";
import { expectAsPrinted } from "../../support/expectAsPrinted";
import { numberIn, published } from "../../support/published";

describe("trees per acre that one tree stands for", () => {
  const table = published("cruise/tree-factors.csv");
  it.each(table.rows)("$dbh in at a basal area factor of 10: $trees, as in " + table.source, (row) => {
    const ours = pointSample.treesPerAcre(inches(numberIn(row, "dbh")), squareFeetPerAcre(10));
    const printedTo = row.allowed ? 2 * numberIn(row, "allowed") : table.printedTo;
    expectAsPrinted(ours, numberIn(row, "trees"), printedTo);
  });

  it("is the same basal area for every tree of a point", () => {
    fc.assert(
      fc.property(fc.double({ min: 1, max: 80, noNaN: true }), fc.integer({ min: 1, max: 100 }), (dbh, factor) => {
        const { basalArea } = plotTotals(pointCruise(factor, 1, [{ plot: 0, dbh }]));
        expect(basalArea[0]).toBeCloseTo(factor, 9);
      }),
    );
  });

  it.each([pointSample, fixedPlots])("$title refuses a size or a diameter of nothing", (method) => {
    expect(() => method.treesPerAcre(inches(12), squareFeetPerAcre(0))).toThrow(InvalidInput);
    expect(() => method.treesPerAcre(inches(NaN), squareFeetPerAcre(10))).toThrow(InvalidInput);
  });
});

describe("a plot of one fifth of an acre", () => {
  const table = published("cruise/fixed-plot.csv");
  it.each(table.rows)("one tree of $dbh in, as in " + table.source, (row) => {
    const lines = [{ plot: 0, dbh: numberIn(row, "dbh"), volume: numberIn(row, "volume") }];
    const { trees, basalArea, volume } = plotTotals(plotCruise(0.2, 1, lines));
    expectAsPrinted(trees[0] ?? NaN, numberIn(row, "trees"), 0.1);
    expectAsPrinted((basalArea[0] ?? NaN) / 5, numberIn(row, "basal area"), table.printedTo);
    expect(volume?.[0]).toBe(5 * numberIn(row, "volume"));
  });
});

describe("worked examples", () => {
  const { rows } = published("cruise/per-acre-examples.csv");
  it.each(rows)("$method $size, $plots plots, $trees trees: $value $quantity, as in $where", (row) => {
    const lines: Line[] = [
      {
        plot: 0,
        dbh: numberIn(row, "dbh"),
        count: numberIn(row, "trees"),
        ...(row.volume && { volume: numberIn(row, "volume") }),
      },
    ];
    const cruise = row.method === "Point" ? pointCruise : plotCruise;
    const totals = plotTotals(cruise(numberIn(row, "size"), numberIn(row, "plots"), lines));
    const found = {
      trees: totals.trees,
      "basal area": totals.basalArea,
      volume: totals.volume,
    }[row.quantity ?? ""];
    expectAsPrinted(mean(found ?? []), numberIn(row, "value"), numberIn(row, "printed to"));
  });
});

describe("the cruise of four points", () => {
  const totals = plotTotals(pointCruise(10, 4, fourPointLines));
  const answer = answersOf("cruise/constructed-four-points-answers.csv");
  const check = (quantity: string, ours: number | undefined) =>
    expectAsPrinted(ours ?? NaN, answer(quantity).printed, answer(quantity).printedTo);

  it("has every point, the empty one with nothing", () => {
    for (let point = 0; point < 4; point += 1) check(`trees of point ${point + 1}`, totals.trees[point]);
    expect([...totals.tally]).toEqual([5, 4, 0, 6]);
    for (const [point, basalArea] of [50, 40, 0, 60].entries())
      expect(totals.basalArea[point]).toBeCloseTo(basalArea, 9);
  });

  it("has the means and margins worked out apart", () => {
    const trees = estimate(totals.trees, percent(95));
    check("trees", trees.value);
    check("trees margin percent", trees.marginPercent);
    check("trees low", trees.low);
    check("trees high", trees.high);
    const basalArea = estimate(totals.basalArea, percent(95));
    check("basal area", basalArea.value);
    check("basal area margin percent", basalArea.marginPercent);
    check("quadratic mean diameter", quadraticMeanDiameterOf(totals));
  });
});

describe("totals of plots", () => {
  const line = fc.record({
    plot: fc.integer({ min: 0, max: 6 }),
    dbh: fc.double({ min: 1, max: 80, noNaN: true }),
    volume: fc.integer({ min: 0, max: 900 }),
  });
  const lines = fc.array(line, { minLength: 1, maxLength: 40 });
  const near = (ours: number, wanted: number) =>
    expect(Math.abs(ours - wanted)).toBeLessThanOrEqual(1e-9 * (1 + Math.abs(wanted)));

  it("do not mind the order of the tally", () => {
    fc.assert(
      fc.property(lines, (tally) => {
        const one = plotTotals(pointCruise(10, 7, tally));
        const turned = plotTotals(pointCruise(10, 7, [...tally].reverse()));
        for (let plot = 0; plot < 7; plot += 1) {
          near(turned.trees[plot] ?? NaN, one.trees[plot] ?? NaN);
          near(turned.volume?.[plot] ?? NaN, one.volume?.[plot] ?? NaN);
        }
      }),
    );
  });

  it("fall in the mean by one more empty plot, in proportion", () => {
    fc.assert(
      fc.property(lines, (tally) => {
        const without = mean(plotTotals(plotCruise(0.1, 7, tally)).trees);
        const withOne = mean(plotTotals(plotCruise(0.1, 8, tally)).trees);
        near(withOne, (without * 7) / 8);
      }),
    );
  });

  it("count a doubled tree as two alike and a halved one as half", () => {
    const doubled = plotTotals(pointCruise(10, 2, [{ plot: 1, dbh: 14, count: 2, volume: 100 }]));
    const twice = plotTotals(
      pointCruise(10, 2, [
        { plot: 1, dbh: 14, volume: 100 },
        { plot: 1, dbh: 14, volume: 100 },
      ]),
    );
    expect({ ...doubled, design: twice.design }).toEqual(twice);
    const halved = plotTotals(pointCruise(10, 2, [{ plot: 1, dbh: 14, count: 0.5 }]));
    expect(halved.basalArea[1]).toBeCloseTo(5, 12);
  });

  it("rise with the basal area factor and fall with the plot size", () => {
    const tally = [{ plot: 0, dbh: 14 }];
    near(
      plotTotals(pointCruise(20, 1, tally)).trees[0] ?? NaN,
      2 * (plotTotals(pointCruise(10, 1, tally)).trees[0] ?? NaN),
    );
    near(
      plotTotals(plotCruise(0.1, 1, tally)).trees[0] ?? NaN,
      2 * (plotTotals(plotCruise(0.2, 1, tally)).trees[0] ?? NaN),
    );
  });
});
