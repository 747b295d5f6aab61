import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { InvalidInput } from "../../../src/core/basis/problem";
import { acres, percent } from "../../../src/core/basis/units";
import { plotRadius } from "../../../src/core/cruise/plotRadius";
import { expectAsPrinted } from "../../support/expectAsPrinted";
import { numberIn, published } from "../../support/published";

const sizes = { "1/300": 1 / 300, "1/100": 1 / 100, "1/50": 1 / 50, "1/20": 1 / 20, "1/10": 1 / 10, "1/5": 1 / 5 };
const columns = Object.entries(sizes);

describe("radii corrected for slope", () => {
  const { rows, source, printedTo } = published("cruise/slope-plot-radius.csv");

  it("are 13 bands of 6 plots", () => expect(rows.length * columns.length).toBe(78));

  it.each(rows)(`some slope from $from to $to % gives all six radii, as in ${source}`, (row) => {
    const [from, to] = [numberIn(row, "from"), numberIn(row, "to")];
    const tenths = Array.from({ length: (to - from) * 10 + 1 }, (_, index) => from + index / 10);
    const fits = tenths.filter((slope) =>
      columns.every(([column, size]) => {
        const off = plotRadius(acres(size), percent(slope)) - numberIn(row, column);
        return Math.abs(off) <= printedTo / 2 + 1e-9;
      }),
    );
    expect(fits).not.toEqual([]);
  });

  const level = rows[0] ?? {};
  it.each(columns)(`%s ac on level ground is as in ${source}`, (column, size) => {
    expectAsPrinted(plotRadius(acres(size)), numberIn(level, column), printedTo);
  });

  it("1/300 ac at 50 % is 7.2 ft, the guide's own example", () => {
    expectAsPrinted(plotRadius(acres(1 / 300), percent(50)), 7.2, printedTo);
  });

  it("1/1000 ac is 3.7 ft, as in the same table and the Sewanee pages on importance values", () => {
    expectAsPrinted(plotRadius(acres(1 / 1000)), 3.7, 0.1);
  });
});

it("keeps the level size: the circle on the slope, times the cosine, is the plot", () => {
  const reach = fc.tuple(fc.double({ min: 0.001, max: 1, noNaN: true }), fc.double({ min: 0, max: 200, noNaN: true }));
  fc.assert(
    fc.property(reach, ([size, slope]) => {
      const radius = plotRadius(acres(size), percent(slope));
      expect((Math.PI * radius ** 2 * Math.cos(Math.atan(slope / 100))) / 43_560).toBeCloseTo(size, 9);
    }),
  );
});

it.each([0, -1, NaN])("refuses a plot of %s ac", (bad) => expect(() => plotRadius(acres(bad))).toThrow(InvalidInput));
it("refuses a slope that cannot be stood on", () => {
  expect(() => plotRadius(acres(0.1), percent(1000))).toThrow(InvalidInput);
});
