import { describe, expect, it } from "vitest";
import { allocations } from "../../src/core/cruise/plotsByStratum";
import { AllocationName, clusterSummary, plotsByStratum, strataSummary } from "../../src/functions/strata";
import { column, errorOf } from "../support/cells";
import { numberIn } from "../support/published";
import { surveyAnswer, surveySamples } from "../support/surveyAnswers";

it("the menu of allocations is the list of the core", () => {
  expect(Object.values(AllocationName)).toEqual(allocations.map(({ title }) => title));
});

describe("STRATASUMMARY", () => {
  const stratum = column(["Oak", "oak ", "Swamp", "Swamp", "Oak"]);
  const value = [[100], [140], [20], [""], [120]];
  const strata = column(["Oak", "Swamp"]);
  const table = strataSummary(stratum, value, strata, column([30, 10]));

  it("has a row for each stratum and one for all, with totals that add up", () => {
    expect(table[0]).toEqual(["Stratum", "Mean", "Margin +/- at 95 %", "Margin %", "Low", "High", "Total", "Plots"]);
    expect(table.slice(1).map(([name, mean, , , , , total, plots]) => [name, mean, total, plots] as unknown[])).toEqual(
      [
        ["Oak", 120, 3600, 3],
        ["Swamp", 10, 100, 2],
        ["All strata", 92.5, 3700, 5],
      ],
    );
    // t of 2 degrees of freedom 4.302653, s = 20
    expect(table[1]?.[2]).toBeCloseTo((4.302653 * 20) / Math.sqrt(3), 4);
  });

  it.each(surveySamples("cruise/survey-strata.csv"))("sample %s agrees with the package survey", (sample, rows) => {
    const names = [...new Set(rows.map((row) => row.stratum ?? ""))];
    const acres = names.map((name) => numberIn(rows.find((row) => row.stratum === name) ?? {}, "acres"));
    const all = strataSummary(
      column(rows.map((row) => row.stratum)),
      column(rows.map((row) => numberIn(row, "value"))),
      column(names),
      column(acres),
    ).at(-1);
    const theirs = surveyAnswer("strata", sample);
    for (const [place, quantity] of [
      [1, "mean"],
      [4, "low"],
      [5, "high"],
      [6, "total"],
    ] as const)
      expect((all?.[place] as number) / theirs(quantity)).toBeCloseTo(1, 7);
  });

  it("takes whole columns and the confidence that is asked for", () => {
    const long = (cells: unknown[][]) => [...cells, [""], [null]];
    expect(strataSummary(long(stratum), long(value), long(strata), long(column([30, 10])), 95)).toEqual(table);
    expect(strataSummary(stratum, value, strata, column([30, 10]), 90)[0]?.[2]).toBe("Margin +/- at 90 %");
  });

  it("keeps a stratum whose plots are all empty", () => {
    const empty = strataSummary(
      column(["a", "a", "b", "b"]),
      column([0, 0, 8, 12]),
      column(["a", "b"]),
      column([5, 5]),
    );
    expect(empty[1]?.slice(0, 4)).toEqual(["a", 0, 0, ""]);
    expect(empty[3]?.[1]).toBe(5);
  });

  it.each<[string, string, () => unknown]>([
    [
      "#N/A",
      "A margin of error needs at least 2 plots in each stratum. You have 1 in stratum Swamp.",
      () => strataSummary(stratum.slice(0, 3), value.slice(0, 3), strata, column([30, 10])),
    ],
    [
      "#VALUE!",
      'Row 3: stratum "Swamp" is not in the list. And 1 more row has a problem.',
      () => strataSummary(stratum, value, column(["Oak"]), column([30])),
    ],
    ["#VALUE!", "Strata list, row 2: Acres are missing.", () => strataSummary(stratum, value, strata, [[30], [""]])],
    [
      "#VALUE!",
      'Strata list, row 2: stratum "oak" stands there twice.',
      () => strataSummary(stratum, value, column(["Oak", "oak"]), column([30, 10])),
    ],
    [
      "#VALUE!",
      "Row 2: the stratum is missing.",
      () => strataSummary([["Oak"], [""]], column([1, 2]), strata, column([30, 10])),
    ],
  ])("%s %s", (code, message, call) => expect(errorOf(call)).toMatchObject({ code, message }));

  it("says that there are no plots yet", () => {
    expect(strataSummary([[""]], [[""]], [[""]], [[""]])[1]?.[0]).toBe("No plots yet");
  });
});

describe("CLUSTERSUMMARY", () => {
  it.each(surveySamples("cruise/survey-clusters.csv"))("sample %s agrees with the package survey", (sample, rows) => {
    const table = clusterSummary(
      column(rows.map((row) => numberIn(row, "cluster"))),
      column(rows.map((row) => numberIn(row, "value"))),
    );
    const theirs = surveyAnswer("clusters", sample);
    expect((table[1]?.[0] as number) / theirs("mean")).toBeCloseTo(1, 8);
    expect((table[1]?.[3] as number) / theirs("low")).toBeCloseTo(1, 7);
    expect((table[1]?.[4] as number) / theirs("high")).toBeCloseTo(1, 7);
    expect(table[1]?.slice(5)).toEqual([9, rows.length]);
  });

  it("counts a blank as a plot without trees, and says what it lacks", () => {
    expect(clusterSummary(column([1, 1, 2]), [[10], [""], [20]])[1]?.slice(0, 1)).toEqual([10]);
    expect(errorOf(() => clusterSummary(column([1, 1]), column([5, 6])))).toMatchObject({
      code: "#N/A",
      message: "A margin of error needs at least 2 groups of plots. You have 1.",
    });
    expect(errorOf(() => clusterSummary(column([1, "", 2]), column([5, 6, 7])))?.message).toBe(
      "Row 2: the cluster is missing.",
    );
    expect(clusterSummary([[""]], [[""]])[1]?.[0]).toBe("No plots yet");
  });
});

describe("PLOTSBYSTRATUM", () => {
  const names = column(["a", "b", "c", "d"]);
  const [acres, mean, cv] = [column([30, 10, 20, 40]), column([1, 1, 1, 1]), column([40, 65, 80, 35])];

  it("shares out 86 plots as the handout after FSH 2409.12 prints", () => {
    expect(plotsByStratum(names, acres, mean, cv, 86)).toEqual([
      ["Stratum", "Plots"],
      ["a", 21],
      ["b", 12],
      ["c", 28],
      ["d", 25],
    ]);
  });

  it("by area needs neither mean nor CV", () => {
    const none = column(["", "", "", ""]);
    expect(
      plotsByStratum(names, acres, none, none, 50, AllocationName.Area).map(([, plots]) => plots as unknown),
    ).toEqual(["Plots", 15, 5, 10, 20]);
  });

  it("says what it lacks", () => {
    expect(errorOf(() => plotsByStratum(names, acres, mean, cv, 7))?.message).toBe(
      "Every stratum needs 2 plots: 8 or more for 4 strata. You have 7.",
    );
    expect(errorOf(() => plotsByStratum(names, acres, mean, cv, 10.5))?.message).toBe(
      "Plots should be a whole number. You have 10.5.",
    );
    expect(errorOf(() => plotsByStratum(names, acres, mean, cv, 20, "Worst" as AllocationName))?.message).toBe(
      'Allocation should be one of: Best, By area. You have "Worst".',
    );
    expect(plotsByStratum([[""]], [[""]], [[""]], [[""]], 20)[1]).toEqual(["No strata yet", ""]);
  });
});
