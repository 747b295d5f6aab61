import quantile from "@stdlib/stats-base-dists-t-quantile";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { OutOfRange } from "../../../src/core/basis/problem";
import { mean, sampleVariance } from "../../../src/core/basis/statistics";
import { percent } from "../../../src/core/basis/units";
import { estimate } from "../../../src/core/cruise/estimate";
import { answersOf } from "../../support/answers";
import { expectAsPrinted } from "../../support/expectAsPrinted";
import { numberIn, published } from "../../support/published";

const at95 = percent(95);

describe("Freese's simple random sample of 20 units", () => {
  const values = published("cruise/freese-simple-random-sample.csv").rows.map((row) => numberIn(row, "value"));
  const answer = answersOf("cruise/freese-answers.csv");
  const check = (quantity: string, ours: number) =>
    expectAsPrinted(ours, answer(quantity).printed, answer(quantity).printedTo);

  it("has the printed mean and variance", () => {
    check("sum", 20 * mean(values));
    check("mean", estimate(values, at95).value);
    check("variance", sampleVariance(values));
  });

  it("has the printed standard error once the finite population correction, which we leave out, is put back", () => {
    const standardError = estimate(values, at95).margin / quantile(0.975, 19);
    check("standard error with correction", standardError * Math.sqrt(1 - 20 / 100));
  });

  it("has the limits that t of 19 degrees of freedom gives, worked out apart", () => {
    const { low, high } = estimate(values, at95);
    // Without the correction: 10.7 -/+ 2.093024 x 0.821103
    expectAsPrinted(low, 10.7 - 2.093024 * 0.821103, 0.00001);
    expectAsPrinted(high, 10.7 + 2.093024 * 0.821103, 0.00001);
    // With it: 9.16285 to 12.23715, as the reference computation has them
    const corrected = (high - 10.7) * Math.sqrt(0.8);
    expectAsPrinted(10.7 - corrected, 9.16285, 0.00001);
    expectAsPrinted(10.7 + corrected, 12.23715, 0.00001);
  });
});

describe("the points of Priest River", () => {
  const { rows } = published("cruise/priest-river-points.csv");
  const answer = answersOf("cruise/priest-river-answers.csv");
  const column = (name: string) => rows.map((row) => numberIn(row, name));
  const check = (quantity: string, ours: number | undefined) =>
    expectAsPrinted(ours ?? NaN, answer(quantity).printed, answer(quantity).printedTo);

  it("are 180, 15 of them without trees", () => {
    check("points", rows.length);
    check("empty points", column("trees").filter((one) => one === 0).length);
  });

  it("have the means and margins that were worked out apart", () => {
    const basalArea = estimate(column("basal area"), at95);
    check("basal area", basalArea.value);
    check("basal area margin percent", basalArea.marginPercent);
    check("trees", estimate(column("trees"), at95).value);
    const volume = estimate(column("volume"), at95);
    check("volume", volume.value);
    check("volume margin percent", volume.marginPercent);
  });

  it("would be 9.1 percent too high if the empty ones were dropped", () => {
    const volume = column("volume");
    const dropped = mean(volume.filter((one) => one > 0));
    check("volume without empty points", dropped);
    expectAsPrinted(100 * (dropped / mean(volume) - 1), 9.1, 0.1);
  });
});

describe("a margin of error", () => {
  const plots = fc.array(fc.double({ min: 0, max: 1e5, noNaN: true }), { minLength: 2, maxLength: 60 });

  it("scales with the unit and does not mind the order", () => {
    fc.assert(
      fc.property(plots, fc.double({ min: 0.01, max: 100, noNaN: true }), (values, factor) => {
        const one = estimate(values, at95);
        const scaled = estimate(
          values.map((value) => value * factor),
          at95,
        );
        const turned = estimate([...values].reverse(), at95);
        const near = (ours: number, wanted: number) =>
          expect(Math.abs(ours - wanted)).toBeLessThanOrEqual(1e-9 * (1 + Math.abs(wanted)));
        near(scaled.value, one.value * factor);
        near(scaled.margin, one.margin * factor);
        near(turned.value, one.value);
        near(turned.margin, one.margin);
      }),
    );
  });

  it("grows with the confidence and lies evenly about the mean", () => {
    fc.assert(
      fc.property(plots, (values) => {
        const { value, margin, low, high } = estimate(values, at95);
        expect(estimate(values, percent(99)).margin).toBeGreaterThanOrEqual(margin);
        expect(low).toBe(value - margin);
        expect(high).toBe(value + margin);
      }),
    );
  });

  it("may reach below 0 and is shown as it is", () => {
    expect(estimate([0, 0, 30], at95).low).toBeLessThan(0);
  });

  it("is no percent of nothing", () => {
    expect(estimate([0, 0, 0], at95)).toMatchObject({ value: 0, margin: 0, marginPercent: undefined });
  });

  it.each([[[]], [[12]]])("needs two plots: %j", (values) => {
    expect(() => estimate(values, at95)).toThrow(OutOfRange);
    expect(() => estimate(values, at95)).toThrow(
      `A margin of error needs at least 2 plots. You have ${values.length}.`,
    );
  });
});
