import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { InvalidInput } from "../../../src/core/basis/problem";
import { feet, inches } from "../../../src/core/basis/units";
import { cubicFormulas } from "../../../src/core/log/cubic";
import type { MeasuredLog } from "../../../src/core/log/cubic/cubicFormula";
import { cone } from "../../../src/core/log/cubic/cone";
import { huber } from "../../../src/core/log/cubic/huber";
import { neiloid } from "../../../src/core/log/cubic/neiloid";
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
  expect(newton.volume(log(10, 11, 12, 16))).toBeCloseTo(cone.volume(log(10, 11, 12, 16)), 9);
});

/** A log of so many thin discs, whose diameter at each share of the length is told. */
function summedDiscs(diameterAt: (share: number) => number, length: number): number {
  const discs = 20_000;
  let volume = 0;
  for (let i = 0; i < discs; i += 1) volume += (Math.PI / 576) * diameterAt((i + 0.5) / discs) ** 2 * (length / discs);
  return volume;
}

it("each solid is what its discs add up to: even growth a cone, growth of the 3/2 power a neiloid", () => {
  for (const [small, large] of [
    [10, 12],
    [14, 18],
    [8, 20],
  ] as const) {
    const grown = (power: number) => (share: number) =>
      (small ** (1 / power) + share * (large ** (1 / power) - small ** (1 / power))) ** power;
    expect(cone.volume(log(small, NaN, large, 16))).toBeCloseTo(summedDiscs(grown(1), 16), 5);
    expect(neiloid.volume(log(small, NaN, large, 16))).toBeCloseTo(summedDiscs(grown(3 / 2), 16), 5);
    expect(smalian.volume(log(small, NaN, large, 16))).toBeCloseTo(summedDiscs(grown(1 / 2), 16), 5);
  }
});

it("a neiloid holds no more than a cone, and a cone no more than Smalian has it", () => {
  const across = fc.double({ min: 1, max: 60, noNaN: true });
  fc.assert(
    fc.property(across, across, (one, other) => {
      const measured = log(one, NaN, other, 16);
      const [least, middle, most] = [neiloid, cone, smalian].map((formula) => formula.volume(measured));
      return least! <= middle! + 1e-9 && middle! <= most! + 1e-9;
    }),
  );
});

it("Huber and Newton ask for the middle by name; the others do without", () => {
  const ends = { smallEnd: inches(10), largeEnd: inches(12), length: feet(16) };
  expect(smalian.volume(ends)).toBeCloseTo(10.646508, 6);
  for (const formula of [cone, neiloid]) expect(formula.volume(ends)).toBeGreaterThan(10);
  for (const formula of [huber, newton]) {
    expect(() => formula.volume(ends)).toThrow(`${formula.title} needs the diameter at the middle of the log too.`);
  }
});
