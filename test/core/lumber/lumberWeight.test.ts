import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { InvalidInput } from "../../../src/core/basis/problem";
import { boardFeet, percent } from "../../../src/core/basis/units";
import {
  density,
  gravityAt,
  lumberWeight,
  lumberWeightWorking,
  mostMoisture,
} from "../../../src/core/lumber/lumberWeight";
import { findWood, woods } from "../../../src/core/lumber/wood";
import { expectAsPrinted } from "../../support/expectAsPrinted";
import { expectWorking } from "../../support/expectWorking";
import { numberIn, published } from "../../support/published";

describe("worked by hand", () => {
  const { rows, printedTo } = published("lumber/lumberWeight.computed.csv");

  it.each(rows)("$volume bf of $name at $moisture % weigh $weight lb", (row) => {
    const volume = boardFeet(numberIn(row, "volume"));
    const weight = lumberWeight(volume, findWood(row.name ?? ""), percent(numberIn(row, "moisture")));
    expectAsPrinted(weight, numberIn(row, "weight"), printedTo);
  });

  it("a cubic foot of northern red oak: 63.9 lb green at 83 %, 43.0 lb at 12 %", () => {
    const oak = findWood("northern red oak");
    expectAsPrinted(density(oak, percent(83)), 63.9, 0.1);
    expectAsPrinted(density(oak, percent(12)), 43.0, 0.1);
  });
});

describe("specific gravity at 12 %, against another table of the handbook", () => {
  const { rows, source } = published("lumber/gravityAtTwelve.csv");
  const differences = rows.map((row) => {
    const { gravity } = findWood(row.name ?? "");
    return gravityAt(gravity, percent(12)) - numberIn(row, "gravity");
  });

  // The tables are of different trees: not every cell can agree to its last digit, but the whole must not lean.
  it(`differs by 0.01 on the mean and by 0.05 at most over the ${rows.length} species read in ${source}`, () => {
    expect(rows).toHaveLength(31);
    expect(Math.abs(differences.reduce((sum, one) => sum + one, 0) / rows.length)).toBeLessThan(0.01);
    expect(Math.max(...differences.map(Math.abs))).toBeLessThan(0.05);
  });
});

describe("any wood", () => {
  const wood = fc.constantFrom(...woods);
  const share = fc.double({ min: 0, max: 0.99, noNaN: true });
  const volume = fc.double({ min: 0.1, max: 1e6, noNaN: true }).map(boardFeet);

  it("is heavier the wetter it is, and weighs in proportion to its volume", () => {
    fc.assert(
      fc.property(wood, share, volume, (one, wet, bf) => {
        const most = mostMoisture(one.gravity);
        const drier = lumberWeight(bf, one, percent((wet / 2) * most));
        const wetter = lumberWeight(bf, one, percent(wet * most));
        expect(wetter).toBeGreaterThanOrEqual(drier * (1 - 1e-12));
        expect(lumberWeight(boardFeet(2 * bf), one, percent(wet * most))).toBeCloseTo(2 * wetter, 3);
      }),
    );
  });

  it("sets down a working that ends in its weight", () => {
    fc.assert(
      fc.property(wood, share, volume, (one, wet, bf) => {
        const moisture = percent(wet * mostMoisture(one.gravity));
        expectWorking(lumberWeightWorking(bf, one, moisture), lumberWeight(bf, one, moisture));
      }),
    );
  });

  it.each(woods)("$name can hold the water that it has green", (one) => {
    expect(one.green).toBeLessThan(mostMoisture(one.gravity));
    expect(density(one, one.green)).toBeLessThan(80); // lb/ft3: no green wood of North America is heavier
  });
});

it("refuses more water than the wood has room for, and no wood at all", () => {
  const oak = findWood("white oak");
  expect(() => lumberWeight(boardFeet(100), oak, percent(150))).toThrow(
    "Wood of white oak holds at most 101 % water. You have 150.",
  );
  expect(() => lumberWeight(boardFeet(0), oak, percent(12))).toThrow(InvalidInput);
  expect(() => lumberWeight(boardFeet(100), oak, percent(NaN))).toThrow(InvalidInput);
});
