import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { OutOfRange } from "../../../src/core/basis/problem";
import type { BoardSize } from "../../../src/core/sawing/boardSize";
import { diameterAt, type SawLog } from "../../../src/core/sawing/sawLog";
import { sawYield } from "../../../src/core/sawing/sawYield";
import { board, boardsOf, livePlan, planned, sawLog, type PlanOptions } from "../../support/sawing";
import { byEnumeration, byGrid } from "../../support/sawingByEnumeration";

const worthOf = (log: SawLog, sizes: readonly BoardSize[], kerf: number, options: PlanOptions = {}): number => {
  try {
    return planned(log, sizes, kerf, { shortBoards: false, ...options }).worth;
  } catch (problem) {
    if (problem instanceof OutOfRange) return 0;
    throw problem;
  }
};

const mixedSizes = (priced: boolean) =>
  fc
    .uniqueArray(
      fc.record({
        thickness: fc.constantFrom(1, 1.25, 2),
        width: fc.integer({ min: 3, max: 8 }),
        price: fc.integer({ min: 1, max: 9 }).map((hundreds) => hundreds * 100),
      }),
      { minLength: 2, maxLength: 8, selector: ({ thickness, width }) => thickness * 100 + width },
    )
    .map((sizes) => sizes.map(({ thickness, width, price }) => board(thickness, width, priced ? price : undefined)));

describe("the best stack of several thicknesses", () => {
  it.each([false, true])("is worth as much as the best of every order and offset (priced: %s)", (priced) => {
    fc.assert(
      fc.property(
        mixedSizes(priced),
        fc.double({ min: 4, max: 8.5, noNaN: true }),
        fc.constantFrom(0.09, 0.125, 0.25),
        (sizes, diameter, kerf) => {
          const log = sawLog(diameter, diameter, 12);
          expect(worthOf(log, sizes, kerf)).toBeCloseTo(byEnumeration(log, sizes, kerf), 6);
        },
      ),
      { numRuns: 150 },
    );
  });

  it("is worth as much when one board must be thick enough to stay on the bed", () => {
    fc.assert(
      fc.property(mixedSizes(true), fc.double({ min: 4, max: 8.5, noNaN: true }), (sizes, diameter) => {
        const log = sawLog(diameter, diameter, 12);
        const worth = worthOf(log, sizes, 0.125, { mill: { bladeAboveBed: 2 } });
        expect(worth).toBeCloseTo(byEnumeration(log, sizes, 0.125, { thickOne: 2 }), 6);
      }),
      { numRuns: 100 },
    );
  });

  it("is worth as much when one board at most may be too thick for the throat", () => {
    fc.assert(
      fc.property(mixedSizes(true), fc.double({ min: 4, max: 8.5, noNaN: true }), (sizes, diameter) => {
        const log = sawLog(diameter, diameter, 12);
        const worth = worthOf(log, sizes, 0.125, { mill: { throat: 1.5 } });
        expect(worth).toBeCloseTo(byEnumeration(log, sizes, 0.125, { throat: 1.5 }), 6);
      }),
      { numRuns: 100 },
    );
  });

  it("is never beaten by a grid on which gaps may be wider than the kerf", () => {
    fc.assert(
      fc.property(
        mixedSizes(true),
        fc.double({ min: 5, max: 24, noNaN: true }),
        fc.constantFrom(0.0625, 0.125, 0.25),
        (sizes, diameter, kerf) => {
          const log = sawLog(diameter, diameter, 12);
          expect(worthOf(log, sizes, kerf)).toBeGreaterThanOrEqual(byGrid(log, sizes, kerf, 1 / 64) - 1e-6);
        },
      ),
      { numRuns: 100 },
    );
  });

  it("saws two planks of 2 x 4 from a 7-in log, since three would show wane", () => {
    // A 4-in face may lie sqrt(3.5^2 - 2^2) = 2.872 in from the pith: room for 5.745 in, two planks take 4.125.
    const plan = livePlan(sawLog(7, 7, 8), [board(2, 4)], 0.125);
    expect(boardsOf(plan)).toHaveLength(2);
    expect(sawYield(plan).boardFeet).toBeCloseTo(10.667, 3); // 2 x 2 x 4 x 8 / 12
  });

  it("prefers the fewest boards among plans of equal worth", () => {
    // A 6-in face leaves 2.5 in: one 2-in plank, or two inch boards of the same board feet.
    for (const sizes of [
      [board(1, 6), board(2, 6)],
      [board(2, 6), board(1, 6)],
    ]) {
      const boards = boardsOf(livePlan(sawLog(6.5, 6.5, 8), sizes, 0.1));
      expect(boards.map(({ piece }) => Number(piece.thickness))).toEqual([2]);
    }
  });

  it("prefers one plank to two boards worth the same, though the two would leave more room", () => {
    // 0.9 + 0.1 + 0.9 = 1.9 in of boards at $1000 against 2 in at $900: 2 x 0.9 x 1000 = 2 x 900.
    const boards = boardsOf(livePlan(sawLog(6.5, 6.5, 8), [board(0.9, 6, 1000), board(2, 6, 900)], 0.1));
    expect(boards.map(({ piece }) => Number(piece.thickness))).toEqual([2]);
  });

  it("does not depend on the order of the list", () => {
    fc.assert(
      fc.property(mixedSizes(true), fc.double({ min: 5, max: 20, noNaN: true }), (sizes, diameter) => {
        const log = sawLog(diameter, diameter + 2, 16);
        expect(worthOf(log, [...sizes].reverse(), 0.1)).toBe(worthOf(log, sizes, 0.1));
      }),
      { numRuns: 200 },
    );
  });

  it("has every board free of wane at its own end, one kerf apart, with equal play up and down", () => {
    fc.assert(
      fc.property(
        mixedSizes(false),
        fc.double({ min: 9, max: 30, noNaN: true }),
        fc.double({ min: 0, max: 6, noNaN: true }),
        (sizes, diameter, taper) => {
          const log = sawLog(diameter, diameter + taper, 16);
          const { flitches } = livePlan(log, sizes, 0.1);
          const stack = [...flitches].sort((a, b) => a.outline.lower - b.outline.lower);
          const play = { down: Infinity, up: Infinity };
          stack.forEach(({ flitch, outline: { lower, upper }, boards }, i) => {
            const radius = diameterAt(log, flitch.length) / 2;
            const reach = Math.sqrt(radius ** 2 - (flitch.width / 2) ** 2);
            for (const { outline } of boards) {
              const corner = Math.hypot(Math.max(0 - lower, upper), Math.max(0 - outline.left, outline.right));
              expect(corner).toBeLessThanOrEqual(radius + 1e-7);
            }
            play.down = Math.min(play.down, lower + reach);
            play.up = Math.min(play.up, reach - upper);
            const above = stack[i + 1];
            if (above) expect(above.outline.lower - upper).toBeCloseTo(0.1, 9);
          });
          expect(play.down).toBeCloseTo(play.up, 6);
        },
      ),
      { numRuns: 300 },
    );
  });
});
