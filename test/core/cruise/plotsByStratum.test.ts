import quantile from "@stdlib/stats-base-dists-t-quantile";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { chosen } from "../../../src/core/basis/choices";
import { acres, percent } from "../../../src/core/basis/units";
import { largestRemainders } from "../../../src/core/cruise/largestRemainders";
import {
  allocations,
  best,
  byArea,
  plotsByStratum,
  weightedVariation,
  type PlannedStratum,
} from "../../../src/core/cruise/plotsByStratum";
import { plotsNeeded } from "../../../src/core/cruise/plotsNeeded";
import { numberIn, published, type PublishedRow } from "../../support/published";
import { groupedBy } from "../../support/surveyAnswers";
import { expectAsPrinted } from "../../support/expectAsPrinted";

const planned = (row: PublishedRow): PlannedStratum => ({
  acres: acres(numberIn(row, "acres")),
  mean: numberIn(row, "mean"),
  variation: percent(numberIn(row, "cv")),
});

describe("worked allocations", () => {
  const examples = groupedBy(published("cruise/allocations.csv").rows, "example");
  it.each(examples.map((rows) => [rows[0]?.where, rows] as const))("%s", (_, rows) => {
    const allocation = chosen("Allocation", rows[0]?.allocation, allocations);
    const parts = plotsByStratum(rows.map(planned), numberIn(rows[0] ?? {}, "total"), allocation);
    expect(parts).toEqual(rows.map((row) => numberIn(row, "plots")));
  });

  it("weigh the handout's strata to 48.5 % by acres, as it prints, and to 56.983 % by volume, as it says", () => {
    expectAsPrinted(weightedVariation((examples[0] ?? []).map(planned)), 48.5, 0.1);
    expectAsPrinted(weightedVariation((examples[2] ?? []).map(planned)), 56.983, 0.001);
  });
});

/** The confidence at which t of so many degrees of freedom is just this. */
function confidenceWith(t: number, free: number) {
  let [low, high] = [50, 99.9];
  for (let i = 0; i < 60; i += 1) {
    const middle = (low + high) / 2;
    if (quantile(0.5 + middle / 200, free) < t) low = middle;
    else high = middle;
  }
  return percent((low + high) / 2);
}

describe("worked sample sizes, each with its own t", () => {
  it.each(published("cruise/sample-sizes.csv").rows)(
    "$variation % between plots, t $t: $plots, as in $where",
    (row) => {
      const plots = numberIn(row, "plots");
      const population = row.population ? numberIn(row, "population") : undefined;
      const confidence = confidenceWith(numberIn(row, "t"), plots - 1);
      const [variation, error] = [percent(numberIn(row, "variation")), percent(numberIn(row, "error"))];
      expect(plotsNeeded(variation, error, confidence, population)).toBe(plots);
    },
  );
});

describe("plots by stratum", () => {
  const stratum = fc.record({
    acres: fc.integer({ min: 1, max: 90 }).map(acres),
    mean: fc.integer({ min: 0, max: 90 }),
    variation: fc.integer({ min: 0, max: 150 }).map(percent),
  });

  it("add up, with 2 or more in each", () => {
    fc.assert(
      fc.property(
        fc.array(stratum, { minLength: 1, maxLength: 7 }),
        fc.integer({ min: 14, max: 200 }),
        (strata, plots) => {
          for (const allocation of allocations) {
            if (!strata.some((one) => allocation.weight(one) > 0)) continue;
            const parts = plotsByStratum(strata, plots, allocation);
            expect(parts.reduce((sum, one) => sum + one, 0)).toBe(plots);
            expect(Math.min(...parts)).toBeGreaterThanOrEqual(2);
          }
        },
      ),
    );
  });

  it("say what they lack", () => {
    const one = { acres: acres(10), mean: 5, variation: percent(50) };
    expect(() => plotsByStratum([one, one], 3, best)).toThrow(
      "Every stratum needs 2 plots: 4 or more for 2 strata. You have 3.",
    );
    expect(() => plotsByStratum([one], 4.5, best)).toThrow("Plots should be a whole number. You have 4.5.");
    expect(() => plotsByStratum([{ ...one, mean: 0 }], 4, best)).toThrow("Nothing to work on yet.");
    expect(plotsByStratum([{ ...one, mean: 0 }], 4, byArea)).toEqual([4]);
  });
});

it("largest remainders give the odd ones to the largest, and the first of equals", () => {
  expect(largestRemainders(10, [1, 1, 1])).toEqual([4, 3, 3]);
  expect(largestRemainders(7, [50, 30, 20])).toEqual([4, 2, 1]);
  expect(largestRemainders(3, [0, 5])).toEqual([0, 3]);
});
