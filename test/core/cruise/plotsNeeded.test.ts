import quantile from "@stdlib/stats-base-dists-t-quantile";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { InvalidInput } from "../../../src/core/basis/problem";
import { percent } from "../../../src/core/basis/units";
import { morePlots } from "../../../src/core/cruise/morePlots";
import { plotsNeeded } from "../../../src/core/cruise/plotsNeeded";
import { numberIn, published } from "../../support/published";

const needed = (variation: number, error: number, confidence = 95, population?: number) =>
  plotsNeeded(percent(variation), percent(error), percent(confidence), population);

describe("plots needed", () => {
  const table = published("cruise/plots-needed.csv");
  it.each(table.rows)("$variation % between plots, $error % wanted at $confidence %, of $population: $plots", (row) => {
    const population = row.population ? numberIn(row, "population") : undefined;
    expect(needed(numberIn(row, "variation"), numberIn(row, "error"), numberIn(row, "confidence"), population)).toBe(
      numberIn(row, "plots"),
    );
  });

  it("is the first number that is enough with its own t, as a plain count upwards finds it", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 150 }), fc.integer({ min: 5, max: 50 }), (variation, error) => {
        let plots = 2;
        while (plots < ((quantile(0.975, plots - 1) * variation) / error) ** 2 - 1e-6) plots += 1;
        expect(needed(variation, error)).toBe(plots);
      }),
      { numRuns: 200 },
    );
  });

  it("is what trial and error from t = 2 ends at, the larger where it flips between two", () => {
    for (const [variation, error] of [
      [60, 20],
      [45, 15],
      [80, 20],
      [33, 10],
    ] as const) {
      const seen: number[] = [];
      let next = Math.ceil(((2 * variation) / error) ** 2);
      while (!seen.includes(next)) {
        seen.push(next);
        next = Math.ceil(((quantile(0.975, next - 1) * variation) / error) ** 2);
      }
      expect(needed(variation, error)).toBe(Math.max(...seen.slice(seen.indexOf(next))));
    }
  });

  it("never asks for more plots than cover the tract, nor for fewer than two", () => {
    expect(needed(300, 1, 95, 50)).toBe(50);
    expect(needed(300, 5, 95, 2)).toBe(2);
    expect(needed(1, 50)).toBe(2);
    expect(needed(0, 10)).toBe(2);
  });

  it("answers at once where plots differ wildly", () => {
    expect(needed(1000, 1, 99.9)).toBeGreaterThan(1e7);
  });

  it("refuses what makes no sense", () => {
    expect(() => needed(50, 0)).toThrow("Margin of error should be above 0 %. You have 0.");
    expect(() => needed(-5, 10)).toThrow(InvalidInput);
    expect(() => needed(50, 10, 95, 1)).toThrow(
      "The number of plots that cover the tract should be 2 or more. You have 1.",
    );
    expect(() => needed(50, 10, 0.95)).toThrow(InvalidInput);
  });
});

describe("more plots", () => {
  it("is what is needed less what is there", () => {
    const plots = [60, 100, 140, 80, 120];
    // Mean 100, s = sqrt(4000 / 4) = 31.6228
    expect(morePlots(plots, percent(15), percent(95))).toBe(needed(31.622776601683793, 15) - 5);
  });

  it("is none once there are enough", () => {
    expect(morePlots([100, 101, 99, 100, 100], percent(20), percent(95))).toBe(0);
  });

  it("needs plots that differ about something", () => {
    expect(() => morePlots([0, 0, 0], percent(10), percent(95))).toThrow("Nothing to work on yet.");
    expect(() => morePlots([5], percent(10), percent(95))).toThrow("You have 1.");
  });
});
