import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { chosen } from "../../../src/core/basis/choices";
import { InvalidInput } from "../../../src/core/basis/problem";
import { feet, percent } from "../../../src/core/basis/units";
import { heightScales } from "../../../src/core/tree/heightScales";
import { treeHeight } from "../../../src/core/tree/treeHeight";
import { expectAsPrinted } from "../../support/expectAsPrinted";
import { numberIn, published } from "../../support/published";

const height = (distance: number, top: number, base: number, scale: string, slope = 0) =>
  treeHeight({
    distance: feet(distance),
    top,
    base,
    scale: chosen("Scale", scale, heightScales),
    slope: percent(slope),
  });

describe("heights worked in print", () => {
  const { rows, source } = published("tree/heights.csv");

  it("are four", () => expect(rows).toHaveLength(4));

  it.each(rows)(`$distance ft, $top and $base on the $scale scale: $height ft, as in ${source}`, (row) => {
    const [distance, top, base, slope] = (["distance", "top", "base", "slope"] as const).map((one) =>
      numberIn(row, one),
    );
    const found = height(distance as number, top as number, base as number, row["scale"] as string, slope);
    expectAsPrinted(found, numberIn(row, "height"), numberIn(row, "step"));
  });
});

it("the three scales tell one height of one angle", () => {
  fc.assert(
    fc.property(
      fc.double({ min: 1, max: 80, noNaN: true }),
      fc.double({ min: -80, max: 0, noNaN: true }),
      (top, base) => {
        const rise = (degrees: number) => Math.tan((degrees * Math.PI) / 180);
        const byDegrees = height(66, top, base, "Degrees");
        expect(height(66, 100 * rise(top), 100 * rise(base), "Percent")).toBeCloseTo(byDegrees, 6);
        expect(height(66, 66 * rise(top), 66 * rise(base), "Topo")).toBeCloseTo(byDegrees, 6);
      },
    ),
  );
});

it("a distance taped along a slope is brought down to the level first", () => {
  expect(height(100, 60, -10, "Percent", 30)).toBeCloseTo(0.7 * 95.7826, 3);
});

it("refuses a top that is not above the base", () => {
  for (const [top, base] of [
    [10, 10],
    [-5, 3],
  ] as const) {
    expect(() => height(66, top, base, "Percent")).toThrow(
      new InvalidInput("The top reading should be above the base reading."),
    );
  }
});

it("refuses what no instrument shows", () => {
  expect(() => height(66, 90, 0, "Degrees")).toThrow(
    new InvalidInput("Top reading should be between -89 and 89 degrees. You have 90. Missing a decimal point?"),
  );
  expect(() => height(66, 5, NaN, "Percent")).toThrow(InvalidInput);
  expect(() => height(0, 5, 0, "Percent")).toThrow(InvalidInput);
});
