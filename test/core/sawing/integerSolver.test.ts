import fc from "fast-check";
import highsLoader from "highs";
import { describe, expect, it } from "vitest";
import { board, planned, sawLog } from "../../support/sawing";
import { liveSawingProgram } from "../../support/liveSawingProgram";

const highs = await highsLoader();

const aLog = fc.record({
  diameter: fc.double({ min: 5, max: 13, noNaN: true }),
  kerf: fc.constantFrom(0.0625, 0.09, 0.125, 0.25),
  sizes: fc
    .uniqueArray(
      fc.record({
        thickness: fc.constantFrom(1, 1.25, 2),
        width: fc.integer({ min: 3, max: 9 }),
        price: fc.integer({ min: 3, max: 12 }).map((hundreds) => hundreds * 100),
      }),
      { minLength: 1, maxLength: 5, selector: ({ thickness, width }) => `${thickness} ${width}` },
    )
    .map((sizes) => [board(1, 3, 300), ...sizes.map(({ thickness, width, price }) => board(thickness, width, price))]),
});

describe("a general integer solver", () => {
  it("finds no better live sawing than the plan, on the same model", () => {
    fc.assert(
      fc.property(aLog, ({ diameter, kerf, sizes }) => {
        const { ObjectiveValue } = highs.solve(liveSawingProgram(diameter, 12, sizes, kerf));
        const plan = planned(sawLog(diameter, diameter, 12), sizes, kerf, { shortBoards: false, sideBySide: false });
        expect(plan.worth).toBeCloseTo(ObjectiveValue, 5);
      }),
      { numRuns: 60 },
    );
  }, 120_000);
});
