import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { InvalidInput } from "../../../src/core/basis/problem";
import { inches, percent } from "../../../src/core/basis/units";
import { driedSize, flat, grains, quarter } from "../../../src/core/lumber/driedSize";
import { findWood, woods } from "../../../src/core/lumber/wood";
import { expectAsPrinted } from "../../support/expectAsPrinted";
import { numberIn, published } from "../../support/published";

const dried = (size: number, shrinkage: number, from: number, to: number) =>
  driedSize(inches(size), percent(shrinkage), percent(from), percent(to));

describe("from green to ovendry", () => {
  const { rows, printedTo, source } = published("lumber/shrinkage.csv");

  it.each(rows)(`$species loses $radial % across and $tangential % along the rings, as in ${source}`, (row) => {
    const wood = findWood(row.name ?? "");
    const lost = (shrinkage: number) => 100 - dried(100, shrinkage, 80, 0);
    expectAsPrinted(lost(quarter.shrinkageOf(wood)), numberIn(row, "radial"), printedTo);
    expectAsPrinted(lost(flat.shrinkageOf(wood)), numberIn(row, "tangential"), printedTo);
  });
});

describe("one percent of moisture from 10 % on", () => {
  const { rows, printedTo, source } = published("lumber/changeCoefficients.csv");
  const CUT_OFF = "Sycamore, American"; // its tangential figure is printed cut off, not rounded

  it.each(rows)(`$species swells by $radial coefficient and $tangential coefficient, as in ${source}`, (row) => {
    const swollen = (column: string) => dried(1, numberIn(row, column), 10, 11) - 1;
    const tangentialStep = row.species === CUT_OFF ? 2 * printedTo : printedTo;
    expectAsPrinted(swollen("radial"), numberIn(row, "radial coefficient"), printedTo);
    expectAsPrinted(swollen("tangential"), numberIn(row, "tangential coefficient"), tangentialStep);
  });
});

it("takes 6.31 %, 0.505 in, from 8 in of flat-sawn northern red oak that dries from green to 8 % (by hand)", () => {
  const after = dried(8, findWood("northern red oak").tangential, 83, 8);
  expectAsPrinted(100 * (1 - after / 8), 6.31, 0.01);
  expectAsPrinted(8 - after, 0.505, 0.001);
  expectAsPrinted(8 - dried(8, findWood("yellow-poplar").tangential, 95, 8), 0.481, 0.001);
});

describe.each(grains)("$title grain of any wood", (grain) => {
  const wood = fc.constantFrom(...woods).map((one) => grain.shrinkageOf(one));
  const moisture = fc.double({ min: 0, max: 150, noNaN: true });
  const size = fc.double({ min: 0.1, max: 50, noNaN: true });

  it("does not change where the moisture does not, nor above fibre saturation", () => {
    fc.assert(
      fc.property(size, wood, moisture, (before, shrinkage, at) => {
        expect(dried(before, shrinkage, at, at)).toBeCloseTo(before, 9);
        expect(dried(before, shrinkage, 30 + at, 30)).toBeCloseTo(before, 9);
      }),
    );
  });

  it("swells back to what it was, and never grows by drying", () => {
    fc.assert(
      fc.property(size, wood, moisture, moisture, (before, shrinkage, from, to) => {
        expect(dried(dried(before, shrinkage, from, to), shrinkage, to, from)).toBeCloseTo(before, 9);
        if (to <= from) expect(dried(before, shrinkage, from, to)).toBeLessThanOrEqual(before * (1 + 1e-12));
      }),
    );
  });
});

it("refuses a size of 0, a shrinkage over 50 % and a moisture below 0", () => {
  expect(() => dried(0, 8, 30, 8)).toThrow(InvalidInput);
  expect(() => dried(8, 51, 30, 8)).toThrow("Shrinkage should be between 0 and 50 %. You have 51.");
  expect(() => dried(8, 8, -1, 8)).toThrow("Moisture content should be between 0 and 300 %. You have -1.");
  expect(() => dried(8, 8, 30, NaN)).toThrow(InvalidInput);
});
