import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cutSummary } from "../../src/functions/cut";
import { standTable, stockTable } from "../../src/functions/classTables";
import { speciesTable, standSummary } from "../../src/functions/standSummary";
import { column, errorOf } from "../support/cells";
import { numberIn } from "../support/published";
import { surveyAnswer, surveySamples } from "../support/surveyAnswers";

const point = "Point" as never;
const fixed = "Fixed" as never;
const out = undefined;
const sum = (values: readonly number[]) => values.reduce((all, one) => all + one, 0);

/** One tree of 12 in on a plot of one acre for each plot, with the value of the plot as its volume. */
const asTally = (values: readonly number[]) => ({
  plot: column(values.map((_, at) => at + 1)),
  dbh: column(values.map(() => 12)),
  volume: column(values),
});

describe.each(surveySamples("cruise/survey-strata.csv"))("strata of sample %s", (sample, rows) => {
  const { plot, dbh, volume } = asTally(rows.map((row) => numberIn(row, "value")));
  const stratum = column(rows.map((row) => row.stratum));
  const strata = [...new Map(rows.map((row) => [row.stratum, numberIn(row, "acres")]))];
  const theirs = surveyAnswer("strata", sample);

  it("have the volume and the range of the package survey in STANDSUMMARY, and all of it in SPECIESTABLE", () => {
    const line = standSummary(plot, dbh, plot, fixed, [[1]], volume, out, 95, stratum, strata)[4];
    const all = speciesTable(plot, [["ro"]], dbh, volume, plot, fixed, [[1]], out, 95, stratum, strata).at(-1);
    for (const [ours, quantity] of [
      [line?.[1], "mean"],
      [line?.[4], "low"],
      [line?.[5], "high"],
      [all?.[4], "mean"],
      [(all?.[4] as number) - (all?.[6] as number), "low"],
    ] as const)
      expect((ours as number) / theirs(quantity)).toBeCloseTo(1, 7);
  });
});

describe.each(surveySamples("cruise/survey-clusters.csv"))("clusters of sample %s", (sample, rows) => {
  it("have the volume and the range of the package survey", () => {
    // Some values are below 0, which no volume is: all are lifted by as much, which moves the mean and no margin.
    const { plot, dbh, volume } = asTally(rows.map((row) => 1000 + numberIn(row, "value")));
    const cluster = column(rows.map((row) => row.cluster));
    const line = standSummary(plot, dbh, plot, fixed, [[1]], volume, out, 95, out, out, cluster)[4];
    const theirs = surveyAnswer("clusters", sample);
    expect(((line?.[1] as number) - 1000) / theirs("mean")).toBeCloseTo(1, 7);
    expect(((line?.[4] as number) - 1000) / theirs("low")).toBeCloseTo(1, 7);
    expect(((line?.[5] as number) - 1000) / theirs("high")).toBeCloseTo(1, 7);
  });
});

it("parts add up to the total exactly in every table, strata or not, each with a margin of its own", () => {
  const tree = fc.record({
    plot: fc.integer({ min: 1, max: 9 }),
    dbh: fc.double({ min: 5, max: 30, noNaN: true }),
    species: fc.constantFrom("ro", "wo", "hi"),
    volume: fc.integer({ min: 1, max: 900 }),
    take: fc.constantFrom("Yes", "No", ""),
  });
  const acres = fc.array(fc.integer({ min: 1, max: 90 }), {
    minLength: 3,
    maxLength: 3,
  });
  fc.assert(
    fc.property(fc.array(tree, { minLength: 1, maxLength: 40 }), acres, fc.boolean(), (trees, sizes, stratified) => {
      const given = <K extends keyof (typeof trees)[number]>(key: K) => column(trees.map((one) => one[key]));
      const plots = column([1, 2, 3, 4, 5, 6, 7, 8, 9]);
      const stratum = stratified ? column([..."aaabbcccc"]) : out;
      const strata = stratified ? ["a", "b", "c"].map((name, at) => [name, sizes[at]]) : out;
      const [plot, dbh, volume, species] = [given("plot"), given("dbh"), given("volume"), given("species")];
      const whole = standSummary(plot, dbh, plots, point, [[10]], volume, out, 95, stratum, strata);
      const kinds = speciesTable(plot, species, dbh, volume, plots, point, [[10]], out, 95, stratum, strata).slice(1);
      const parts = kinds.slice(0, -1);
      const classes = standTable(plot, species, dbh, plots, point, [[10]], 2, out, out, stratum, strata);
      const stock = stockTable(plot, species, dbh, volume, plots, point, [[10]], 2, out, out, stratum, strata);
      const cut = cutSummary(plot, dbh, given("take"), plots, point, [[10]], volume, out, stratum, strata);
      const [trees_, area, bf] = [whole[1]?.[1], whole[2]?.[1], whole[4]?.[1]] as [number, number, number];
      expect(sum(parts.map((part) => part[1] as number)) / trees_).toBeCloseTo(1, 9);
      expect(sum(parts.map((part) => part[2] as number)) / area).toBeCloseTo(1, 9);
      expect(sum(parts.map((part) => part[4] as number)) / bf).toBeCloseTo(1, 9);
      expect((classes.at(-1)?.at(-1) as number) / trees_).toBeCloseTo(1, 9);
      expect((stock.at(-1)?.at(-1) as number) / bf).toBeCloseTo(1, 9);
      expect(((cut[2]?.[4] as number) + (cut[3]?.[4] as number)) / bf).toBeCloseTo(1, 9);
      // Parts lie on the same plots, so the margin of the whole is never more than theirs together.
      const margins = parts.map((part) => part[6] as number);
      if (!stratified) expect(whole[4]?.[2]).toBeLessThanOrEqual(sum(margins) * (1 + 1e-9));
      for (const margin of margins) expect(margin).toBeGreaterThanOrEqual(0);
    }),
  );
});

describe("what does not go together is said", () => {
  const { plot, dbh, volume } = asTally([100, 140, 20, 40]);
  const stratum = column(["Oak", "Oak", "Swamp", "Swamp"]);
  const said = (...rest: unknown[]) =>
    errorOf(() => (standSummary as (...args: unknown[]) => unknown)(plot, dbh, plot, ...rest))?.message;
  const summary = (...rest: unknown[]) =>
    (standSummary as (...args: unknown[]) => unknown[][])(plot, dbh, plot, ...rest);

  it("a stratum that is not listed, or has no name, acres or plots", () => {
    const with_ = (names: unknown, strata: unknown) => said(fixed, [[1]], volume, out, out, names, strata);
    expect(with_(stratum, [["Oak", 30]])).toBe(
      'Plot list, row 3: stratum "Swamp" is not in the list of strata. And 1 more row has a problem.',
    );
    expect(
      with_(column(["Oak", "", "Swamp", "Swamp"]), [
        ["Oak", 30],
        ["Swamp", 10],
      ]),
    ).toBe("Plot list, row 2: the stratum is missing.");
    expect(
      with_(stratum, [
        ["Oak", 30],
        ["Swamp", ""],
      ]),
    ).toContain("Acres are missing.");
    expect(
      with_(stratum, [
        ["Oak", 30],
        ["Swamp", 10],
        ["Ridge", 5],
      ]),
    ).toBe("Stratum Ridge has no plots. Visit one there, or take its acres off the list of strata.");
    expect(with_(stratum, [["", ""]])).toBe(
      "Plots have strata, but the list of strata is empty. Give each stratum and its acres.",
    );
    expect(with_(stratum, [["Oak"]])).toBe("The list of strata needs two columns: the stratum, and its acres.");
  });

  it("a stratum of one plot has a mean, and no margin, by its name", () => {
    const line = summary(fixed, [[1]], volume, out, out, column(["Oak", "Oak", "Oak", "Swamp"]), [
      ["Oak", 30],
      ["Swamp", 10],
    ])[4];
    expect(line?.[1]).toBeCloseTo((0.75 * 260) / 3 + 0.25 * 40, 9);
    expect((line?.[2] as Error).message).toBe(
      "A margin of error needs at least 2 plots in each stratum. You have 1 in stratum Swamp.",
    );
  });

  it("a population is for fixed plots, and not smaller than the sample; the error shrinks by the root of 1 - n/N", () => {
    const margin = (population: unknown) =>
      summary(fixed, [[1]], volume, out, out, out, out, out, population)[4]?.[2] as number;
    expect(margin(8) / margin("")).toBeCloseTo(Math.sqrt(0.5), 9);
    expect(said(point, [[10]], volume, out, out, out, out, out, 8)).toContain("Only fixed plots");
    const few = summary(fixed, [[1]], volume, out, out, out, out, out, 3)[4]?.[2] as Error;
    expect(few.message).toBe("The plots that would cover the tract should be at least the 4 you took. You have 3.");
  });

  it("clusters do not go with strata", () => {
    expect(
      said(
        fixed,
        [[1]],
        volume,
        out,
        out,
        stratum,
        [
          ["Oak", 30],
          ["Swamp", 10],
        ],
        stratum,
      ),
    ).toContain("Clusters go with plots");
  });
});

describe("points for thick trees and a fixed plot for thin ones", () => {
  const nested = "Point and fixed" as never;
  const size = [
    [0, 0.01],
    [5, 10],
  ];
  it("expand each tree by the way it was picked, one of just the breakpoint by the gauge", () => {
    const table = standSummary(column([1, 1, 1]), column([2, 4.9, 5]), column([1, 2]), nested, size);
    const byGauge = 10 / ((Math.PI / 576) * 25);
    expect(table[1]?.[1]).toBeCloseTo((100 + 100 + byGauge) / 2, 9);
    expect(table[2]?.[1]).toBeCloseTo((100 * (Math.PI / 576) * (4 + 4.9 ** 2) + 10) / 2, 9);
  });

  it("say what they need", () => {
    const said = (given: unknown) => errorOf(() => standSummary([[1]], [[12]], [[1]], nested, given as never))?.message;
    expect(said([[10]])).toContain("needs two columns of at least two rows");
    expect(
      said([
        [0, 10],
        [5, 10],
      ]),
    ).toBeUndefined();
    expect(
      said([
        [0, 2000],
        [5, 10],
      ]),
    ).toContain("Size, row 1: Plot size should be between");
  });
});
