import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { feet, inches } from "../../../src/core/basis/units";
import { sawnBoardFeet } from "../../../src/core/sawing/boardSize";
import { logsForCutList } from "../../../src/core/sawing/logsForCutList";
import { live } from "../../../src/core/sawing/patterns/live";
import { board, planned, sawLog } from "../../support/sawing";

const aList = fc
  .uniqueArray(
    fc.record({
      thickness: fc.constantFrom(1, 2),
      width: fc.integer({ min: 3, max: 8 }),
      length: fc.constantFrom(8, 10, 12),
      count: fc.integer({ min: 1, max: 12 }),
    }),
    { minLength: 1, maxLength: 5, selector: ({ thickness, width, length }) => `${thickness} ${width} ${length}` },
  )
  .map((items) =>
    items.map(({ thickness, width, length, count }, i) => ({
      name: `piece ${i}`,
      count,
      piece: { ...board(thickness, width), length: feet(length) },
    })),
  );

const someLogs = fc.array(
  fc.record({ diameter: fc.double({ min: 6, max: 16, noNaN: true }), length: fc.constantFrom(8, 10, 12, 14) }),
  { minLength: 1, maxLength: 5 },
);

describe("logs for a cut list", () => {
  it("adds up to the list, stays under its bound, and promises no more of a log than its best plan gives", () => {
    fc.assert(
      fc.property(someLogs, aList, (measured, wanted) => {
        const logs = measured.map(({ diameter, length }, i) => ({
          name: String(i),
          log: sawLog(diameter, diameter + 1, length),
        }));
        const result = logsForCutList({ logs, wanted, kerf: inches(0.125), mill: {}, pattern: live });
        const demand = wanted.reduce((sum, { piece, count }) => sum + count * sawnBoardFeet(piece), 0);
        const missing = result.missing.reduce((sum, { boardFeet }) => sum + boardFeet, 0);
        expect(result.boardFeet + missing).toBeCloseTo(demand, 6);
        expect(result.boardFeet).toBeLessThanOrEqual(result.atMost + 1e-6);
        expect(new Set(result.logs.map(({ log }) => log)).size).toBe(result.logs.length);
        for (const { log, boardFeet } of result.logs) {
          const named = logs.find(({ name }) => name === log);
          const sizes = wanted.map(({ piece }) => piece);
          // A board as long as several pieces is worth all of them, so no more than a board of any length can be.
          const anyLength = sizes.map(({ thickness, width }) => ({ thickness, width }));
          const most = planned(named?.log as never, [...sizes, ...anyLength], 0.125).worth;
          expect(boardFeet).toBeLessThanOrEqual(most + 1e-6);
        }
        // Where something is still missing, no log that is left could give any of it alone.
        const unused = logs.filter(({ name }) => !result.logs.some(({ log }) => log === name));
        for (const { name } of result.missing) {
          const piece = wanted.find((one) => one.name === name)?.piece;
          for (const { log } of unused) expect(() => planned(log, [piece as never], 0.125)).toThrow("No board");
        }
      }),
      { numRuns: 200 },
    );
  });
});
