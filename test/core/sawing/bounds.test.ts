import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { diameterAt, type SawLog } from "../../../src/core/sawing/sawLog";
import { sawYield } from "../../../src/core/sawing/sawYield";
import type { SawPlan } from "../../../src/core/sawing/sawingPattern";
import { board, boardsOf, livePlan, sawLog } from "../../support/sawing";

const anyLog = fc
  .record({
    smallEnd: fc.double({ min: 8, max: 36, noNaN: true }),
    taper: fc.double({ min: 0, max: 5, noNaN: true }),
    length: fc.double({ min: 4, max: 24, noNaN: true }),
  })
  .map(({ smallEnd, taper, length }) => sawLog(smallEnd, smallEnd + taper, length));

const anySizes = fc.array(
  fc
    .record({
      thickness: fc.double({ min: 0.5, max: 3, noNaN: true }),
      width: fc.double({ min: 2, max: 14, noNaN: true }),
    })
    .map(({ thickness, width }) => board(thickness, width)),
  { minLength: 1, maxLength: 12 },
);

const anyKerf = fc.double({ min: 0.02, max: 0.4, noNaN: true });

/**
 * No plan of parallel cuts can take more out of a cross-section than this: each board, with the kerf between it and
 * the pith added to it, stays inside the circle, and no two such pieces overlap.
 *
 *     sum of w (t + k) <= pi R^2 + k D
 */
function expectUnderBound(plan: SawPlan, log: SawLog, kerf: number): void {
  const boards = boardsOf(plan);
  for (const end of new Set(boards.map(({ piece }) => Number(piece.length)))) {
    const diameter = diameterAt(log, end);
    const taken = boards
      .filter(({ piece }) => piece.length >= end)
      .reduce((sum, { piece }) => sum + piece.width * (piece.thickness + kerf), 0);
    expect(taken).toBeLessThanOrEqual((Math.PI / 4) * diameter ** 2 + kerf * diameter + 1e-6);
  }
}

describe("no plan promises more than geometry allows", () => {
  it("for a thousand random logs: the area of boards and kerfs, and shares that add to 100 %", () => {
    fc.assert(
      fc.property(anyLog, anySizes, anyKerf, (log, sizes, kerf) => {
        let plan: SawPlan;
        try {
          plan = livePlan(log, sizes, kerf);
        } catch (problem) {
          expect(String(problem)).toContain("No board in your list fits this log.");
          return;
        }
        expectUnderBound(plan, log, kerf);
        const { lumber, sawdust, slab, boardFeet, pieces } = sawYield(plan);
        expect(lumber + sawdust + slab).toBeCloseTo(100, 9);
        expect(lumber).toBeGreaterThan(0);
        expect(sawdust).toBeGreaterThan(0);
        expect(slab).toBeGreaterThan(0);
        expect(boardFeet).toBeGreaterThan(0);
        expect(pieces).toBe(boardsOf(plan).length);
      }),
      { numRuns: 1_000 },
    );
  }, 60_000);

  it("a further board size in the list never makes the plan poorer", () => {
    fc.assert(
      fc.property(anyLog, anySizes, anyKerf, (log, sizes, kerf) => {
        const sure = [...sizes, board(1, 3)];
        const fewer = sawYield(livePlan(log, [board(1, 3)], kerf)).boardFeet;
        expect(sawYield(livePlan(log, sure, kerf)).boardFeet).toBeGreaterThanOrEqual(fewer - 1e-6);
      }),
      { numRuns: 150 },
    );
  }, 30_000);

  it("a thinner kerf never makes it poorer, nor does a thicker log", () => {
    fc.assert(
      fc.property(anyLog, anySizes, anyKerf, (log, sizes, kerf) => {
        const sure = [...sizes, board(1, 3)];
        const volume = sawYield(livePlan(log, sure, kerf)).boardFeet;
        const thicker = sawLog(log.smallEnd + 0.5, log.largeEnd + 0.5, log.length);
        expect(sawYield(livePlan(log, sure, kerf / 2)).boardFeet).toBeGreaterThanOrEqual(volume - 1e-6);
        expect(sawYield(livePlan(thicker, sure, kerf)).boardFeet).toBeGreaterThanOrEqual(volume - 1e-6);
      }),
      { numRuns: 150 },
    );
  }, 30_000);
});
