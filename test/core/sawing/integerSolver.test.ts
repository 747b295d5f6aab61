import fc from "fast-check";
import highsLoader from "highs";
import { describe, expect, it } from "vitest";
import { OutOfRange } from "../../../src/core/basis/problem";
import { cant } from "../../../src/core/sawing/patterns/cant";
import { cantProgram } from "../../support/cantProgram";
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

  it("finds no better cant than the plan, whatever its thickness and place, on the marks of a scale", () => {
    const halves = (least: number, most: number) => fc.integer({ min: 2 * least, max: 2 * most }).map((n) => n / 2);
    const aSmallLog = fc.record({
      diameter: halves(4, 7),
      kerf: fc.constantFrom(0.125, 0.25),
      sizes: fc.uniqueArray(
        fc.record({
          thickness: fc.constantFrom(0.75, 1, 1.75),
          width: halves(1.5, 4),
          hundreds: fc.integer({ min: 3, max: 9 }),
        }),
        { minLength: 1, maxLength: 4, selector: ({ thickness, width }) => `${thickness} ${width}` },
      ),
    });
    fc.assert(
      fc.property(aSmallLog, ({ diameter, kerf, sizes }) => {
        const boards = sizes.map(({ thickness, width, hundreds }) => board(thickness, width, 100 * hundreds));
        const program = cantProgram(diameter, 12, boards, kerf, 1 / 2);
        const most = program === "" ? 0 : highs.solve(program).ObjectiveValue;
        let worth = 0;
        try {
          const options = { pattern: cant, shortBoards: false, mill: { scaleStep: 1 / 2 } };
          worth = planned(sawLog(diameter, diameter, 12), boards, kerf, options).worth;
        } catch (problem) {
          if (!(problem instanceof OutOfRange)) throw problem;
        }
        expect(worth).toBeCloseTo(most, 5);
      }),
      { numRuns: 40 },
    );
  }, 120_000);
});
