import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { sawingPatterns } from "../../../src/core/sawing/patterns";
import { live } from "../../../src/core/sawing/patterns/live";
import { quarter } from "../../../src/core/sawing/patterns/quarter";
import { sawYield } from "../../../src/core/sawing/sawYield";
import { board, boardsOf, planned, sawLog } from "../../support/sawing";
import { anOrder, planBy } from "../../support/sawOrders";
import { aShapedOrder, planOfShaped } from "../../support/shapedOrders";
import { woodByPoints } from "../../support/woodByPoints";

const anyWane = fc.constantFrom<number>(0, 10, 30, 60, 100);

describe("the shares of a log", () => {
  it("are 0 or more each and add to 100 %, however much wane may show", () => {
    fc.assert(
      fc.property(anOrder, anyWane, fc.constantFrom(...sawingPatterns), (order, waneAllowed, pattern) => {
        const plan = planBy(pattern, { ...order, waneAllowed });
        if (!plan) return;
        const { lumber, sawdust, slab } = sawYield(plan);
        expect(Math.min(lumber, sawdust, slab)).toBeGreaterThanOrEqual(0);
        expect(lumber + sawdust + slab).toBeCloseTo(100, 12);
      }),
      { numRuns: 600 },
    );
  }, 60_000);

  it("are those that points all through the log tell, no point twice", () => {
    fc.assert(
      fc.property(anOrder, anyWane, fc.constantFrom(...sawingPatterns), (order, waneAllowed, pattern) => {
        const plan = planBy(pattern, { ...order, waneAllowed });
        if (!plan) return;
        const { lumber, sawdust, slab } = sawYield(plan);
        const byPoints = woodByPoints(plan);
        expect(byPoints.twice).toBe(0);
        expect(Math.abs(byPoints.lumber - lumber)).toBeLessThan(0.5);
        expect(Math.abs(byPoints.sawdust - sawdust)).toBeLessThan(0.5);
        expect(Math.abs(byPoints.rest - slab)).toBeLessThan(0.5);
      }),
      { numRuns: 60 },
    );
  }, 60_000);

  it("are those that points tell of quarters that lie on their own bark", () => {
    let plans = 0;
    fc.assert(
      fc.property(aShapedOrder, (order) => {
        const plan = planOfShaped(quarter, {
          ...order,
          full: true,
          sweep: 0,
          scaleStep: undefined,
          taper: order.taper + 0.5,
        });
        if (!plan) return;
        plans += 1;
        const { lumber, sawdust, slab } = sawYield(plan);
        const byPoints = woodByPoints(plan, 640_000);
        expect(byPoints.twice).toBe(0);
        expect(Math.abs(byPoints.lumber - lumber)).toBeLessThan(0.5);
        expect(Math.abs(byPoints.sawdust - sawdust)).toBeLessThan(0.5);
        expect(Math.abs(byPoints.rest - slab)).toBeLessThan(0.5);
      }),
      { numRuns: 8 },
    );
    expect(plans).toBeGreaterThan(4);
  }, 60_000);

  it("tally a board with wane whole, and count only its wood as lumber", () => {
    // A 4-in square, wane over all of its thickness, is measured at its pith side: half of it is in a log 4.2 in thick.
    const plan = planned(sawLog(4.2, 4.2, 8), [board(4, 4)], 0.125, { pattern: live, mill: { waneAllowed: 100 } });
    const { boardFeet, lumber } = sawYield(plan);
    expect(boardFeet).toBeCloseTo((4 * 4 * 8) / 12, 9);
    const [{ outline }] = boardsOf(plan) as [ReturnType<typeof boardsOf>[number]];
    expect(outline.upper - outline.lower).toBeCloseTo(4, 9);
    // Four circle segments beyond 2 in of a radius of 2.1 in are all that such a square leaves of the circle.
    const segment = 2.1 ** 2 * Math.acos(2 / 2.1) - 2 * Math.sqrt(2.1 ** 2 - 2 ** 2);
    expect(lumber).toBeCloseTo(100 * (1 - (4 * segment) / (Math.PI * 2.1 ** 2)), 4);
  });
});
