import quantile from "@stdlib/stats-base-dists-t-quantile";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { mean, sampleVariance } from "../../../src/core/basis/statistics";
import { acres, percent } from "../../../src/core/basis/units";
import { estimate } from "../../../src/core/cruise/estimate";
import { stratifiedEstimate, type Stratum } from "../../../src/core/cruise/stratified";
import { answersOf } from "../../support/answers";
import { expectAsPrinted } from "../../support/expectAsPrinted";
import { plotsWith } from "../../support/plotsWith";
import { numberIn, published } from "../../support/published";
import { groupedBy, surveyAnswer, surveySamples } from "../../support/surveyAnswers";

const at95 = percent(95);

describe("the stratified example of the AWF lecture notes", () => {
  const { rows } = published("cruise/awf-strata.csv");
  const answer = answersOf("cruise/awf-answers.csv");
  // The example corrects for a limited number of units, which we do not; so the corrected variances are put in.
  const strata = rows.map((row) => {
    const [units, plots] = [numberIn(row, "units"), numberIn(row, "plots")];
    const variance = numberIn(row, "variance of mean") * plots;
    return { name: row.stratum ?? "", acres: acres(units), plots: plotsWith(plots, numberIn(row, "mean"), variance) };
  });

  it("has the printed mean and variance", () => {
    const { combined, standardError } = stratifiedEstimate(strata, at95);
    for (const [quantity, ours] of [
      ["mean", combined.value],
      ["variance", standardError ** 2],
    ] as const)
      expectAsPrinted(ours, answer(quantity).printed, answer(quantity).printedTo);
  });

  it.each(rows)("stratum $stratum has its printed part of the variance, as near as its rounded inputs allow", (row) => {
    const [units, plots] = [numberIn(row, "units"), numberIn(row, "plots")];
    const own = plotsWith(plots, numberIn(row, "mean"), numberIn(row, "variance"));
    const ofMean = (sampleVariance(own) / plots) * numberIn(row, "correction");
    // The variance is printed to 0.01, so half a step of it, over the plots, is what it can be out by
    expectAsPrinted(ofMean, numberIn(row, "variance of mean"), 0.01 / plots);
    expectAsPrinted(
      (units / 30) ** 2 * numberIn(row, "variance of mean"),
      numberIn(row, "its part of the whole"),
      1e-6,
    );
  });
});

describe("Freese's forest of three types, as remembered", () => {
  const strata = published("cruise/freese-strata.csv").rows.map((row) => ({
    name: row.stratum ?? "",
    acres: acres(numberIn(row, "units")),
    plots: plotsWith(numberIn(row, "plots"), numberIn(row, "mean"), numberIn(row, "variance")),
  }));
  const answer = answersOf("cruise/freese-strata-answers.csv");
  const check = (quantity: string, ours = NaN) =>
    expectAsPrinted(ours, answer(quantity).printed, answer(quantity).printedTo);
  const found = stratifiedEstimate(strata, at95);

  it("has the remembered mean, standard error and degrees of freedom", () => {
    check("mean", found.combined.value);
    check("standard error", found.standardError);
    check("degrees of freedom", found.degreesOfFreedom);
  });

  it("has the remembered standard error with correction once the correction is put into the variances", () => {
    const corrected = strata.map((stratum) => {
      const left = 1 - stratum.plots.length / stratum.acres;
      return {
        ...stratum,
        plots: plotsWith(stratum.plots.length, mean(stratum.plots), sampleVariance(stratum.plots) * left),
      };
    });
    check("standard error with correction", stratifiedEstimate(corrected, at95).standardError);
  });
});

it("the points of Priest River have, by their 9 strata, the error that was worked out apart", () => {
  const groups = groupedBy(published("cruise/priest-river-points.csv").rows, "stratum");
  expect(groups).toHaveLength(9);
  const found = stratifiedEstimate(
    groups.map((rows, name) => ({
      name: String(name),
      acres: acres(1),
      plots: rows.map((row) => numberIn(row, "volume")),
    })),
    at95,
  );
  const answer = answersOf("cruise/priest-river-answers.csv");
  const error = answer("volume standard error by strata");
  expectAsPrinted(found.standardError, error.printed, error.printedTo);
  expectAsPrinted(found.degreesOfFreedom ?? NaN, answer("degrees of freedom by strata").printed, 0.01);
});

it.each(surveySamples("cruise/survey-strata.csv"))("sample %s agrees with the package survey", (sample, rows) => {
  const strata = groupedBy(rows, "stratum").map((own, name) => ({
    name: String(name),
    acres: acres(numberIn(own[0] ?? {}, "acres")),
    plots: own.map((row) => numberIn(row, "value")),
  }));
  const { combined, standardError, degreesOfFreedom } = stratifiedEstimate(strata, at95);
  const theirs = surveyAnswer("strata", sample);
  const near = (ours: number, quantity: string) => expect(ours / theirs(quantity)).toBeCloseTo(1, 7);
  near(combined.value, "mean");
  near(standardError, "standard error");
  near(degreesOfFreedom ?? NaN, "degrees of freedom");
  near(combined.low, "low");
  near(combined.high, "high");
  near(combined.value * strata.reduce((sum, one) => sum + one.acres, 0), "total");
});

describe("strata", () => {
  const stratum = (name: string, size: number, plots: readonly number[]): Stratum => ({
    name,
    acres: acres(size),
    plots,
  });
  const plots = fc.array(fc.integer({ min: 0, max: 900 }), { minLength: 2, maxLength: 8 });
  const drawn = fc.array(fc.tuple(fc.integer({ min: 1, max: 90 }), plots), { minLength: 2, maxLength: 5 });

  it("have totals that add up to the total of the tract, and a df between the least and the sum", () => {
    fc.assert(
      fc.property(drawn, (parts) => {
        const strata = parts.map(([size, own], at) => stratum(String(at), size, own));
        const found = stratifiedEstimate(strata, at95);
        const all = parts.reduce((sum, [size]) => sum + size, 0);
        const sum = found.strata.reduce((total, one, at) => total + one.value * (strata[at]?.acres ?? NaN), 0);
        expect(Math.abs(found.combined.value * all - sum)).toBeLessThanOrEqual(1e-9 * (1 + sum));
        if (found.degreesOfFreedom === undefined) return;
        const free = parts.map(([, own]) => own.length - 1);
        expect(found.degreesOfFreedom).toBeGreaterThanOrEqual(Math.min(...free) - 1e-9);
        expect(found.degreesOfFreedom).toBeLessThanOrEqual(free.reduce((total, one) => total + one, 0) + 1e-9);
      }),
    );
  });

  it("of one are the plain mean and margin", () => {
    fc.assert(
      fc.property(plots, (own) => {
        const { combined } = stratifiedEstimate([stratum("a", 12, own)], at95);
        const plain = estimate(own, at95);
        expect(combined.value).toBeCloseTo(plain.value, 9);
        expect(combined.margin).toBeCloseTo(plain.margin, 6);
      }),
    );
  });

  it("by hand: 30 ac of 10, 20 and 10 ac of 40, 60", () => {
    // Mean 3/4 x 15 + 1/4 x 50; v = 9/16 x 50/2 = 14.0625 and 1/16 x 200/2 = 6.25; df = 20.3125^2 / (14.0625^2 + 6.25^2)
    const { combined, degreesOfFreedom } = stratifiedEstimate(
      [stratum("a", 30, [10, 20]), stratum("b", 10, [40, 60])],
      at95,
    );
    expect(combined.value).toBeCloseTo(23.75, 10);
    const free = 20.3125 ** 2 / (14.0625 ** 2 + 6.25 ** 2);
    expect(degreesOfFreedom).toBeCloseTo(free, 10);
    expect(combined.margin).toBeCloseTo(quantile(0.975, free) * Math.sqrt(20.3125), 4);
  });

  it("keep one whose plots are all empty", () => {
    const { strata, combined } = stratifiedEstimate([stratum("a", 10, [0, 0, 0]), stratum("b", 10, [40, 60])], at95);
    expect(strata[0]).toMatchObject({ value: 0, marginPercent: undefined });
    expect(combined.value).toBe(25);
  });

  it("say which one has a single plot", () => {
    expect(() => stratifiedEstimate([stratum("oak", 10, [3, 4]), stratum("swamp", 5, [2])], at95)).toThrow(
      "A margin of error needs at least 2 plots in each stratum. You have 1 in stratum swamp.",
    );
    expect(() => stratifiedEstimate([stratum("oak", 0, [3, 4])], at95)).toThrow(
      "Acres of stratum oak should be above 0.",
    );
    expect(() => stratifiedEstimate([], at95)).toThrow("Nothing to work on yet.");
  });
});
