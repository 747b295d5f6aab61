import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { chosen } from "../../../src/core/basis/choices";
import { densityMeasures } from "../../../src/core/cruise/densities";
import { reineke, reinekeBySummation } from "../../../src/core/cruise/densities/reineke";
import { relativeDensity } from "../../../src/core/cruise/densities/relativeDensity";
import { uplandOakStocking } from "../../../src/core/cruise/densities/uplandOakStocking";
import { standDensity } from "../../../src/core/cruise/standDensity";
import { answersOf } from "../../support/answers";
import { fourPointLines } from "../../support/cruises";
import { expectAsPrinted } from "../../support/expectAsPrinted";
import { numberIn, published } from "../../support/published";

/** Trees per acre that make a basal area at a mean diameter. */
const treesFor = (basalArea: number, diameter: number) => basalArea / ((Math.PI * diameter ** 2) / 576);
const alike = (trees: number, dbh: number) => ({ trees: [trees], dbh: [dbh] });

describe("worked stand densities", () => {
  const table = published("cruise/stand-densities.csv");
  it.each(table.rows)("$measure $value, as in $where", (row) => {
    const diameter = numberIn(row, "quadratic mean diameter");
    const trees = row.trees ? numberIn(row, "trees") : treesFor(numberIn(row, "basal area"), diameter);
    const measure = chosen("Measure", row.measure, densityMeasures);
    expectAsPrinted(standDensity(alike(trees, diameter), measure), numberIn(row, "value"), table.printedTo);
  });

  it("the cruise of four points has those that were worked out apart", () => {
    const answer = answersOf("cruise/constructed-four-points-answers.csv");
    const dbh = fourPointLines.map((line) => line.dbh);
    const stand = { dbh, trees: dbh.map((one) => treesFor(10, one) / 4) };
    for (const measure of [reineke, reinekeBySummation]) {
      const { printed, printedTo } = answer(measure.title);
      expectAsPrinted(standDensity(stand, measure), printed, printedTo);
    }
  });
});

describe("upland oak stocking, with its recalled coefficients", () => {
  const table = published("cruise/upland-oak-stocking.csv");
  it.each(table.rows)("$trees trees and $basalArea ft2/ac: $stocking %, as read from a chart in $where", (row) => {
    const [trees, area] = [numberIn(row, "trees"), numberIn(row, "basal area")];
    const square = area / trees / (Math.PI / 576);
    // Two diameters about a mean half an inch below the quadratic mean
    const middle = Math.sqrt(square) - 0.5;
    const spread = Math.sqrt(square - middle ** 2);
    const stand = { dbh: [middle - spread, middle + spread], trees: [trees / 2, trees / 2] };
    expectAsPrinted(standDensity(stand, uplandOakStocking), numberIn(row, "stocking"), table.printedTo);
  });

  it("is 100 % at 207.6 trees of 10 in, 0.4817 % a tree, as worked out apart", () => {
    expectAsPrinted(standDensity(alike(1, 10), uplandOakStocking), 0.4817, 0.0001);
    expectAsPrinted(100 / standDensity(alike(1, 10), uplandOakStocking), 207.6, 0.1);
  });

  it("is 2 percent over the one printed answer of Larsen's page, 86.0313, which the charts do not bear out", () => {
    // 200 trees, 100 ft2/ac; with mean diameter 0.517 in below the quadratic mean, as its answer implies
    const square = 0.5 / (Math.PI / 576);
    const middle = Math.sqrt(square) - 0.517;
    const spread = Math.sqrt(square - middle ** 2);
    const stand = { dbh: [middle - spread, middle + spread], trees: [100, 100] };
    expectAsPrinted(standDensity(stand, uplandOakStocking), 87.87, 0.02);
  });

  it("owns up to being from memory", () => {
    expect(uplandOakStocking.sources.map(({ standing }) => standing)).toContain("from memory");
  });
});

describe("densities", () => {
  const stand = fc
    .array(fc.tuple(fc.double({ min: 1, max: 40, noNaN: true }), fc.integer({ min: 1, max: 200 })), {
      minLength: 1,
      maxLength: 20,
    })
    .map((rows) => ({ dbh: rows.map(([dbh]) => dbh), trees: rows.map(([, trees]) => trees) }));

  it("SDI by summation is never above SDI, and the same where all trees are alike", () => {
    fc.assert(
      fc.property(stand, (one) => {
        expect(standDensity(one, reinekeBySummation)).toBeLessThanOrEqual(standDensity(one, reineke) * (1 + 1e-12));
      }),
    );
    expect(standDensity(alike(130, 8), reinekeBySummation)).toBeCloseTo(standDensity(alike(130, 8), reineke), 9);
  });

  it("double with the trees, whichever measure", () => {
    fc.assert(
      fc.property(stand, (one) => {
        const twice = { ...one, trees: one.trees.map((trees) => 2 * trees) };
        for (const measure of densityMeasures)
          expect(standDensity(twice, measure)).toBeCloseTo(2 * standDensity(one, measure), 6);
      }),
    );
  });

  it("refuse what is no stand", () => {
    for (const measure of densityMeasures) {
      expect(() => standDensity({ dbh: [], trees: [] }, measure)).toThrow("Nothing to work on yet.");
      expect(() => standDensity(alike(100, 0), measure)).toThrow("DBH should be above 0 in.");
      expect(() => standDensity(alike(-1, 10), measure)).toThrow("Trees per acre should be 0 or more.");
    }
    expect(standDensity(alike(1, 10), relativeDensity)).toBeGreaterThan(0);
  });
});
