import { describe, expect, it } from "vitest";
import { northwestFactors } from "../../../src/core/reference/northwestFactors";
import { scribnerNorthwestFactors } from "../../../src/core/log/rules/scribnerNorthwestFactors";
import { numberIn, published } from "../../support/published";
import { log } from "./printedLog";

const { rows, groups, smallestDiameter } = northwestFactors;
const scale = (diameter: number, length: number) => scribnerNorthwestFactors.scale(log(diameter, length));

describe("the factors", () => {
  const copied = published("log/northwestFactors.csv").rows;

  it("are those written down beside the tests, 50 rows of three", () => {
    expect(rows).toHaveLength(50);
    expect(rows.map((row, i) => [i + smallestDiameter, ...row])).toEqual(
      copied.map((row) => ["diameter", "to15", "to31", "to40"].map((of) => numberIn(row, of))),
    );
  });

  it("never fall with the diameter, and differ by length from 6 to 11 in only", () => {
    for (const [i, row] of rows.entries()) {
      expect(row).toHaveLength(groups.length);
      for (const [group, factor] of row.entries()) expect(factor).toBeGreaterThanOrEqual(rows[i - 1]?.[group] ?? 0);
      const inch = i + smallestDiameter;
      expect(new Set(row).size > 1, `${inch} in`).toBe(inch >= 6 && inch <= 11);
    }
  });
});

describe("Scribner Decimal C by the factors", () => {
  it("gives 20 bf in 25 of the 44 logs of 5 to 8 in by 10 to 20 ft, as Hart 2018 counts them", () => {
    const cells = [5, 6, 7, 8].flatMap((diameter) => Array.from({ length: 11 }, (_, i) => scale(diameter, 10 + i)));
    expect(cells).toHaveLength(44);
    expect(cells.filter((volume) => volume === 20)).toHaveLength(25);
  });

  it("passes from one group of lengths to the next at 16 and 32 ft", () => {
    expect([15.9, 16, 31.9, 32].map((length) => scale(6, length))).toEqual([20, 20, 40, 50]); // 17.4, 20.0, 38.7, 50.2
  });

  it.each([
    [0.9, 16],
    [51, 16],
    [12, 0.5],
    [12, 41],
  ])("has no value for %f in x %f ft", (diameter, length) => {
    expect(() => scale(diameter, length)).toThrow(
      `Scribner Decimal C by Northwest factors (from memory) as published has no value for ${diameter} in x ${length} ft.`,
    );
  });
});
