import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { InvalidInput } from "../../../src/core/basis/problem";
import { inches, percent } from "../../../src/core/basis/units";
import { targetThickness, targetThicknessWorking } from "../../../src/core/lumber/targetThickness";
import { expectAsPrinted } from "../../support/expectAsPrinted";
import { expectWorking } from "../../support/expectWorking";
import { numberIn, published } from "../../support/published";

const allowances = (finished: number, shrinkage: number, planing: number, variation: number) => ({
  finished: inches(finished),
  shrinkage: percent(shrinkage),
  planing: inches(planing),
  variation: inches(variation),
});

describe.each(["lumber/targetThickness.csv", "lumber/targetThickness.computed.csv"])("%s", (file) => {
  const { rows, printedTo, source, standing } = published(file);

  it.each(rows)(`$finished in finished is set at $target in, ${standing} in ${source}`, (row) => {
    const [finished, shrinkage, planing, variation] = ["finished", "shrinkage", "planing", "variation"].map((column) =>
      numberIn(row, column),
    ) as [number, number, number, number];
    expectAsPrinted(
      targetThickness(allowances(finished, shrinkage, planing, variation)),
      numberIn(row, "target"),
      printedTo,
    );
  });
});

const anyAllowances = fc
  .tuple(
    fc.double({ min: 0.1, max: 12, noNaN: true }),
    fc.oneof(fc.constant(0), fc.double({ min: 0.2, max: 50, noNaN: true })),
    fc.double({ min: 0, max: 1, noNaN: true }),
    fc.double({ min: 0, max: 1, noNaN: true }),
  )
  .map((given) => allowances(...given));

it("leaves the finished board when it has shrunk, been planed and the thin spots are as thin as allowed for", () => {
  fc.assert(
    fc.property(anyAllowances, (given) => {
      const thinSpot = targetThickness(given) - given.variation;
      expect(thinSpot * (1 - given.shrinkage / 100) - given.planing).toBeCloseTo(given.finished, 9);
    }),
  );
});

it("sets down a working that ends in the target", () => {
  fc.assert(
    fc.property(anyAllowances, (given) => {
      expectWorking(targetThicknessWorking(given), targetThickness(given));
    }),
  );
});

it("asks about a shrinkage that looks like a share", () => {
  expect(() => targetThickness(allowances(1, 0.045, 0, 0))).toThrow(
    "Shrinkage is 0.045: 0.045 %, or 4.5 %? Type 4.5 for 4.5 %, or leave it out for none.",
  );
});

it("refuses what no board can have", () => {
  for (const wrong of [
    allowances(0, 0, 0, 0),
    allowances(1, -1, 0, 0),
    allowances(1, 51, 0, 0),
    allowances(1, 0, -0.1, 0),
    allowances(1, 0, 0, -0.1),
    allowances(NaN, 0, 0, 0),
  ]) {
    expect(() => targetThickness(wrong)).toThrow(InvalidInput);
  }
});
