import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { OutOfRange } from "../../../../src/core/basis/problem";
import { boardFeet } from "../../../../src/core/basis/units";
import { internationalEighth } from "../../../../src/core/log/rules/internationalEighth";
import { internationalQuarter } from "../../../../src/core/log/rules/internationalQuarter";
import { numberIn, published } from "../../../support/published";
import { log, printedLog } from "../printedLog";

/** The words of the statutes, section by section: an independent way to the same figure. */
function bySections(diameter: number, length: number): number {
  let sum = 0;
  let top = diameter;
  for (let left = length; left > 0; left -= 4) {
    sum += (top * top * 0.22 - 0.71 * top) * 0.904762 * Math.min(1, left / 4);
    top += 0.5;
  }
  return sum;
}

const logs = [fc.double({ min: 3.3, max: 60, noNaN: true }), fc.double({ min: 0.1, max: 80, noNaN: true })] as const;

describe("International 1/4", () => {
  it("is the sum of the 4-ft sections of Michigan 290.401 and Massachusetts c. 96 s. 11A", () => {
    fc.assert(
      fc.property(...logs, (diameter, length) => {
        const expected = bySections(diameter, length);
        return Math.abs(internationalQuarter.scale(log(diameter, length)) - expected) <= 1e-9 * (1 + expected);
      }),
    );
  });

  it.each([
    ["internationalQuarter.csv", 126, ["15x16 160", "17x14 180", "21x8 155"]], // read
    ["internationalQuarter.weak.csv", 6, []], // a weak copy
    ["internationalQuarter.recalled.csv", 14, ["34x16 875", "37x16 1035"]], // from memory
  ])("rounded to 5 bf is %s, %i cells, but for the ones that bear a reason: %j", (file, count, misses) => {
    const { rows } = published(`log/${file}`);
    expect(rows).toHaveLength(count);
    const differing = rows.filter(
      (row) => internationalQuarter.round(internationalQuarter.scale(printedLog(row))) !== numberIn(row, "volume"),
    );
    expect(differing.map((row) => `${row["diameter"]}x${row["length"]} ${row["volume"]}`)).toEqual(misses);
    expect(rows.filter((row) => row["reason"])).toEqual(differing);
  });
});

describe("the three cells of a printed table that round otherwise", () => {
  const { rows } = published("log/internationalQuarter.csv");
  const toHalf = (volume: number) => Math.round(2 * volume) / 2;
  const differing = (figure: (row: (typeof rows)[number]) => number) =>
    rows
      .filter((row) => 5 * Math.floor(figure(row) / 5 + 0.5) !== numberIn(row, "volume"))
      .map((row) => `${row["diameter"]}x${row["length"]}`);

  it("lie less than a quarter board foot short of the half at which 5 bf more begin", () => {
    for (const row of rows.filter(({ reason }) => reason)) {
      const short = numberIn(row, "volume") - 2.5 - internationalQuarter.scale(printedLog(row));
      expect(short).toBeGreaterThan(0);
      expect(short).toBeLessThan(0.25);
    }
  });

  it("come out as printed by rounding to half a board foot on the way, but then two other cells do not", () => {
    const onTheWay = (row: (typeof rows)[number]) =>
      toHalf(0.904762 * toHalf(internationalEighth.scale(printedLog(row))));
    expect(differing(onTheWay)).toEqual(["12x6", "16x6"]);
    expect(differing((row) => internationalQuarter.scale(printedLog(row)))).toEqual(["15x16", "17x14", "21x8"]);
  });
});

describe("International 1/8", () => {
  const formulas = published("log/eighthInchFormulas.csv");

  it.each(formulas.rows)("is the formula that Larsen prints for $length ft", (row) => {
    for (let diameter = 4; diameter <= 40; diameter += 1) {
      const printed =
        numberIn(row, "squared") * diameter ** 2 + numberIn(row, "linear") * diameter + numberIn(row, "constant");
      expect(internationalEighth.scale(log(diameter, numberIn(row, "length")))).toBeCloseTo(printed, 9);
    }
  });

  it("rounds to whole board feet, half up", () => {
    expect([71.44, 71.5].map((volume) => internationalEighth.round(boardFeet(volume)))).toEqual([71, 72]);
  });

  it("is the 1/4-inch rule before its factor for the wider kerf", () => {
    fc.assert(
      fc.property(...logs, (diameter, length) => {
        const ratio =
          internationalQuarter.scale(log(diameter, length)) / internationalEighth.scale(log(diameter, length));
        return Math.abs(ratio - 0.904762) < 1e-9;
      }),
    );
  });
});

describe.each([internationalQuarter, internationalEighth])("$title", (rule) => {
  it("refuses a log whose topmost section would hold less than nothing", () => {
    expect(rule.scale(log(0.71 / 0.22 + 1e-6, 4))).toBeGreaterThanOrEqual(0);
    expect(() => rule.scale(log(3.2, 16))).toThrow(OutOfRange);
    expect(() => rule.scale(log(3.2, 16))).toThrow(`${rule.title} as published has no value for 3.2 in x 16 ft.`);
  });
});
