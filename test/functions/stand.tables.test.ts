import { describe, expect, it } from "vitest";
import { standTable, stockTable, ClassTableUnits } from "../../src/functions/classTables";
import { plotTable, speciesTable, standSummary } from "../../src/functions/standSummary";
import { errorOf, numbersBelow } from "../support/cells";
import { dbh, plot, plots, species, volume } from "../support/fourPoints";

const point = "Point" as never;
const fixed = "Fixed" as never;

describe("STANDTABLE and STOCKTABLE", () => {
  const trees = standTable(plot, species, dbh, plots, point, [[10]]);
  const stock = stockTable(plot, species, dbh, volume, plots, point, [[10]], 2);

  it("have the classes down, the species by name across and totals both ways", () => {
    expect(trees[0]).toEqual([
      "Trees per ac by DBH class in; class 12 is 11 to under 13 in",
      "RO",
      "wo",
      "All species",
    ]);
    expect(stock[0]).toEqual([
      "Volume per ac by DBH class in; class 12 is 11 to under 13 in",
      "RO",
      "wo",
      "All species",
    ]);
    expect(trees.slice(1).map(([name]) => name as unknown)).toEqual([10, 12, 14, 16, 18, 20, 22, 24, "All classes"]);
  });

  it("add up to the stand", () => {
    const summary = standSummary(plot, dbh, plots, point, [[10]], volume);
    expect(trees.at(-1)?.at(-1)).toBeCloseTo(summary[1]?.[1] as number, 9);
    expect(stock.at(-1)?.at(-1)).toBeCloseTo(summary[4]?.[1] as number, 9);
    for (const table of [trees, stock]) {
      for (const row of table.slice(1))
        expect((row[1] as number) + (row[2] as number)).toBeCloseTo(row[3] as number, 9);
    }
  });

  it("take the width of a class, 5 cm in metric unless told", () => {
    expect(
      standTable(plot, species, dbh, plots, point, [[10]], 10)
        .slice(1, -1)
        .map(([name]) => name as unknown),
    ).toEqual([10, 20]);
    const metric = standTable(
      [[1]],
      [["ro"]],
      [[27.5]],
      [[1]],
      point,
      [[4]],
      undefined,
      undefined,
      undefined,
      undefined,
      undefined,
      ClassTableUnits.metric,
    );
    expect(metric.map(([name]) => name as unknown)).toEqual([
      "Trees per ha by DBH class cm; class 30 is 27.5 to under 32.5 cm",
      30,
      "All classes",
    ]);
    expect(errorOf(() => standTable(plot, species, dbh, plots, point, [[10]], 100))?.message).toBe(
      "Class width should be between 0.5 and 20 in. You have 100. Missing a decimal point?",
    );
  });

  it("keep trees without a species, in the last column", () => {
    const table = standTable([[1], [1]], [[""], ["wo"]], [[12], [12]], [[1]], fixed, [[0.1]]);
    expect(table).toEqual([
      ["Trees per ac by DBH class in; class 12 is 11 to under 13 in", "wo", "(blank)", "All species"],
      [12, 10, 10, 20],
      ["All classes", 10, 10, 20],
    ]);
  });

  it("say that there are no trees yet", () => {
    expect(standTable([[""]], [[""]], [[""]], plots, point, [[10]])).toEqual([
      ["Trees per ac by DBH class in; class 12 is 11 to under 13 in", "All species"],
      ["No trees yet", ""],
    ]);
  });
});

describe("SPECIESTABLE", () => {
  it("puts the largest share first and the whole stand last", () => {
    const table = speciesTable(
      [[1], [1], [2]],
      [["a"], ["b"], ["B"]],
      [[12], [14], [14]],
      [[10], [30], [50]],
      [[1], [2], [3]],
      fixed,
      [[0.1]],
    );
    expect(table[0]).toEqual([
      "Species",
      "Trees per ac",
      "Basal area ft2/ac",
      "Quadratic mean diameter in",
      "Volume per ac",
      "Share of volume %",
      "Margin +/- at 95 %, volume",
    ]);
    expect(table.slice(1).map(([name]) => name as unknown)).toEqual(["b", "a", "All species"]);
    // Volume per acre of b by plot: 300, 500, 0; mean 800/3, s = 251.661, t of 2 degrees of freedom 4.302653
    expect(table[1]?.[4]).toBeCloseTo(800 / 3, 9);
    expect(table[1]?.[5]).toBeCloseTo((100 * 80) / 90, 9);
    expect(table[1]?.[6]).toBeCloseTo((4.302653 * 251.6611) / Math.sqrt(3), 2);
    expect(table[1]?.[3]).toBeCloseTo(14, 9);
    expect(table[3]?.[5]).toBeCloseTo(100, 9);
  });

  it("shares out the basal area when no volume was measured", () => {
    const table = speciesTable(plot, species, dbh, [[""]], plots, point, [[10]]);
    expect(table[0]?.slice(5)).toEqual(["Share of basal area %", "Margin +/- at 95 %, basal area"]);
    expect(table[1]?.[4]).toBe("");
    expect(
      numbersBelow(table, 5)
        .slice(0, -1)
        .reduce((sum, one) => sum + one, 0),
    ).toBeCloseTo(100, 9);
  });

  it("says in the margin that one plot is too few", () => {
    const table = speciesTable([[1]], [["ro"]], [[12]], [[10]], [[1]], fixed, [[0.1]]);
    expect(table[1]?.[4]).toBe(100);
    expect(table[1]?.[6]).toMatchObject({
      code: "#N/A",
      message: "A margin of error needs at least 2 plots. You have 1.",
    });
  });
});

describe("PLOTTABLE", () => {
  it("has a row for every plot in the order of the list, the empty one with zeros", () => {
    const table = plotTable(
      [[7], ["b"], [7]],
      [[12], [14], [16]],
      [[100], [50], [""]],
      [["B"], [3], [7]],
      fixed,
      [[0.1]],
      [[1], [2], [0.5]],
    );
    expect(table[0]).toEqual(["Plot", "Trees tallied", "Trees per ac", "Basal area ft2/ac", "Volume per ac"]);
    expect(table.map((row) => [row[0], row[1], row[2], row[4]] as unknown[]).slice(1)).toEqual([
      ["B", 2, 20, 1000],
      [3, 0, 0, 0],
      [7, 1.5, 15, 1000],
    ]);
    expect(table[1]?.[3]).toBeCloseTo((20 * Math.PI * 196) / 576, 9);
  });

  it("averages to the summary", () => {
    const table = plotTable(plot, dbh, volume, plots, point, [[10]]);
    const summary = standSummary(plot, dbh, plots, point, [[10]], volume);
    for (const [from, to] of [
      [2, 1],
      [3, 2],
      [4, 4],
    ] as const) {
      expect(numbersBelow(table, from).reduce((sum, one) => sum + one, 0) / 4).toBeCloseTo(
        summary[to]?.[1] as number,
        9,
      );
    }
  });
});
