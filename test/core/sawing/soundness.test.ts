import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { best } from "../../../src/core/sawing/patterns/best";
import { sawingPatterns } from "../../../src/core/sawing/patterns";
import { diameterAt } from "../../../src/core/sawing/sawLog";
import { sawYield } from "../../../src/core/sawing/sawYield";
import { boardsOf } from "../../support/sawing";
import { anOrder, apart, corners, planBy } from "../../support/sawOrders";

const NONE = 1e-6;

describe.each(sawingPatterns)("a plan by $title", (pattern) => {
  it("lays every board inside the log at its own end, and no two closer than a kerf", () => {
    fc.assert(
      fc.property(anOrder, (order) => {
        const found = planBy(pattern, { ...order, waneAllowed: 0 });
        const boards = found ? boardsOf(found) : [];
        boards.forEach((one, i) => {
          const radius = diameterAt(found?.log as never, one.piece.length) / 2;
          expect(Math.max(...corners(one.outline))).toBeLessThanOrEqual(radius + NONE);
          const { left, right, lower, upper } = one.outline;
          const sides = [right - left, upper - lower].sort((a, b) => a - b);
          const size = [one.piece.thickness, one.piece.width].sort((a, b) => a - b);
          sides.forEach((side, j) => expect(side).toBeCloseTo(size[j] as number, 9));
          for (const other of boards.slice(i + 1)) {
            expect(apart(one.outline, other.outline)).toBeGreaterThanOrEqual(order.kerf - NONE);
          }
        });
      }),
      { numRuns: 120 },
    );
  }, 30_000);

  it("passes the blade through no board, each time above the bed, and leaves on it what can stay there", () => {
    fc.assert(
      fc.property(anOrder, (order) => {
        const found = planBy(pattern, order);
        if (!found) return;
        const boards = boardsOf(found);
        for (const { kerfIn, headReading } of found.cuts) {
          expect(headReading).toBeGreaterThanOrEqual(order.bladeAboveBed - NONE);
          for (const { outline } of boards) expect(apart(kerfIn, outline)).toBeGreaterThanOrEqual(0 - NONE);
        }
        const { lastOnBed, flitches } = found;
        if (lastOnBed) {
          const { left, right, lower, upper } = lastOnBed.outline;
          expect(Math.max(right - left, upper - lower) + NONE).toBeGreaterThanOrEqual(order.bladeAboveBed);
        }
        for (const one of flitches) {
          if (one !== lastOnBed) expect(one.flitch.thickness).toBeLessThanOrEqual(order.throat);
        }
      }),
      { numRuns: 120 },
    );
  }, 30_000);

  /**
   * Boards of different flitches lie a kerf apart across their thickness or are parted by one, so each may be widened
   * by half a kerf on both faces without meeting another, and still lies in a circle half a kerf larger:
   *
   *     sum of w (t + k) <= pi (R + k / 2)^2
   */
  it("never takes more than the area of the log and its kerfs, and shares that add to 100 %", () => {
    fc.assert(
      fc.property(anOrder, (order) => {
        const found = planBy(pattern, { ...order, waneAllowed: 0 });
        if (!found) return;
        const boards = boardsOf(found);
        for (const end of new Set(boards.map(({ piece }) => Number(piece.length)))) {
          const radius = diameterAt(found.log, end) / 2;
          const taken = boards
            .filter(({ piece }) => piece.length >= end)
            .reduce((sum, { piece }) => sum + piece.width * (piece.thickness + order.kerf), 0);
          expect(taken).toBeLessThanOrEqual(Math.PI * (radius + order.kerf / 2) ** 2 + NONE);
        }
        const { lumber, sawdust, slab, boardFeet } = sawYield(found);
        expect(lumber + sawdust + slab).toBeCloseTo(100, 6);
        expect(Math.min(lumber, sawdust, slab)).toBeGreaterThan(0);
        expect(found.worth).toBeCloseTo(boardFeet, 6);
      }),
      { numRuns: 120 },
    );
  }, 30_000);

  it("is the same each time and whatever the list is sorted by, never above the best, no poorer where wane may show", () => {
    fc.assert(
      fc.property(anOrder, (order) => {
        const found = planBy(pattern, order);
        expect(planBy(pattern, order)).toEqual(found);
        const worth = found?.worth ?? 0;
        expect(planBy(pattern, { ...order, sizes: [...order.sizes].reverse() })?.worth ?? 0).toBeCloseTo(worth, 6);
        expect(planBy(best, order)?.worth ?? 0).toBeGreaterThanOrEqual(worth - NONE);
        expect(planBy(pattern, { ...order, waneAllowed: 50 })?.worth ?? 0).toBeGreaterThanOrEqual(worth - NONE);
      }),
      { numRuns: 40 },
    );
  }, 30_000);
});
