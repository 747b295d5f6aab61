import { describe, expect, it } from "vitest";
import { densityMeasures } from "../../src/core/cruise/densities";
import { samplingMethods } from "../../src/core/cruise/methods";
import { DescribeSampling, densitySummary, importanceValue, loreysHeight } from "../../src/functions/describe";
import { column, errorOf } from "../support/cells";
import { dbh, plot, plots } from "../support/fourPoints";

const { point, fixed } = DescribeSampling;

it("the menu of methods is the list of the core", () => {
  expect(Object.values(DescribeSampling)).toEqual(samplingMethods.map(({ title }) => title));
});

describe("DENSITYSUMMARY", () => {
  const table = densitySummary(plot, dbh, [[""]], plots, point, [[10]]);

  it("has every measure, and the index of the four points as it was worked out apart, both ways", () => {
    expect(table.slice(1).map((row) => row[0] as string)).toEqual(densityMeasures.map(({ title }) => title));
    expect(table[1]?.[1]).toBeCloseTo(58.36796, 4);
    expect(table[2]?.[1]).toBeCloseTo(57.28612, 4);
    // Basal area 37.5 over the root of 15.13821
    expect(table[3]?.[1]).toBeCloseTo(37.5 / Math.sqrt(15.13821), 4);
  });

  it("says from which diameter trees were counted, and which coefficients are recalled", () => {
    expect(table[1]?.[3]).toContain("trees from 10 in up");
    expect(table[4]?.[3]).toContain("recalled");
  });

  it("has the same before and after where nothing is cut, and less where something is", () => {
    for (const row of table.slice(1)) expect(row[2]).toBeCloseTo(row[1] as number, 12);
    const marks = column(dbh.map((_, at) => (at % 2 === 0 ? "Yes" : "No")));
    for (const row of densitySummary(plot, dbh, marks, plots, point, [[10]]).slice(1))
      expect(row[2]).toBeLessThan(row[1] as number);
    const none = densitySummary([[1]], [[12]], [["Yes"]], [[1]], point, [[10]]);
    expect((none[1]?.[2] as Error).message).toBe("Nothing to work on yet.");
  });

  it("is one number in inches and in centimeters: trees of 10 in on an acre, of 25.4 cm on a hectare", () => {
    const cm = dbh.map(([one]) => [(one as number) * 2.54]);
    const factor = (10 * 0.09290304) / 0.40468564224;
    const metric = densitySummary(
      plot,
      cm,
      [[""]],
      plots,
      point,
      [[factor]],
      ...([undefined, undefined, undefined] as const),
      "metric" as never,
    );
    expect((metric[1]?.[1] as number) / (table[1]?.[1] as number)).toBeCloseTo(1 / 0.40468564224, 6);
  });
});

describe("IMPORTANCEVALUE", () => {
  it("has the shares of frequency, density and dominance by hand, the most important first", () => {
    // Two plots of a tenth of an acre: oak on both, 3 trees of 12 in; pine on one, 1 tree of 12 in
    const table = importanceValue(
      column([1, 1, 2, 1]),
      column(["ro", "ro", "ro", "wp"]),
      [[12]],
      column([1, 2]),
      fixed,
      [[0.1]],
    );
    expect(table.slice(1).map(([name]) => name as string)).toEqual(["ro", "wp"]);
    for (const [place, value] of [200 / 3, 75, 75, 200 / 3 + 150, (200 / 3 + 150) / 3].entries())
      expect(table[1]?.[place + 1]).toBeCloseTo(value, 9);
  });
  it("says that there are no trees yet", () => {
    expect(importanceValue([[""]], [[""]], [[""]], plots, point, [[10]])[1]?.[0]).toBe("No trees yet");
  });
});

describe("LOREYSHEIGHT", () => {
  it("weighs each height by basal area: 60 ft at 10 in and 90 ft at 10 root 3 in", () => {
    expect(loreysHeight(column([60, 90, ""]), column([10, 10 * Math.sqrt(3), 30]))).toBeCloseTo(82.5, 9);
  });
  it("takes the trees per acre of a point sample, where it is the plain mean", () => {
    const perAcre = column([10, 14].map((one) => 10 / ((Math.PI / 576) * one ** 2)));
    expect(loreysHeight(column([60, 90]), column([10, 14]), perAcre)).toBeCloseTo(75, 9);
  });
  it("answers in meters for meters, and needs a tree", () => {
    expect(loreysHeight(column([18, 27]), column([20, 20]), undefined, "metric" as never)).toBeCloseTo(22.5, 9);
    expect(errorOf(() => loreysHeight([[""]], [[12]]))?.message).toBe("Nothing to work on yet.");
  });
});
