import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { defectKinds } from "../../src/core/log/defects";
import { diameterRoundings } from "../../src/core/log/diameterRounding";
import {
  defectPercent,
  DefectKindName,
  DiameterRoundingName,
  scalingDiameter,
  scalingLength,
  ScalingUnits,
  totalDeduction,
} from "../../src/functions/scaling";
import { LogDiameterRounding, logScale, LogRuleName } from "../../src/functions/logs";
import { expectAsPrinted } from "../support/expectAsPrinted";
import { numberIn, published } from "../support/published";

const none = null as never;
const problem = (code: string, message: string) => expect.objectContaining({ code, message }) as unknown;
const one = (cells: unknown[][]) => cells[0]?.[0];

describe("the texts that Excel offers", () => {
  it("are those of the lists in core", () => {
    const roundings = diameterRoundings.map(({ title }) => title);
    expect(Object.values(DiameterRoundingName)).toEqual(roundings);
    expect(Object.values(LogDiameterRounding)).toEqual(roundings);
    expect(Object.values(DefectKindName)).toEqual(defectKinds.map(({ title }) => title));
  });
});

describe("SCALINGDIAMETER", () => {
  it("averages two readings and drops the half: 8 and 13 in are 10 (Idaho contest rules)", () => {
    expect(scalingDiameter([[8]], [[13]])).toEqual([[10]]);
    expect(scalingDiameter([[8]], [[13]], DiameterRoundingName.halfUp)).toEqual([[11]]);
    expect(scalingDiameter([[8]], [[13]], DiameterRoundingName.none)).toEqual([[10.5]]);
    expect(scalingDiameter([[10.9]], none, DiameterRoundingName.alwaysDown)).toEqual([[10]]);
  });

  it("goes down the column by turns, and asks for the whole column", () => {
    const halves = [[10.5], [""], [12], [12.5], [14.5]];
    expect(scalingDiameter(halves, none, DiameterRoundingName.halfAlternate)).toEqual([[11], [""], [12], [12], [15]]);
    expect(() => scalingDiameter([[10.5]], none, DiameterRoundingName.halfAlternate)).toThrow("the whole column");
  });

  it("takes a reading alone where the second is blank, and rounds centimetres under metric", () => {
    expect(scalingDiameter([[10.4], [10.4]], [[""], [12]])).toEqual([[10], [11]]);
    expect(scalingDiameter([[25.5]], none, none, ScalingUnits.metric)).toEqual([[25]]);
    expect(scalingDiameter([[1.5]], none, none, ScalingUnits.metric)).toEqual([
      [problem("#VALUE!", "Diameter 1 should be between 2.54 and 304.8 cm. You have 1.5.")],
    ]);
    expect(() => scalingDiameter([[10]], none, "Up" as never)).toThrow(
      'Rounding should be one of: None, Half up, Half down, Half alternate, Always down. You have "Up".',
    );
  });
});

describe("SCALINGLENGTH", () => {
  it("takes trim off and drops to the step", () => {
    expect(scalingLength([[16.5], [""], [14.2]], 0.33, 2)).toEqual([[16], [""], [12]]);
    expect(scalingLength([[16.5]])).toEqual([[16]]);
    expect(scalingLength([[5.17]], 0.1, none, ScalingUnits.metric)).toEqual([[5]]);
  });

  it("says in feet what trim should be, and when nothing is left", () => {
    expect(() => scalingLength([[16.5]], 4)).toThrow("Trim should be between 0 and 2 ft. You have 4.");
    expect(scalingLength([[1.5]], 0.33, 2)).toEqual([
      [problem("#N/A", "A log of 1.5 ft has no whole step of 2 ft beyond its trim of 0.33 ft.")],
    ]);
  });
});

describe("DEFECTPERCENT", () => {
  const table = published("log/defects.csv");
  const cell = (row: (typeof table.rows)[number], of: string, factor = 1) =>
    row[of] ? [[numberIn(row, of) * factor]] : none;

  it.each(table.rows)("$kind in $diameter in x $length ft takes $percent %, in inches and in centimetres", (row) => {
    const isAngle = row["kind"] === "Sector";
    const [across, along] = [2.54, 0.3048];
    const imperial = defectPercent(
      row["kind"] as DefectKindName,
      [[numberIn(row, "diameter")]],
      [[numberIn(row, "length")]],
      cell(row, "affectedLength"),
      cell(row, "size"),
      cell(row, "width"),
    );
    const metric = defectPercent(
      row["kind"] as DefectKindName,
      [[numberIn(row, "diameter") * across]],
      [[numberIn(row, "length") * along]],
      cell(row, "affectedLength", along),
      cell(row, "size", isAngle ? 1 : across),
      cell(row, "width", across),
      ScalingUnits.metric,
    );
    expectAsPrinted(one(imperial) as number, numberIn(row, "percent"), table.printedTo);
    expect(one(metric)).toBeCloseTo(one(imperial) as number, 9);
  });

  it("is a blank for a sound log, and tells what a kind lacks in its own cell, in the user's unit", () => {
    expect(defectPercent(none, [[12], [14]], [[16]])).toEqual([[""], [""]]);
    expect(defectPercent("sweep" as never, [[12], [12]], [[16]], none, [[5], [""]])).toEqual([
      [25],
      [problem("#VALUE!", "Sweep needs a number for departure (in), but the cell is blank.")],
    ]);
    expect(one(defectPercent(DefectKindName.crook, [[30]], [[5]], [[6]], [[4]], none, ScalingUnits.metric))).toEqual(
      problem("#VALUE!", "Affected length should be at most the length of the log, 5 m. You have 6."),
    );
    expect(() => defectPercent("Knots" as never, [[12]], [[16]])).toThrow(
      'Kind should be one of: Section, Sector, Sweep, Crook, Interior. You have "Knots".',
    );
  });

  it("goes into LOGSCALE as it comes: a deduction of every kind and size", () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 120, noNaN: true }), (size) => {
        const lost = defectPercent(DefectKindName.sweep, [[14]], [[16]], none, [[size]]);
        const net = one(logScale([[14]], [[16]], LogRuleName.doyle, lost));
        return size === 0 || (typeof net === "number" && net >= 0 && net <= 100);
      }),
    );
  });
});

describe("TOTALDEDUCTION", () => {
  it("adds, cell by cell, up to the whole log", () => {
    expect(totalDeduction([[15], [""], [60]], [[10], [5], [50]], [[""], [""], [""]])).toEqual([[25], [5], [100]]);
    expect(totalDeduction([[0.15]])).toEqual([
      [problem("#VALUE!", "Deduction is 0.15: 0.15 %, or 15 %? Type 15 for 15 %; below 1 % nothing is deducted.")],
    ]);
  });
});
