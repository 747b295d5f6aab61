import quantile from "@stdlib/stats-base-dists-t-quantile";
import { describe, expect, it } from "vitest";
import { sampleVariance } from "../../../src/core/basis/statistics";
import { percent } from "../../../src/core/basis/units";
import { doubleSampleRatio, doubleSampleRegression } from "../../../src/core/cruise/doubleSampling";
import { estimate } from "../../../src/core/cruise/estimate";
import { answersOf } from "../../support/answers";
import { expectAsPrinted } from "../../support/expectAsPrinted";
import { numberIn, published } from "../../support/published";
import { surveyAnswer, surveySamples } from "../../support/surveyAnswers";

const at95 = percent(95);

describe("volume of Priest River from the basal area of all points and the volume at point 1 of each cluster", () => {
  const { rows } = published("cruise/priest-river-points.csv");
  const measured = rows
    .filter((row) => row.point === "1")
    .map((row) => ({ quick: numberIn(row, "basal area"), full: numberIn(row, "volume") }));
  const answer = answersOf("cruise/priest-river-answers.csv");
  const check = (quantity: string, ours: number) =>
    expectAsPrinted(ours, answer(quantity).printed, answer(quantity).printedTo);

  it("has the ratio, the volume and the error that were worked out apart", () => {
    expect(measured).toHaveLength(36);
    const quick = rows.map((row) => numberIn(row, "basal area"));
    const found = doubleSampleRatio({ quick, measured }, at95);
    check("ratio of point 1 of each cluster", found.slope);
    check("volume by that ratio", found.value);
    check("variance of volume at point 1", sampleVariance(measured.map(({ full }) => full)));
    check("standard error by that ratio", found.standardError);
  });
});

describe.each(surveySamples("cruise/survey-two-phases.csv"))("sample %s of 60 points, 20 measured", (sample, rows) => {
  const quick = rows.map((row) => numberIn(row, "quick"));
  const measured = rows
    .filter((row) => row.measured === "TRUE")
    .map((row) => ({ quick: numberIn(row, "quick"), full: numberIn(row, "full") }));
  const theirs = surveyAnswer("two phases", sample);
  const near = (ours: number, quantity: string) => expect(ours / theirs(quantity)).toBeCloseTo(1, 7);

  it("has the regression mean of the package survey, and slope and error by R's own line", () => {
    const found = doubleSampleRegression({ quick, measured }, at95);
    near(found.value, "regression mean");
    near(found.slope, "slope");
    near(found.standardError, "regression standard error");
  });

  it("has the ratio mean of the package survey, and its error by R's own line through nought", () => {
    const found = doubleSampleRatio({ quick, measured }, at95);
    near(found.value, "ratio mean");
    near(found.standardError, "ratio standard error");
  });

  it("has an error near that of survey, which takes the spread of all points through the line", () => {
    // Survey carries the quick measure's spread on all 60 points into the first term, we that of the 20 measured ones
    // as Brus prints it; on 20 points the two differ by up to a quarter and agree as points become many.
    const ours = doubleSampleRegression({ quick, measured }, at95).standardError;
    expect(ours / theirs("regression error by survey")).toBeGreaterThan(0.75);
    expect(ours / theirs("regression error by survey")).toBeLessThan(1.25);
  });
});

describe.each(published("cruise/two-phase-answers.csv").rows)(
  "$form on sample $sample, $kind, $measured of $plots plots measured",
  (answer) => {
    const rows = published("cruise/two-phase-samples.csv").rows.filter(({ sample }) => sample === answer.sample);
    const quick = rows.map((row) => numberIn(row, "quick"));
    const measured = rows
      .filter(({ full }) => full !== "")
      .map((row) => ({ quick: numberIn(row, "quick"), full: numberIn(row, "full") }));
    const way = answer.form === "Ratio" ? doubleSampleRatio : doubleSampleRegression;

    it("agrees to one in a million with lines of lm and standard errors of the package survey", () => {
      expect(quick).toHaveLength(numberIn(answer, "plots"));
      expect(measured).toHaveLength(numberIn(answer, "measured"));
      const { value, slope, standardError, margin } = way({ quick, measured }, at95);
      const near = (ours: number, quantity: string) =>
        expect(Math.abs(ours / numberIn(answer, quantity) - 1), quantity).toBeLessThan(1e-6);
      near(value, "mean");
      near(slope, "slope");
      near(standardError, "standard error");
      near(margin / quantile(0.975, measured.length - 1), "standard error");
    });
  },
);

describe("double sampling", () => {
  const measured = [
    { quick: 40, full: 4000 },
    { quick: 80, full: 9000 },
    { quick: 60, full: 6500 },
  ];

  it("on every point is the plain mean", () => {
    const full = measured.map((plot) => plot.full);
    const quick = measured.map((plot) => plot.quick);
    for (const way of [doubleSampleRatio, doubleSampleRegression]) {
      const found = way({ quick, measured }, at95);
      expect(found.value).toBeCloseTo(estimate(full, at95).value, 9);
      expect(found.margin).toBeCloseTo(estimate(full, at95).margin, 6);
    }
  });

  it("follows a line exactly where there is one", () => {
    const quick = [...measured.map((plot) => plot.quick), 20, 100, 30];
    // 125 a unit, less 1000: the mean of the quick measure is 55
    expect(doubleSampleRegression({ quick, measured }, at95).value).toBeCloseTo(125 * 55 - 1000, 9);
  });

  it("says what it lacks", () => {
    const quick = [40, 80, 60, 50];
    expect(() => doubleSampleRatio({ quick, measured: measured.slice(0, 1) }, at95)).toThrow(
      "2 measured plots. You have 1.",
    );
    expect(() => doubleSampleRatio({ quick: [1], measured }, at95)).toThrow("Only 1 plots have the quick measure");
    const flat = measured.map(({ full }) => ({ quick: 40, full }));
    expect(() => doubleSampleRegression({ quick, measured: flat }, at95)).toThrow("differ in the quick measure");
    const none = measured.map(({ full }) => ({ quick: 0, full }));
    expect(() => doubleSampleRatio({ quick, measured: none }, at95)).toThrow("Nothing to work on yet.");
  });
});
