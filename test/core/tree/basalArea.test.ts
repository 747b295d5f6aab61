import fc from "fast-check";
import { expect, it } from "vitest";
import { InvalidInput } from "../../../src/core/basis/problem";
import { inches } from "../../../src/core/basis/units";
import { basalArea } from "../../../src/core/tree/basalArea";
import { expectAsPrinted } from "../../support/expectAsPrinted";
import { numberIn, published } from "../../support/published";

const { rows, source } = published("cruise/baf10-tree-factors.csv");

/** Printed 2.183 at 20 in, where pi 20^2 / 576 is 2.1817: a coarser rounding on the way. */
const ROUNDED_ON_THE_WAY = 20;

it.each(rows)(`$dbh in is $basal area ft2, as in ${source}`, (row) => {
  const dbh = numberIn(row, "dbh");
  const printedTo = dbh === ROUNDED_ON_THE_WAY ? 0.003 : 0.001;
  expectAsPrinted(basalArea(inches(dbh)), numberIn(row, "basal area"), printedTo);
});

it("goes with the square of the diameter", () => {
  fc.assert(
    fc.property(fc.double({ min: 0.1, max: 100, noNaN: true }), (dbh) => {
      expect(basalArea(inches(2 * dbh))).toBeCloseTo(4 * basalArea(inches(dbh)), 9);
    }),
  );
});

it.each([0, -1, NaN, Infinity])("refuses a DBH of %s", (bad) => {
  expect(() => basalArea(inches(bad))).toThrow(InvalidInput);
});
