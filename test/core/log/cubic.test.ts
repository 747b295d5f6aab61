import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { InvalidInput } from "../../../src/core/basis/problem";
import { feet, inches } from "../../../src/core/basis/units";
import { cubicFormulas } from "../../../src/core/log/cubic";
import type { MeasuredLog } from "../../../src/core/log/cubic/cubicFormula";
import { newton } from "../../../src/core/log/cubic/newton";
import { smalian } from "../../../src/core/log/cubic/smalian";
import { expectAsPrinted } from "../../support/expectAsPrinted";
import { numberIn, published } from "../../support/published";

const table = published("log/cubic.csv");
const log = (smallEnd: number, middle: number, largeEnd: number, length: number): MeasuredLog => ({
  smallEnd: inches(smallEnd),
  middle: inches(middle),
  largeEnd: inches(largeEnd),
  length: feet(length),
});

describe.each(cubicFormulas)("$title", (formula) => {
  it.each(table.rows)(`$smallEnd, $middle, $largeEnd in x $length ft, ${table.standing}`, (row) => {
    const [smallEnd, middle, largeEnd, length] = ["smallEnd", "middle", "largeEnd", "length"].map((of) =>
      numberIn(row, of),
    );
    expectAsPrinted(
      formula.volume(log(smallEnd!, middle!, largeEnd!, length!)),
      numberIn(row, formula.id),
      table.printedTo,
    );
  });

  it("is exact for a cylinder", () => {
    const cylinder = (Math.PI / 4) * (14 / 12) ** 2 * 16; // ft3
    expect(formula.volume(log(14, 14, 14, 16))).toBeCloseTo(cylinder, 9);
  });

  it("is proportional to length and to the square of the diameters", () => {
    fc.assert(
      fc.property(fc.double({ min: 1.1, max: 9, noNaN: true }), (times) => {
        const [one, longer, thicker] = [
          log(10, 11, 12, 16),
          log(10, 11, 12, 16 * times),
          log(10 * times, 11 * times, 12 * times, 16),
        ];
        expect(formula.volume(longer)).toBeCloseTo(formula.volume(one) * times, 6);
        expect(formula.volume(thicker)).toBeCloseTo(formula.volume(one) * times ** 2, 6);
      }),
    );
  });

  it("refuses a length of 0", () => {
    expect(() => formula.volume(log(10, 11, 12, 0))).toThrow(InvalidInput);
  });
});

it("Newton is exact for a cone, whose middle is the mean of its ends", () => {
  const area = (diameter: number) => (Math.PI / 576) * diameter ** 2;
  const cone = ((area(10) + Math.sqrt(area(10) * area(12)) + area(12)) / 3) * 16;
  expect(newton.volume(log(10, 11, 12, 16))).toBeCloseTo(cone, 9);
});

it("only Smalian does without the middle; the others ask for it by name", () => {
  const ends = { smallEnd: inches(10), largeEnd: inches(12), length: feet(16) };
  expect(smalian.volume(ends)).toBeCloseTo(10.646508, 6);
  for (const formula of cubicFormulas.filter((one) => one !== smalian)) {
    expect(() => formula.volume(ends)).toThrow(`${formula.title} needs the diameter at the middle of the log too.`);
  }
});
