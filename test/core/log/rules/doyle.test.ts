import { describe, expect, it } from "vitest";
import { OutOfRange } from "../../../../src/core/basis/problem";
import { doyle } from "../../../../src/core/log/rules/doyle";
import { numberIn, published } from "../../../support/published";
import { log, printedLog } from "../printedLog";

describe("Doyle, rounded to whole board feet", () => {
  it("is every one of the 105 cells of the table read", () => {
    const { rows } = published("log/doyle.csv");
    expect(rows).toHaveLength(105);
    for (const row of rows)
      expect(doyle.round(doyle.scale(printedLog(row))), JSON.stringify(row)).toBe(numberIn(row, "volume"));
  });

  it("differs from Chase 1913 in three of 65 cells only, each of which ends in an exact half", () => {
    const { rows } = published("log/doyle.chase1913.csv");
    expect(rows).toHaveLength(65);
    const differing = rows.filter((row) => doyle.round(doyle.scale(printedLog(row))) !== numberIn(row, "volume"));
    expect(
      differing.map((row) => [row["diameter"], row["length"], row["volume"], doyle.scale(printedLog(row))]),
    ).toEqual([
      ["14", "18", "112", 112.5],
      ["18", "14", "171", 171.5],
      ["18", "18", "220", 220.5],
    ]);
  });
});

it("gives exactly 0 at the 4 in that the rule takes off", () => {
  expect(doyle.scale(log(4, 16))).toBe(0);
});

it("refuses a log thinner than its slabs rather than let the square grow again", () => {
  expect(() => doyle.scale(log(3, 16))).toThrow(OutOfRange);
  expect(() => doyle.scale(log(3, 16))).toThrow("The Doyle rule as published has no value below 4 in. You have 3.");
});
