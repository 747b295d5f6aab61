import quantile from "@stdlib/stats-base-dists-t-quantile";
import { describe, expect, it } from "vitest";
import { marginOfError, marginPercent, morePlots, plotsNeeded } from "../../src/functions/sampling";
import { column, errorOf } from "../support/cells";

/** An invented woodlot of 14 points, basal area factor 10: trees tallied and board feet per acre at each. */
const basalAreas = [9, 11, 7, 12, 10, 8, 13, 6, 10, 9, 11, 4, 12, 10].map((trees) => 10 * trees);
const volumes = [7420, 9650, 5130, 11280, 8040, 6310, 12760, 3980, 8890, 7150, 10240, 1870, 11950, 8330];

/** The margin by the textbook's sums of squares, with another library's t. */
function textbookMargin(values: readonly number[]): number {
  const n = values.length;
  const sum = values.reduce((total, one) => total + one, 0);
  const squares = values.reduce((total, one) => total + one * one, 0);
  return (quantile(0.975, n - 1) * Math.sqrt((squares - (sum * sum) / n) / (n - 1))) / Math.sqrt(n);
}

describe("MARGINOFERROR and MARGINPERCENT", () => {
  it.each([
    ["basal area of 14 points", basalAreas, 14.45, 0.01],
    ["volume of 14 points", volumes, 1779, 1],
    ["basal area after 8 points", basalAreas.slice(0, 8), 20.5, 0.1],
  ] as const)("%s", (_, values, wanted, step) => {
    const margin = marginOfError(column(values));
    expect(margin).toBeCloseTo(textbookMargin(values), 4);
    expect(Math.abs(margin - wanted)).toBeLessThanOrEqual(step / 2);
  });

  it("gives the margin as a share of the mean", () => {
    expect(marginPercent(column(basalAreas))).toBeCloseTo(15.3, 1);
    expect(marginPercent(column(volumes))).toBeCloseTo(22.0, 1);
  });

  it("takes the confidence that is asked for, and a row as well as a column", () => {
    expect(marginOfError([volumes], 90)).toBeCloseTo(
      (textbookMargin(volumes) * quantile(0.95, 13)) / quantile(0.975, 13),
      3,
    );
  });

  it("counts a plot without trees, and cuts blanks after the last one", () => {
    expect(marginOfError([[40], [0], [60]])).toBeCloseTo(textbookMargin([40, 0, 60]), 4);
    expect(marginOfError([[40], [""], [60], [""], [null]])).toBe(marginOfError([[40], [0], [60]]));
    expect(marginOfError([[40], [60], [0]])).toBeCloseTo(textbookMargin([40, 60, 0]), 4);
  });

  it("says what it lacks", () => {
    expect(errorOf(() => marginOfError([[90]]))).toEqual(
      expect.objectContaining({ code: "#N/A", message: "A margin of error needs at least 2 plots. You have 1." }),
    );
    expect(errorOf(() => marginPercent([[0], [0]]))).toMatchObject({
      code: "#N/A",
      message: "Nothing to work on yet.",
    });
    expect(errorOf(() => marginOfError([[90], ["ninety"], ["x"]]))).toMatchObject({
      code: "#VALUE!",
      message:
        'Row 2: Value needs a number, but the cell has "ninety". Type just the number. And 1 more row has a problem.',
    });
    expect(errorOf(() => marginOfError([[90], [80]], 0.95))?.message).toBe(
      "Confidence should be between 50 and 99.9 %. You have 0.95.",
    );
  });
});

describe("MOREPLOTS", () => {
  it("wants 28 points in all for 15 percent of the volume", () => {
    expect(morePlots(column(volumes), 15)).toBe(14);
  });

  it("wants none when there are enough", () => {
    expect(morePlots(column(basalAreas), 20)).toBe(0);
  });

  it("says what it lacks", () => {
    expect(errorOf(() => morePlots([[5]], 15))).toMatchObject({ code: "#N/A" });
    expect(errorOf(() => morePlots(column(volumes), 0.15))?.message).toBe(
      "Margin of error should be between 1 and 100 %. You have 0.15.",
    );
  });
});

describe("PLOTSNEEDED", () => {
  it("answers for points and for a limited number of plots", () => {
    expect(plotsNeeded(45, 20)).toBe(22);
    expect(plotsNeeded(50, 10, 90)).toBe(70);
    expect(plotsNeeded(50, 10, null, 400)).toBe(80);
    expect(plotsNeeded("45", [[20]], "", 0)).toBe(22);
  });

  it("says what it lacks", () => {
    expect(errorOf(() => plotsNeeded("", 20))?.message).toBe(
      "Coefficient of variation needs a number in %, but the cell is blank.",
    );
    expect(errorOf(() => plotsNeeded(0.45, 20))?.message).toBe(
      "Coefficient of variation should be between 1 and 1000 %. You have 0.45.",
    );
    expect(errorOf(() => plotsNeeded(45, 20, 95, 1))?.message).toContain("Population should be between 2 and");
  });
});
