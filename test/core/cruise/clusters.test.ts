import quantile from "@stdlib/stats-base-dists-t-quantile";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { mean } from "../../../src/core/basis/statistics";
import { percent } from "../../../src/core/basis/units";
import { clusterEstimate } from "../../../src/core/cruise/clusters";
import { estimate } from "../../../src/core/cruise/estimate";
import { answersOf } from "../../support/answers";
import { expectAsPrinted } from "../../support/expectAsPrinted";
import { numberIn, published } from "../../support/published";
import { groupedBy, surveyAnswer, surveySamples } from "../../support/surveyAnswers";

const at95 = percent(95);

it("the 36 clusters of Priest River have the error that was worked out apart", () => {
  const clusters = groupedBy(published("cruise/priest-river-points.csv").rows, "cluster");
  expect(clusters).toHaveLength(36);
  const found = clusterEstimate(
    clusters.map((rows) => rows.map((row) => numberIn(row, "volume"))),
    at95,
  );
  const answer = answersOf("cruise/priest-river-answers.csv");
  const check = (quantity: string, ours = NaN) =>
    expectAsPrinted(ours, answer(quantity).printed, answer(quantity).printedTo);
  check("volume", found.value);
  check("volume standard error by clusters", found.margin / quantile(0.975, 35));
  check("volume margin percent by clusters", found.marginPercent);
});

it.each(surveySamples("cruise/survey-clusters.csv"))("sample %s agrees with the package survey", (sample, rows) => {
  const clusters = groupedBy(rows, "cluster").map((own) => own.map((row) => numberIn(row, "value")));
  const { value, margin, low, high } = clusterEstimate(clusters, at95);
  const theirs = surveyAnswer("clusters", sample);
  expect(value / theirs("mean")).toBeCloseTo(1, 8);
  expect(margin / quantile(0.975, clusters.length - 1) / theirs("standard error")).toBeCloseTo(1, 7);
  expect(low / theirs("low")).toBeCloseTo(1, 7);
  expect(high / theirs("high")).toBeCloseTo(1, 7);
});

describe("groups of plots", () => {
  const value = fc.integer({ min: 1, max: 900 });

  it("of one plot each are plots", () => {
    fc.assert(
      fc.property(fc.array(value, { minLength: 2, maxLength: 20 }), (plots) => {
        const grouped = clusterEstimate(
          plots.map((plot) => [plot]),
          at95,
        );
        const plain = estimate(plots, at95);
        expect(grouped.value).toBeCloseTo(plain.value, 8);
        expect(grouped.margin).toBeCloseTo(plain.margin, 6);
      }),
    );
  });

  it("of one size have the plain error of their means", () => {
    const groups = fc.array(fc.array(value, { minLength: 3, maxLength: 3 }), { minLength: 2, maxLength: 9 });
    fc.assert(
      fc.property(groups, (clusters) => {
        const grouped = clusterEstimate(clusters, at95);
        const means = estimate(clusters.map(mean), at95);
        expect(grouped.value).toBeCloseTo(means.value, 8);
        expect(grouped.margin).toBeCloseTo(means.margin, 6);
      }),
    );
  });

  it("must be two or more", () => {
    expect(() => clusterEstimate([[1, 2, 3]], at95)).toThrow(
      "A margin of error needs at least 2 groups of plots. You have 1.",
    );
  });
});
