import { describe, expect, it } from "vitest";
import { OutOfRange } from "../../../src/core/basis/problem";
import { feet, inches } from "../../../src/core/basis/units";
import { cardRule } from "../../../src/core/log/scaleCard";
import { scribnerDecimalC } from "../../../src/core/log/rules/scribnerDecimalC";
import { numberIn, published } from "../../support/published";
import { log, printedLog } from "./printedLog";

/** A printed table as a card. */
function cardOf(file: string) {
  const { rows } = published(file);
  const headings = (of: string) => [...new Set(rows.map((row) => numberIn(row, of)))].sort((a, b) => a - b);
  const [diameters, lengths] = [headings("diameter"), headings("length")];
  const cell = (diameter: number, length: number) => {
    const row = rows.find((one) => numberIn(one, "diameter") === diameter && numberIn(one, "length") === length);
    return row && numberIn(row, "volume");
  };
  const volumes = diameters.map((diameter) => lengths.map((length) => cell(diameter, length)));
  return { rows, rule: cardRule({ diameters: diameters.map(inches), lengths: lengths.map(feet), volumes }) };
}

describe.each(["log/doyle.csv", "log/scribnerDecimalC.csv", "log/internationalQuarter.csv"])("the card %s", (file) => {
  const { rows, rule } = cardOf(file);

  it("gives every cell as it is printed", () => {
    for (const row of rows) expect(rule.scale(printedLog(row))).toBe(numberIn(row, "volume"));
  });

  it("drops a length to the next lower column", () => {
    expect(rule.scale(log(12, 15.9))).toBe(rule.scale(log(12, 14)));
    expect(rule.scale(log(12, 16))).toBe(rule.scale(log(12, 16.5)));
  });
});

describe("reading a card", () => {
  const { rule: wholeInches } = cardOf("log/scribnerDecimalC.csv"); // 6 to 20 in, 6 to 16 ft
  const { rule: evenInches } = cardOf("log/doyle.csv"); // 8 to 36 in by 2, 8 to 20 ft

  it("takes the nearest row, half way the lower one, whatever the step of the card", () => {
    expect([14.5, 14.51].map((diameter) => wholeInches.scale(log(diameter, 16)))).toEqual([110, 140]);
    expect([13, 13.01, 15, 15.01].map((diameter) => evenInches.scale(log(diameter, 16)))).toEqual([64, 100, 100, 144]);
  });

  it("has no value where the next row or column would be read", () => {
    expect(wholeInches.scale(log(20.5, 17.9))).toBe(280);
    expect(wholeInches.scale(log(5.51, 6))).toBe(5);
    for (const [diameter, length] of [
      [20.51, 16],
      [5.5, 6],
      [12, 18],
      [12, 5.9],
    ] as const) {
      expect(() => wholeInches.scale(log(diameter, length))).toThrow(OutOfRange);
      expect(() => wholeInches.scale(log(diameter, length))).toThrow(
        `Buyer's card as published has no value for ${diameter} in x ${length} ft.`,
      );
    }
  });

  it("reads a printed table as the rule of that table does", () => {
    for (let diameter = 5.6; diameter < 20.5; diameter += 0.1)
      for (let length = 6; length < 18; length += 0.7)
        expect(wholeInches.scale(log(diameter, length))).toBe(
          scribnerDecimalC.scale(log(diameter, Math.min(length, 16))),
        );
  });

  it("knows a card of one row and one column by whole steps", () => {
    const one = cardRule({ diameters: [inches(12)], lengths: [feet(16)], volumes: [[64]] });
    expect(one.scale(log(12.5, 16.9))).toBe(64);
    expect(() => one.scale(log(12.6, 16))).toThrow(OutOfRange);
    expect(() => one.scale(log(12, 17))).toThrow(OutOfRange);
  });

  it("says which headings do not grow, and has no value in a blank", () => {
    const diameters = [inches(12), inches(11)];
    expect(() => cardRule({ diameters, lengths: [feet(16)], volumes: [[1], [2]] })).toThrow(
      "The diameters of a card should grow. You have 11 in after 12 in.",
    );
    const blank = cardRule({ diameters: [inches(12)], lengths: [feet(16)], volumes: [[undefined]] });
    expect(() => blank.scale(log(12, 16))).toThrow(OutOfRange);
  });
});
