import { describe, expect, it } from "vitest";
import { samplingMethods } from "../../src/core/cruise/methods";
import { CutSamplingName, cutSummary } from "../../src/functions/cut";
import { SummarySampling, standSummary } from "../../src/functions/standSummary";
import { column, errorOf } from "../support/cells";
import { dbh, plot, plots, volume } from "../support/fourPoints";

it("the menu of methods is the list of the core", () => {
  expect(Object.values(CutSamplingName)).toEqual(samplingMethods.map(({ title }) => title));
});

describe("CUTSUMMARY", () => {
  const take = column(dbh.map((_, at) => ["Yes", "no", ""][at % 3]));
  const table = cutSummary(plot, dbh, take, plots, CutSamplingName.point, [[10]], volume);

  it("has before, cut and leave, which add up", () => {
    expect(table[0]).toEqual([
      "Stand",
      "Trees per ac",
      "Basal area ft2/ac",
      "Quadratic mean diameter in",
      "Volume per ac",
      "Share of volume %",
    ]);
    expect(table.slice(1).map(([name]) => name as string)).toEqual(["Before", "Cut", "Leave"]);
    for (const place of [1, 2, 4, 5]) {
      const [before, cut, leave] = table.slice(1).map((row) => row[place] as number) as [number, number, number];
      expect(cut + leave).toBeCloseTo(before, 9);
    }
    expect(table[1]?.[5]).toBeCloseTo(100, 9);
    // 5 of the 15 trees, at a factor of 10 on 4 points
    expect(table[2]?.[2]).toBeCloseTo(12.5, 9);
  });

  it("begins with the stand that STANDSUMMARY has", () => {
    const summary = standSummary(plot, dbh, plots, SummarySampling.point, [[10]], volume);
    for (const place of [1, 2, 3, 4]) expect(table[1]?.[place]).toBeCloseTo(summary[place]?.[1] as number, 9);
  });

  it("takes yes and no in other words, and leaves a tree without a mark", () => {
    const marks = column(["y", "X", true, false, "N", 0, null]);
    const trees = column(marks.map(() => 12));
    const cut = cutSummary([[1]], trees, marks, [[1]], CutSamplingName.fixed, [[0.1]]);
    expect(cut.slice(1).map((row) => row[1] as unknown)).toEqual([70, 30, 40]);
    expect(cut[0]?.at(-1)).toBe("Share of basal area %");
  });

  it("has nothing to say of a mean diameter where nothing is cut", () => {
    const none = cutSummary(plot, dbh, [[""]], plots, CutSamplingName.point, [[10]], volume);
    expect(none[2]).toEqual(["Cut", 0, 0, "", 0, 0]);
  });

  it("asks for yes or no", () => {
    const marks = column(dbh.map((_, at) => (at === 2 || at === 4 ? "maybe" : "Yes")));
    expect(errorOf(() => cutSummary(plot, dbh, marks, plots, CutSamplingName.point, [[10]]))).toMatchObject({
      code: "#VALUE!",
      message: 'Row 3: Take should be one of: Yes, No. You have "maybe". And 1 more row has a problem.',
    });
  });

  it("says that there are no trees yet", () => {
    expect(cutSummary([[""]], [[""]], [[""]], plots, CutSamplingName.point, [[10]])[1]?.[0]).toBe("No trees yet");
  });
});
