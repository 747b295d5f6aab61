import { describe, expect, it } from "vitest";
import { OutOfRange } from "../../../../src/core/basis/problem";
import { boardFeet } from "../../../../src/core/basis/units";
import { scribnerDecimalC } from "../../../../src/core/log/rules/scribnerDecimalC";
import { numberIn, published } from "../../../support/published";
import { log } from "../printedLog";

const scale = (diameter: number, length: number) => scribnerDecimalC.scale(log(diameter, length));

describe("entering the table", () => {
  it("takes the nearest inch, an exact half at the lower one", () => {
    expect(scale(14.4, 16)).toBe(110);
    expect(scale(14.5, 16)).toBe(110);
    expect(scale(14.51, 16)).toBe(140);
    expect(scale(5.51, 8)).toBe(5);
  });

  it("drops a length to the next lower even foot", () => {
    expect(scale(14, 15.9)).toBe(100);
    expect(scale(14, 15)).toBe(100);
    expect(scale(14, 21.9)).toBe(140);
  });

  it("takes a measure converted from metric for the one it was", () => {
    for (let foot = 6; foot <= 20; foot += 2)
      expect(scale(20, (foot * 0.3048) / 0.3048), `${foot} ft`).toBe(scale(20, foot));
    expect(scale(14.500_000_000_000_002, 15.999_999_999_999_998)).toBe(110);
  });

  it.each([
    [5.5, 16],
    [40.6, 16],
    [14, 5.9],
    [14, 22],
  ])("has no value for %f in x %f ft", (diameter, length) => {
    expect(() => scale(diameter, length)).toThrow(OutOfRange);
    expect(() => scale(diameter, length)).toThrow(
      `Scribner Decimal C as published has no value for ${diameter} in x ${length} ft.`,
    );
  });
});

it("rounds a net scale to tens, and to 5 bf below ten, as the table has it", () => {
  expect([2, 3, 5, 8, 14, 15, 104.5].map((volume) => scribnerDecimalC.round(boardFeet(volume)))).toEqual([
    0, 5, 5, 10, 10, 20, 100,
  ]);
});

describe("against the per-foot factors of the Northwest (from memory), another table of the same rule", () => {
  const factors = published("log/northwestFactors.csv");
  const byFactor = (diameter: number, length: number) => {
    const row = factors.rows.find((one) => numberIn(one, "diameter") === diameter);
    if (!row) throw new Error(`no factor for ${diameter} in`);
    return 10 * Math.floor((numberIn(row, length < 16 ? "to15" : "to31") * length) / 10 + 0.5);
  };

  it("the factors give 20 bf in 25 of the 44 cells of 5 to 8 in by 10 to 20 ft, as Hart 2018 counts them", () => {
    const cells = [5, 6, 7, 8].flatMap((diameter) => Array.from({ length: 11 }, (_, i) => byFactor(diameter, 10 + i)));
    expect(cells).toHaveLength(44);
    expect(cells.filter((volume) => volume === 20)).toHaveLength(25);
  });

  it("the two tables agree in 266 of 280 cells, all of the 16-ft column among them", () => {
    const differing: string[] = [];
    for (let diameter = 6; diameter <= 40; diameter += 1) {
      for (let length = 6; length <= 20; length += 2) {
        if (scale(diameter, length) !== byFactor(diameter, length)) differing.push(`${diameter}x${length}`);
      }
    }
    expect(differing).toEqual(
      "6x6 6x8 6x14 7x6 8x20 9x10 9x20 10x12 20x6 21x6 23x10 24x8 29x8 38x8".split(" "), // the half units, or 10 bf
    );
  });
});
