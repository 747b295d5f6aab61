import { describe, expect, it } from "vitest";
import { OutOfRange } from "../../../../src/core/basis/problem";
import { localForms } from "../../../../src/core/tree/local";
import { combinedVariable } from "../../../../src/core/tree/local/combinedVariable";
import { fitLocalTable } from "../../../../src/core/tree/local/fitLocalTable";
import type { FelledTree } from "../../../../src/core/tree/local/localForm";
import { localVolume } from "../../../../src/core/tree/local/localVolume";
import { powersOfBoth } from "../../../../src/core/tree/local/powersOfBoth";
import { numberIn, published, type PublishedRow } from "../../../support/published";

const treeOf = (row: PublishedRow): FelledTree => ({
  dbh: numberIn(row, "dbh"),
  height: numberIn(row, "height"),
  volume: numberIn(row, "volume"),
});
const cherries = published("tree/blackCherry.csv").rows.map(treeOf);
const invented = published("tree/localTableTrees.csv").rows;
const answers = published("tree/localTableFits.csv");

const treesOf = (set: string) => (set === "0" ? cherries : invented.filter((row) => row.set === set).map(treeOf));

/** R and this project each carry some 15 digits; the squares and logarithms in between cost a few. */
const RELATIVE = 1e-8;
const expectNear = (ours: number, theirs: number, what: string) =>
  expect(Math.abs(ours - theirs), what).toBeLessThanOrEqual(RELATIVE * Math.max(Math.abs(theirs), 1e-3));

describe("a local volume table", () => {
  it.each(answers.rows.map((row) => [row.set ?? "", row.form ?? "", row] as const))(
    "of trees %s by %s is what R's lm makes of them",
    (set, title, row) => {
      const form = localForms.find((one) => one.title === title) ?? combinedVariable;
      const fit = fitLocalTable(form, treesOf(set));
      expectNear(fit.coefficients.a, numberIn(row, "a"), "a");
      expectNear(fit.coefficients.b, numberIn(row, "b"), "b");
      if (row.c !== "") expectNear(fit.coefficients.c ?? NaN, numberIn(row, "c"), "c");
      expect(fit.trees).toBe(numberIn(row, "trees"));
      expectNear(fit.meanVolume, numberIn(row, "mean"), "mean");
      expectNear(fit.standardError, numberIn(row, "error"), "standard error");
      expectNear(fit.rSquared, numberIn(row, "r2"), "R squared");
      expectNear(fit.furnivalIndex, numberIn(row, "furnival"), "Furnival index");
      expectNear(fit.correction, numberIn(row, "correction"), "correction");
    },
  );

  // The two fits of these trees as they are commonly quoted: V = -0.2977 + 0.0021244 D2H, and
  // ln V = -6.6316 + 1.9826 ln D + 1.1171 ln H.
  it("of the 31 black cherry trees has the coefficients that are quoted for them", () => {
    const plain = fitLocalTable(combinedVariable, cherries).coefficients;
    expect(plain.a).toBeCloseTo(-0.2977, 4);
    expect(plain.b).toBeCloseTo(0.0021244, 7);
    const powers = fitLocalTable(powersOfBoth, cherries);
    expect(Math.log(powers.coefficients.a / powers.correction)).toBeCloseTo(-6.6316, 4);
    expect(powers.coefficients.b).toBeCloseTo(1.98265, 4);
    expect(powers.coefficients.c).toBeCloseTo(1.1171, 4);
  });

  it("gives back a table that the trees follow without error", () => {
    const exact = (volume: (dbh: number, height: number) => number) =>
      [8, 11, 14, 17, 20].flatMap((dbh) => [50, 70].map((height) => ({ dbh, height, volume: volume(dbh, height) })));
    const plain = fitLocalTable(
      combinedVariable,
      exact((d, h) => 0.5 + 0.002 * d * d * h),
    );
    expect(plain.coefficients.a).toBeCloseTo(0.5, 9);
    expect(plain.coefficients.b).toBeCloseTo(0.002, 12);
    expect(plain.standardError).toBeLessThan(1e-9);
    expect(plain.rSquared).toBeCloseTo(1, 12);
    const powers = fitLocalTable(
      powersOfBoth,
      exact((d, h) => 0.003 * d ** 1.9 * h ** 1.05),
    );
    expect(powers.coefficients.b).toBeCloseTo(1.9, 9);
    expect(powers.coefficients.c).toBeCloseTo(1.05, 9);
    expect(powers.coefficients.a).toBeCloseTo(0.003, 9);
  });

  it("adds up to what was felled: least squares by the volume itself leaves no sum of errors", () => {
    const fit = fitLocalTable(combinedVariable, cherries);
    const sum = cherries.reduce((total, { dbh, height }) => total + localVolume(fit, dbh, height), 0);
    expect(sum).toBeCloseTo(935.3, 6);
  });

  it("needs one tree more than coefficients, of more than one size, growing with both measures", () => {
    expect(() => fitLocalTable(combinedVariable, cherries.slice(0, 2))).toThrow(
      "V = a + b D2 H needs at least 3 felled trees with DBH, height and volume. You have 2.",
    );
    expect(() => fitLocalTable(powersOfBoth, cherries.slice(0, 3))).toThrow(
      "V = a D^b H^c needs at least 4 felled trees with DBH, height and volume. You have 3.",
    );
    const alike = Array.from({ length: 6 }, (_, i) => ({ dbh: 12, height: 60, volume: 18 + i }));
    expect(() => fitLocalTable(combinedVariable, alike)).toThrow(OutOfRange);
    expect(() => fitLocalTable(powersOfBoth, alike)).toThrow(
      "The felled trees are too much alike to tell one size from another. Add other sizes.",
    );
    const falling = [10, 12, 14, 16].map((dbh) => ({ dbh, height: 60, volume: 40 - dbh }));
    expect(() => fitLocalTable(combinedVariable, falling)).toThrow(
      "By V = a + b D2 H these felled trees would hold less as they grow thicker. Check them, add other sizes, or take the other form.",
    );
  });
});

describe("reading a local table", () => {
  const fit = fitLocalTable(combinedVariable, cherries);

  it("is the equation", () => {
    expect(localVolume(fit, 14, 75)).toBeCloseTo(-0.297679437 + 0.00212437439 * 14 * 14 * 75, 6);
  });

  it("ends a tenth beyond the trees that were felled: 8.3 to 20.6 in, 63 to 87 ft", () => {
    expect(localVolume(fit, 22.6, 75)).toBeGreaterThan(0);
    expect(() => localVolume(fit, 22.7, 75)).toThrow(
      "The felled trees of the local table have a DBH from 8.3 to 20.6. You have 22.7.",
    );
    expect(() => localVolume(fit, 7.4, 75)).toThrow(OutOfRange);
    expect(() => localVolume(fit, 14, 96)).toThrow(
      "The felled trees of the local table have a height from 63 to 87. You have 96.",
    );
  });

  it("gives no volume of nothing or less", () => {
    const table = { ...fit, coefficients: { a: -20, b: 0.002 } };
    expect(() => localVolume(table, 8.5, 70)).toThrow("The local table gives nothing for a tree of 8.5 by 70.");
  });
});
