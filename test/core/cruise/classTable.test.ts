import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { mean } from "../../../src/core/basis/statistics";
import { classTable } from "../../../src/core/cruise/classTable";
import { diameterClass } from "../../../src/core/cruise/diameterClass";
import { partTotals, plotTotals, wholeOf } from "../../../src/core/cruise/plotTotals";
import { answersOf } from "../../support/answers";
import { fourPointLines, plotCruise, pointCruise } from "../../support/cruises";
import { expectAsPrinted } from "../../support/expectAsPrinted";

describe("a diameter class", () => {
  it.each([
    [10.9, 2, 10],
    [11, 2, 12],
    [12.9, 2, 12],
    [13, 2, 14],
    [11.4, 1, 11],
    [11.5, 1, 12],
    [0.9, 2, 0],
  ])("holds its lower limit: %d in, %d-inch classes: %d", (dbh, width, midpoint) => {
    expect(diameterClass(dbh, width) * width).toBe(midpoint);
  });

  it("is the same whether a centimetre came as it is or through inches", () => {
    for (let tenths = 25; tenths < 1000; tenths += 1) {
      const centimetres = tenths / 10;
      expect(diameterClass(centimetres / 2.54, 5 / 2.54)).toBe(diameterClass(centimetres, 5));
    }
  });
});

describe("the stand table of the four points", () => {
  const cruise = pointCruise(10, 4, fourPointLines);
  const species = fourPointLines.map(() => 0);
  const answer = answersOf("cruise/constructed-four-points-answers.csv");
  const { classes, amounts } = classTable(cruise, species, 1, 2, "trees");

  it("runs from 10 to 24 in", () => {
    expect(classes.map((one) => 2 * one)).toEqual([10, 12, 14, 16, 18, 20, 22, 24]);
  });

  it.each([10, 12, 14, 16, 18, 20, 22, 24])("has the trees of class %d that were worked out apart", (midpoint) => {
    const { printed, printedTo } = answer(`class ${midpoint}`);
    expectAsPrinted(amounts[classes.indexOf(midpoint / 2)]?.[0] ?? NaN, printed, printedTo);
  });
});

it("keeps a class without trees between two that have some", () => {
  const { classes, amounts } = classTable(
    plotCruise(0.1, 1, [
      { plot: 0, dbh: 8 },
      { plot: 0, dbh: 14 },
    ]),
    [0, 0],
    1,
    2,
    "trees",
  );
  expect(classes).toEqual([4, 5, 6, 7]);
  expect(amounts).toEqual([[10], [0], [0], [10]]);
});

it("expands by the measured diameter, not by the middle of the class", () => {
  const { amounts } = classTable(pointCruise(10, 1, [{ plot: 0, dbh: 11 }]), [0], 1, 2, "trees");
  expect(amounts[0]?.[0]).toBeCloseTo((10 * 576) / (Math.PI * 121), 9);
});

describe("parts and whole", () => {
  const line = fc.record({
    plot: fc.integer({ min: 0, max: 4 }),
    dbh: fc.double({ min: 1, max: 80, noNaN: true }),
    volume: fc.integer({ min: 0, max: 900 }),
    count: fc.constantFrom(0.5, 1, 2),
    species: fc.integer({ min: 0, max: 3 }),
  });
  const tallies = fc.array(line, { minLength: 1, maxLength: 50 });
  const near = (ours: number, wanted: number) =>
    expect(Math.abs(ours - wanted)).toBeLessThanOrEqual(1e-9 * (1 + Math.abs(wanted)));

  it.each(["trees", "volume"] as const)("classes and species add up to the stand: %s", (amount) => {
    fc.assert(
      fc.property(tallies, fc.constantFrom(1, 2, 5), (tally, width) => {
        const cruise = pointCruise(10, 5, tally);
        const { amounts } = classTable(
          cruise,
          tally.map(({ species }) => species),
          4,
          width,
          amount,
        );
        near(
          amounts.flat().reduce((sum, one) => sum + one, 0),
          mean(plotTotals(cruise)[amount] ?? []),
        );
      }),
    );
  });

  it("parts put together again are the stand, plot by plot", () => {
    fc.assert(
      fc.property(tallies, (tally) => {
        const cruise = pointCruise(10, 5, tally);
        const kinds = tally.map(({ species }) => species);
        const again = wholeOf(partTotals(cruise, kinds, 4));
        const whole = plotTotals(cruise);
        for (const quantity of ["tally", "trees", "basalArea", "volume"] as const)
          for (let plot = 0; plot < 5; plot += 1) near(again[quantity]?.[plot] ?? NaN, whole[quantity]?.[plot] ?? NaN);
      }),
    );
  });

  it("species add up plot by plot, each on every plot", () => {
    fc.assert(
      fc.property(tallies, (tally) => {
        const cruise = plotCruise(0.1, 5, tally);
        const whole = plotTotals(cruise);
        const parts = partTotals(
          cruise,
          tally.map(({ species }) => species),
          4,
        );
        for (let plot = 0; plot < 5; plot += 1) {
          near(
            parts.reduce((sum, { trees }) => sum + (trees[plot] ?? NaN), 0),
            whole.trees[plot] ?? NaN,
          );
          near(
            parts.reduce((sum, { volume }) => sum + (volume?.[plot] ?? NaN), 0),
            whole.volume?.[plot] ?? NaN,
          );
        }
      }),
    );
  });
});
