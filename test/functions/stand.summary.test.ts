import { describe, expect, it } from "vitest";
import { SummarySampling, standSummary, SummaryUnits } from "../../src/functions/standSummary";
import { dbh, plot, plots, volume } from "../support/fourPoints";

const { point } = SummarySampling;

describe("STANDSUMMARY", () => {
  it("gives five rows of six, with the figures worked out apart", () => {
    const table = standSummary(plot, dbh, plots, point, [[10]], volume);
    expect(table.map((row) => row.length)).toEqual([6, 6, 6, 6, 6]);
    expect(table[0]).toEqual(["Measure", "Value", "Margin +/- at 95 %", "Margin %", "Low", "High"]);
    expect(table.map(([name]) => name as string).slice(1)).toEqual([
      "Trees per ac",
      "Basal area ft2/ac",
      "Quadratic mean diameter in",
      "Volume per ac",
    ]);
    // 3.182446 is t of 3 degrees of freedom; 13.14978 and 10.09337 the standard errors
    expect(table[2]?.[1]).toBeCloseTo(37.5, 9);
    expect(table[2]?.[2]).toBeCloseTo(3.182446 * 13.14978, 3);
    expect(table[1]?.[4]).toBeCloseTo(-2.119, 3);
    expect(table[3]?.[1]).toBeCloseTo(15.13821, 5);
  });

  it("leaves the volume cells blank when no volume was measured", () => {
    for (const none of [undefined, null, [[""]], [[0]], dbh.map(() => [""])]) {
      expect(standSummary(plot, dbh, plots, point, [[10]], none as never)[4]).toEqual([
        "Volume per ac",
        "",
        "",
        "",
        "",
        "",
      ]);
    }
  });

  it("gives the value of a single plot and says why it has no margin", () => {
    const table = standSummary([[1], [1]], [[12], [14]], [[1]], point, [[10]]);
    expect(table[2]?.[1]).toBeCloseTo(20, 9);
    for (const cell of table[2]?.slice(2) ?? []) {
      expect(cell).toMatchObject({
        code: "#N/A",
        message: "A margin of error needs at least 2 plots. You have 1.",
      });
    }
  });

  it("takes the confidence that is asked for", () => {
    const wide = standSummary(plot, dbh, plots, point, [[10]], volume, undefined, 99);
    expect(wide[0]?.[2]).toBe("Margin +/- at 99 %");
    expect(wide[2]?.[2]).toBeCloseTo(5.840909 * 13.14978, 3);
  });

  it("is the same stand in metric", () => {
    const imperial = standSummary(plot, dbh, plots, point, [[10]], volume);
    const cm = dbh.map(([one]) => [(one as number) * 2.54]);
    const factor = 10 * 0.2295684113865932; // ft2/ac to m2/ha
    const metric = standSummary(
      plot,
      cm,
      plots,
      point,
      [[factor]],
      volume,
      undefined,
      undefined,
      undefined,
      undefined,
      undefined,
      undefined,
      SummaryUnits.metric,
    );
    const ha = 2.4710538146716536; // acres
    for (const [row, by] of [
      [1, ha],
      [2, 0.2295684113865932],
      [3, 2.54],
      [4, ha],
    ] as const) {
      expect(metric[row]?.[1]).toBeCloseTo((imperial[row]?.[1] as number) * by, 6);
      expect(metric[row]?.[3]).toBeCloseTo(imperial[row]?.[3] as number, 6);
    }
    expect(metric.slice(1).map(([name]) => name as string)).toEqual([
      "Trees per ha",
      "Basal area m2/ha",
      "Quadratic mean diameter cm",
      "Volume per ha",
    ]);
  });

  it("counts a row twice or half as its count says, once when it is blank or 0", () => {
    const basalArea = (count: unknown): unknown =>
      standSummary([[1], [2]], [[12], [14]], [[1], [2]], point, [[10]], undefined, count as never)[2]?.[1];
    expect(basalArea([[""], [0]])).toBeCloseTo(10, 9);
    expect(basalArea([[2], [1]])).toBeCloseTo(15, 9);
    expect(basalArea([[0.5], [null]])).toBeCloseTo(7.5, 9);
    expect(basalArea(2)).toBeCloseTo(20, 9);
  });

  it("passes over rows without a diameter and blanks after the last row", () => {
    const long = (cells: unknown[][]) => [...cells, [""], [null], [0]];
    expect(standSummary(long(plot), long(dbh), long(plots), point, [[10]], long(volume))).toEqual(
      standSummary(plot, dbh, plots, point, [[10]], volume),
    );
    expect(standSummary(plot, long(dbh), plots, point, [[10]])).toEqual(standSummary(plot, dbh, plots, point, [[10]]));
  });

  it("finds plots by name in any case, by number or by the number as text", () => {
    const named = standSummary([["north 1"], ["2"]], [[12], [14]], [["North 1 "], [2]], point, [[10]]);
    expect(named[2]?.[1]).toBeCloseTo(10, 9);
  });

  it("says that there are no trees yet", () => {
    for (const none of [[[""]], [[0]], [[null]], null]) {
      expect(standSummary(none as never, none as never, plots, point, [[10]])[1]).toEqual([
        "No trees yet",
        "",
        "",
        "",
        "",
        "",
      ]);
    }
  });
});
