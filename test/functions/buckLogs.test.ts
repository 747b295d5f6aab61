import { describe, expect, it } from "vitest";
import { buckHabits, buckPlan } from "../../src/functions/bucking";
import { treeLogs } from "../../src/functions/tree";

/** Invented products and prices. */
const PRODUCTS = [
  ["Sawlog", 8, 8, 16, 2, "Doyle", 400],
  ["Pulpwood", 4, 8, 20, 4, "Cubic", 0.2],
];

/** Merchantable height in logs, and a form class where it is not the usual one. */
const byLogs = (dbh: number, logs: unknown, formClass: unknown = null, height: unknown = null) =>
  buckPlan(null, dbh, height, PRODUCTS, null, 0.3, [[null]], [[null]], "", "", logs, formClass) as (
    string | number
  )[][];

describe("BUCKPLAN by logs and form class", () => {
  it("cuts 16-foot logs with the diameters of TREELOGS when nothing else is bought", () => {
    const only16 = [["Sawlog", 8, 16, 16, 1, "Doyle", 400]];
    const [, ...logs] = buckPlan(null, 16, null, only16, 1, 0.3, [[]], [[]], "", "", 3, 78) as number[][];
    const [, ...tree] = treeLogs([[16]], [[3]], [[78]]) as number[][];
    expect(logs.map(([, , , , smallEnd]) => smallEnd)).toEqual(
      [12.5, 11, 9.3].map((d) => expect.closeTo(d, 9) as unknown),
    );
    expect(logs.map(([, , , , smallEnd]) => smallEnd)).toEqual(
      tree.map(([, smallEnd = NaN]) => expect.closeTo(smallEnd, 9) as unknown),
    );
    // Doyle: (12.5 - 4)^2 = 72, 49, 28 at $400 per MBF.
    expect(logs.map(([, , , , , volume]) => volume)).toEqual([72, 49, 28]);
    expect(logs.map(([, , , , , , value]) => value)).toEqual(
      [28.8, 19.6, 11.2].map((v) => expect.closeTo(v, 9) as unknown),
    );
  });

  it("ends at the merchantable height, 1 ft of stump and 16.3 ft a log", () => {
    const logs = byLogs(18, 2.5).slice(1) as number[][];
    expect(Math.max(...logs.map(([, , to = NaN]) => to))).toBeLessThanOrEqual(1 + 2.5 * 16.3 + 1e-9);
    expect(byLogs(18, 2.5, 82)[1]?.[4] as number).toBeGreaterThan(byLogs(18, 2.5)[1]?.[4] as number);
  });

  it("is never mixed with the road by total height", () => {
    expect(() => byLogs(18, 2.5, null, 70)).toThrow(
      "Give the total height or the logs, not both: each draws the stem in its own way.",
    );
  });

  it("ends where the form-class tables do", () => {
    expect(() => byLogs(9, 2)).toThrow("The form-class table as published has no value below 10 in DBH. You have 9.");
    expect(() => byLogs(18, 4.5)).toThrow("Upper-log tapers are known for up to 4 logs of 16 ft. You have 4.5.");
  });
});

describe("BUCKHABITS", () => {
  const habits = (...rest: unknown[]) =>
    buckHabits("white oak", 20, 80, PRODUCTS, ...(rest as [])) as (string | number)[][];

  it("sets the best plan over each fixed length and over the longest that fits, none of which brings more", () => {
    const [header, best, ...others] = habits();
    expect(header).toEqual(["Way to cut", "Logs", "Value $", "Below best $", "Below best pct"]);
    const plan = buckPlan("white oak", 20, 80, PRODUCTS).slice(1) as number[][];
    const worth = plan.reduce((sum, [, , , , , , value = NaN]) => sum + value, 0);
    expect(best).toEqual(["Best plan", plan.length, expect.closeTo(worth, 9), 0, 0]);
    expect(others.map(([way]) => way)).toEqual([
      "All 8 ft",
      "All 10 ft",
      "All 12 ft",
      "All 14 ft",
      "All 16 ft",
      "All 20 ft",
      "As long as fits",
    ]);
    for (const [way, , value, below, percent] of others as [string, number, number, number, number][]) {
      expect(value, way).toBeLessThanOrEqual(worth + 1e-9);
      expect(below, way).toBeCloseTo(worth - value, 9);
      expect(percent, way).toBeCloseTo((100 * (worth - value)) / worth, 9);
    }
  });

  it("names lengths in meters when metric, and waits for a tree", () => {
    const metric = [["Sawlog", 20, 2.4, 4.8, 0.6, "Doyle", 400]];
    const ways = buckHabits("white oak", 50, 24, metric, null, null, [[]], [[]], "", "", null, null, "metric");
    expect(ways.map(([way]) => String(way))).toContain("All 3.6 m");
    expect(buckHabits("", 20, 80, PRODUCTS)[1]).toEqual(["No trees yet", "", "", "", ""]);
  });
});
