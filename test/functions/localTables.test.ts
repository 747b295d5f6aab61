import { describe, expect, it } from "vitest";
import { localForms } from "../../src/core/tree/local";
import { localFit, LocalFormName, localTable, localVolume } from "../../src/functions/localTables";
import { numberIn, published } from "../support/published";

const { rows } = published("tree/blackCherry.csv");
const column = (name: string, factor = 1) => rows.map((row) => [numberIn(row, name) * factor]);
const cherries = [column("dbh"), column("height"), column("volume")] as const;
const fit = localFit(...cherries);
const value = (table: unknown[][], label: string) => table.find(([name]) => name === label)?.[1] as number;
const none = null as never;

describe("LOCALFIT", () => {
  it("spills the equation, its error and its reach", () => {
    expect(fit.map(([label]) => label as string)).toEqual([
      "Local table",
      "Form",
      "Equation",
      "a",
      "b",
      "c",
      "Felled trees",
      "Mean volume",
      "Standard error of estimate",
      "Standard error pct of mean",
      "R squared",
      "Furnival index",
      "Correction for logarithms",
      "Smallest DBH in",
      "Largest DBH in",
      "Smallest height ft",
      "Largest height ft",
    ]);
    expect(value(fit, "Form")).toBe("Combined variable");
    expect(value(fit, "c")).toBe("");
    // R's lm: residual standard error 2.49300 on 29 degrees of freedom, R squared 0.97777.
    expect(value(fit, "Standard error of estimate")).toBeCloseTo(2.493, 3);
    expect(value(fit, "Standard error pct of mean")).toBeCloseTo((100 * 2.493) / 30.17097, 3);
    expect(value(fit, "R squared")).toBeCloseTo(0.97777, 5);
    expect([value(fit, "Smallest DBH in"), value(fit, "Largest height ft")]).toEqual([8.3, 87]);
  });

  it("passes over rows without all three measures, and waits for trees", () => {
    const [dbh, height, volume] = cherries.map((one) => [...one, [null], [12], [""]]) as [
      unknown[][],
      unknown[][],
      unknown[][],
    ];
    volume[32] = [null];
    expect(localFit(dbh, height, volume)).toEqual(fit);
    expect(localFit([[null]], [[null]], [[null]])).toEqual([
      ["Local table", "Value"],
      ["No trees yet", ""],
    ]);
  });

  it("names the tree that cannot be used", () => {
    expect(() => localFit([[143], [12], [14]], [[70], [60], [65]], [[20], [18], [25]])).toThrow(
      "Tree 1: DBH should be between 1 and 80 in. You have 143. Missing a decimal point?",
    );
    expect(() => localFit([[14], [12], [16]], [[70], [60], [65]], [[20], ["18 ft3"], [25]])).toThrow(
      'Tree 2: Volume needs a number, but the cell has "18 ft3". Type just the number.',
    );
    expect(() => localFit(...cherries, "Cubic" as never)).toThrow(
      'Form should be one of: Combined variable, Powers of D and H. You have "Cubic".',
    );
  });

  it("offers every form in its menu", () => {
    expect(Object.values(LocalFormName)).toEqual(localForms.map(({ title }) => title));
  });
});

describe("LOCALVOLUME", () => {
  it("is the equation, down a column, blank where nothing is measured", () => {
    expect(localVolume([[14], [null], [10]], [[75], [70], [0]], fit)).toEqual([
      [expect.closeTo(-0.297679437 + 0.00212437439 * 14 * 14 * 75, 5)],
      [""],
      [""],
    ]);
  });

  it("reads the powers too, with the correction in their first coefficient", () => {
    const powers = localFit(...cherries, LocalFormName.Powers);
    const [[volume]] = localVolume([[14]], [[75]], powers) as [[number]];
    expect(volume).toBeCloseTo(0.00132240229 * 14 ** 1.98264991 * 75 ** 1.11712333, 4);
  });

  it("gives the same in metric, from a table made in metric", () => {
    const metric = localFit(
      column("dbh", 2.54),
      column("height", 0.3048),
      column("volume", 0.0283168466),
      none,
      "metric",
    );
    const [[volume]] = localVolume([[14 * 2.54]], [[75 * 0.3048]], metric, "metric") as [[number]];
    const [[inFeet]] = localVolume([[14]], [[75]], fit) as [[number]];
    expect(volume / 0.0283168466).toBeCloseTo(inFeet, 6);
    expect(() => localVolume([[14]], [[75]], metric)).toThrow(
      'Fit should be the answer of LOCALFIT, both of its columns, in these units. It has no "Smallest DBH in".',
    );
  });

  it("ends near the felled trees, in the row, and says when there is no table", () => {
    expect(localVolume([[30], [14]], [[75], [75]], fit)).toEqual([
      [
        expect.objectContaining({
          code: "#N/A",
          message: "The felled trees of the local table have a DBH from 8.3 to 20.6. You have 30.",
        }),
      ],
      [expect.any(Number)],
    ]);
    expect(() => localVolume([[14]], [[75]], [[null, null]])).toThrow("The local table has no felled trees yet.");
    expect(() =>
      localVolume(
        [[14]],
        [[75]],
        [
          ["Local table", "Value"],
          ["No trees yet", ""],
        ],
      ),
    ).toThrow("The local table has no felled trees yet.");
    expect(() => localVolume([[14]], [[75]], [["Oak", 3]])).toThrow('It has no "Form".');
  });
});

describe("LOCALTABLE", () => {
  it("lays volumes by diameter and height over the felled sizes", () => {
    const [header, ...lines] = localTable(fit);
    expect(header).toEqual(["DBH in", "60 ft", "70 ft", "80 ft", "90 ft"]);
    expect(lines.map(([dbh]) => dbh as number)).toEqual([8, 10, 12, 14, 16, 18, 20, 22]);
    expect(lines[3]?.[2]).toBeCloseTo(-0.297679437 + 0.00212437439 * 14 * 14 * 70, 5);
  });

  it("takes other steps, and says when they do not fit", () => {
    expect(localTable(fit, 4, 15)[0]).toEqual(["DBH in", "60 ft", "75 ft", "90 ft"]);
    expect(() => localTable(fit, 0.1)).toThrow("The DBH step should be larger: this one makes 152 lines.");
    expect(() => localTable(fit, 60)).toThrow(
      "The DBH step should be smaller: no whole step falls among the felled trees.",
    );
  });
});
