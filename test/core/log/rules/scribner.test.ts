import { describe, expect, it } from "vitest";
import { OutOfRange } from "../../../../src/core/basis/problem";
import { boardFeet } from "../../../../src/core/basis/units";
import { scribner } from "../../../../src/core/log/rules/scribner";
import { scribnerDecimalC } from "../../../../src/core/log/rules/scribnerDecimalC";
import { numberIn, published } from "../../../support/published";
import { log, printedLog } from "../printedLog";

const { rows } = published("log/scribner.csv");
const misses = rows.map((row) => Math.abs(scribner.scale(printedLog(row)) - numberIn(row, "volume")));

describe("Scribner formula against the Form Class 78 butt-log column", () => {
  it("rounds to 11 of the 31 cells; only the other 20 bear a looser tolerance, and they need it", () => {
    expect(misses.filter((miss) => miss <= 0.5)).toHaveLength(11);
    for (const [i, row] of rows.entries())
      expect((misses[i] ?? NaN) > 0.5, JSON.stringify(row)).toBe(row["tolerance"] !== "");
  });

  it("is farthest off at 28 in DBH, where it gives 329.1 for 327", () => {
    const worst = misses.indexOf(Math.max(...misses));
    expect(rows[worst]).toMatchObject({ diameter: "21.84", volume: "327" });
    expect(scribner.scale(log(21.84, 16))).toBeCloseTo(329.14, 2);
  });
});

it("rounds to whole board feet, half up", () => {
  expect([157.05, 157.5].map((volume) => scribner.round(boardFeet(volume)))).toEqual([157, 158]);
});

it("is not the Decimal C table, from which it strays by up to 41 bf in logs of 16 ft", () => {
  const apart = [6, 10, 12, 14, 20, 25, 27, 34, 36, 40].map((diameter) =>
    Math.round(scribner.scale(log(diameter, 16)) - scribnerDecimalC.scale(log(diameter, 16))),
  );
  expect(apart).toEqual([-8, -5, 6, 13, -8, -20, -32, 41, 28, -20]);
});

it("refuses a log for which the formula is below nothing, in the words of every rule", () => {
  expect(scribner.scale(log(4, 16))).toBeCloseTo(0.64, 9);
  expect(() => scribner.scale(log(3.8, 16))).toThrow(OutOfRange);
  expect(() => scribner.scale(log(3, 16))).toThrow(
    "Scribner (from memory) as published has no value for 3 in x 16 ft.",
  );
});
