import { describe, expect, it } from "vitest";
import { countMeasure, CountUnits } from "../../src/functions/count";
import { errorOf } from "../support/cells";

/** Three points at a factor of 10: counts 4, 6 and 8, of which four trees are measured, in rows as they are tallied. */
const tally: readonly (readonly [plot: unknown, counted: unknown, volume: unknown, area: unknown])[] = [
  [1, "", 100, 1],
  [1, 3, "", ""],
  [2, 1, 240, 2],
  [2, "", 70, 0.5],
  [2, 4, "", ""],
  [3, "", 160, 1],
  [3, 7, "", ""],
];
const of = (rows: readonly (readonly unknown[])[], place: number) => rows.map((row) => [row[place]]);
const measured = (
  rows: readonly (readonly unknown[])[],
  plots: unknown[][],
  baf: unknown = [[10]],
  units?: CountUnits,
) => countMeasure(of(rows, 0), of(rows, 1), plots, baf as never, of(rows, 2), of(rows, 3), undefined, units);
const three = [[1], [2], [3]];

describe("COUNTMEASURE", () => {
  const table = measured(tally, three);

  it("gives basal area, ratio and volume, each with its margin", () => {
    expect(table[0]).toEqual(["Measure", "Value", "Margin +/- at 95 %", "Margin %", "Low", "High"]);
    expect(table.slice(1).map(([name]) => name as string)).toEqual([
      "Basal area ft2/ac",
      "Volume per ft2 of basal area",
      "Volume per ac",
      "Volume per ac, product term left out",
    ]);
    expect(table.slice(1).map(([, value]) => Math.round((value as number) * 1e6) / 1e6)).toEqual([60, 130, 7800, 7800]);
    // e = 20 / sqrt(3) / 60, t of 2 degrees of freedom 4.302653
    expect(table[1]?.[3]).toBeCloseTo((100 * 4.302653 * 20) / Math.sqrt(3) / 60, 3);
    expect(table[3]?.[2] as number).toBeLessThan(table[4]?.[2] as number);
  });

  it("counts a point in the list that has no row, or a count of none, as an empty one", () => {
    const four = measured([...tally, [4, 0, "", ""]], [...three, [4]]);
    expect(four[1]?.[1]).toBeCloseTo(45, 9);
    expect(measured(tally, [...three, [4]])).toEqual(four);
  });

  it("takes a factor for each point", () => {
    expect(measured(tally, three, [[10], [10], [20]])[1]?.[1]).toBeCloseTo((40 + 60 + 160) / 3, 9);
    // The tree of point 3 weighs twice: (100 + 120 + 140 + 2 x 160) / 5
    expect(measured(tally, three, [[10], [10], [20]])[2]?.[1]).toBeCloseTo(136, 9);
  });

  it("warns where whole points were measured, and gives the margin by points", () => {
    const whole = [
      [1, "", 100, 1],
      [1, "", 200, 2],
      [2, 5, "", ""],
      [3, "", 90, 1],
      [3, "", 260, 2],
      [3, "", 120, 1],
      [4, 4, "", ""],
    ];
    const table = measured(whole, [[1], [2], [3], [4]]);
    expect(table).toHaveLength(7);
    expect(table[5]?.[0]).toMatch(/^Whole points were measured/);
    // By points: volumes 2000 and 3400 over basal areas 20 and 30; 108 times the mean of 20, 50, 30 and 40
    expect(table[6]?.slice(0, 2)).toEqual(["Volume per ac, by whole points", 108 * 35]);
    expect(table[6]?.[2] as number).toBeGreaterThan(0);
    const single = measured([...whole.slice(0, 3), [3, 3, "", ""], [4, 4, "", ""]], [[1], [2], [3], [4]]);
    expect(single[6]?.[1]).toMatchObject({
      code: "#N/A",
      message: expect.stringContaining("2 measured plots") as unknown,
    });
  });

  it("is the same stand in metric", () => {
    const metric = tally.map(([plot, count, volume, area]) => [
      plot,
      count,
      volume,
      typeof area === "number" ? area * 0.09290304 : area,
    ]);
    const table2 = measured(metric, three, [[2.295684113865932]], CountUnits.metric);
    expect(table2[1]?.[1]).toBeCloseTo(60 * 0.2295684113865932, 9);
    expect(table2[2]?.[1]).toBeCloseTo(130 / 0.09290304, 6);
    expect(table2[3]?.[1]).toBeCloseTo(7800 * 2.4710538146716536, 6);
    expect(table2[3]?.[3]).toBeCloseTo(table[3]?.[3] as number, 6);
    expect(table2.slice(1, 4).map(([name]) => name as string)).toEqual([
      "Basal area m2/ha",
      "Volume per m2 of basal area",
      "Volume per ha",
    ]);
  });

  it.each<[string, () => unknown]>([
    ["Row 8: plot 9 is not in the plot list.", () => measured([...tally, [9, 2, "", ""]], three)],
    ["Row 8: the basal area of the tree is missing.", () => measured([...tally, [1, "", 80, ""]], three)],
    ["Row 8: the plot is missing.", () => measured([...tally, ["", 2, "", ""]], three)],
    [
      "Row 8: Basal area of the tree should be between 0.005 and 35 ft2. You have 140. Missing a decimal point?",
      () => measured([...tally, [1, "", 80, 140]], three),
    ],
    ["Plot list, row 2: Basal area factor is missing.", () => measured(tally, three, [[10], [""], [20]])],
    ["Basal area factor should be one value, or one for each point.", () => measured(tally, three, [[5, 10]])],
    ["The plot list is empty. Every plot belongs in it, those without trees too.", () => measured(tally, [[""]])],
  ])("says: %s", (message, call) => expect(errorOf(call)).toMatchObject({ code: "#VALUE!", message }));

  it("says that there are no trees yet, or too few measured ones", () => {
    expect(measured([["", "", "", ""]], three)[1]?.[0]).toBe("No trees yet");
    expect(errorOf(() => measured(tally.slice(0, 2), three))).toMatchObject({
      code: "#N/A",
      message: "A margin of error needs at least 2 measured trees. You have 1.",
    });
  });
});
