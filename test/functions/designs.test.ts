import quantile from "@stdlib/stats-base-dists-t-quantile";
import { describe, expect, it } from "vitest";
import { checkCruise, doubleSample, DoubleWayName, systematicMargin } from "../../src/functions/designs";
import { doubleWays } from "../../src/functions/shell/doubleTable";
import { column, errorOf } from "../support/cells";
import { numberIn } from "../support/published";
import { surveyAnswer, surveySamples } from "../support/surveyAnswers";

it("the menu of ways is their list", () => {
  expect(Object.values(DoubleWayName)).toEqual(doubleWays.map(({ title }) => title));
});

describe("SYSTEMATICMARGIN", () => {
  it("by hand: 10, 14, 12, 20 have differences 4, -2 and 8; 84 over 2 x 4 x 3, with the t of 3", () => {
    expect(systematicMargin(column([10, 14, 12, 20]))).toBeCloseTo(quantile(0.975, 3) * Math.sqrt(84 / 24), 8);
  });
  it("needs two plots", () => {
    expect(errorOf(() => systematicMargin([[3]]))?.message).toContain("at least 2 plots. You have 1.");
    expect(errorOf(() => systematicMargin([[""]]))?.message).toContain("at least 2 plots. You have 0.");
  });
});

describe.each(surveySamples("cruise/survey-two-phases.csv"))("DOUBLESAMPLE, sample %s", (sample, rows) => {
  it("has the means of the package survey and the errors of R's own lines, either way", () => {
    const measured = rows.filter((row) => row.measured === "TRUE");
    const theirs = surveyAnswer("two phases", sample);
    for (const [way, name] of [
      [DoubleWayName.Ratio, "ratio"],
      [DoubleWayName.Regression, "regression"],
    ] as const) {
      const [, line] = doubleSample(
        column(rows.map((row) => numberIn(row, "quick"))),
        column(measured.map((row) => numberIn(row, "quick"))),
        column(measured.map((row) => numberIn(row, "full"))),
        way,
      );
      expect((line?.[0] as number) / theirs(`${name} mean`)).toBeCloseTo(1, 7);
      expect((line?.[1] as number) / quantile(0.975, 19) / theirs(`${name} standard error`)).toBeCloseTo(1, 7);
      expect(line?.slice(6)).toEqual([60, 20]);
    }
  });
});

describe("CHECKCRUISE", () => {
  it("compares pair by pair: differences 2, 4, 3 and 5 are more than chance", () => {
    const [, line] = checkCruise(column([80, 60, 100, 40]), column([82, 64, 103, 45]));
    expect(line?.slice(0, 4)).toEqual([4, 70, 73.5, 3.5]);
    expect(line?.[4]).toBeCloseTo((quantile(0.975, 3) * Math.sqrt(5 / 3)) / 2, 8);
    expect(line?.[5]).toContain("differ by more than chance");
  });
  it("shows nothing where differences go both ways, and takes an empty plot at the end", () => {
    const [, line] = checkCruise(column([80, 60, 100, ""]), column([83, 57, 104, 2]));
    expect(line?.[0]).toBe(4);
    expect(line?.[5]).toContain("No difference shown");
  });
  it("asks for lists of one length", () => {
    expect(errorOf(() => checkCruise(column([1, 2, 3]), column([1, 2, 3, 4, 5])))?.message).toBe(
      "These lists need the same number of rows: Cruise has 3, Check has 5.",
    );
  });
});
