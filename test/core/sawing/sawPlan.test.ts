import { describe, expect, it } from "vitest";
import { InvalidInput, OutOfRange } from "../../../src/core/basis/problem";
import { inches } from "../../../src/core/basis/units";
import { millLimits, whyItDoesNotFit } from "../../../src/core/sawing/millLimits";
import { sawingPatterns } from "../../../src/core/sawing/patterns";
import { live } from "../../../src/core/sawing/patterns/live";
import { sawPlan } from "../../../src/core/sawing/sawPlan";
import { sawYield } from "../../../src/core/sawing/sawYield";
import { board, boardsOf, inchBoards, livePlan, sawLog } from "../../support/sawing";

const order = { log: sawLog(12, 14, 16), sizes: inchBoards(4, 12), kerf: inches(0.09), pattern: live };

describe("a sawing plan", () => {
  it("refuses what cannot be sawn, in a sentence", () => {
    expect(() => sawPlan({ ...order, sizes: [] })).toThrow(InvalidInput);
    expect(() => sawPlan({ ...order, sizes: [board(1, 0)] })).toThrow("Board width should be above 0 in. You have 0.");
    expect(() => sawPlan({ ...order, kerf: inches(0) })).toThrow(InvalidInput);
    expect(() => sawPlan({ ...order, sizes: [board(1, 4, 500), board(2, 6)] })).toThrow("Board 2 has no price");
    expect(() => sawPlan({ ...order, sizes: [board(8, 12)] })).toThrow("No board in your list fits this log.");
  });

  it("does not start on a log that the mill cannot take, and names every limit", () => {
    expect(() => sawPlan({ ...order, mill: { longestLog: 14 } })).toThrow(OutOfRange);
    expect(whyItDoesNotFit(order.log, { longestLog: 14 })).toBe("Too long by 2 ft");
    expect(whyItDoesNotFit(order.log, { longestLog: 14, largestDiameter: 12.5 })).toBe(
      "Too thick by 1.5 in; Too long by 2 ft",
    );
    expect(whyItDoesNotFit(order.log, { shortestLog: 18 })).toBe("Too short by 2 ft");
    expect(whyItDoesNotFit(order.log, { longestLog: 16, largestDiameter: 14, shortestLog: 8 })).toBeUndefined();
    expect(new Set(millLimits.map(({ id }) => id)).size).toBe(millLimits.length);
  });

  it("goes for dollars when boards are priced, even at fewer board feet", () => {
    const byVolume = sawYield(livePlan(order.log, [board(1, 8), board(2, 8)], 0.09));
    const byValue = sawYield(livePlan(order.log, [board(1, 8, 1200), board(2, 8, 300)], 0.09));
    const inchOnly = sawYield(livePlan(order.log, [board(1, 8, 1200)], 0.09));
    expect(byVolume.value).toBeUndefined();
    expect(byValue.boardFeet).toBeLessThan(byVolume.boardFeet);
    expect(byValue.value).toBe(inchOnly.value);
  });

  it("counts the kerf of every cut through the log as sawdust, the opening cut included", () => {
    // Four kerfs of 1/8 in, with their middles 0.5625 and 1.6875 in from the pith of a 10.8-in log:
    // 2 x (10.741 + 10.259) x 0.125 = 5.250 in2 of pi 10.8^2 / 4 = 91.609 in2.
    expect(sawYield(livePlan(sawLog(10.8, 10.8, 8), [board(1, 10)], 0.125)).sawdust).toBeCloseTo(5.731, 2);
  });

  it("keeps no board shorter than the mill's own shortest", () => {
    const shortest = (mill: { shortestBoard?: number }) =>
      Math.min(...boardsOf(sawPlan({ ...order, mill })).map(({ piece }) => piece.length));
    expect(shortest({})).toBeLessThan(16);
    expect(shortest({ shortestBoard: 12 })).toBeGreaterThanOrEqual(12);
    expect(shortest({ shortestBoard: 16 })).toBe(16);
  });

  it("says what it is the best of", () => {
    expect(sawPlan(order).guarantee).toBe(
      "No other set of parallel cuts gives more board feet from these board sizes.",
    );
  });
});

describe.each(sawingPatterns)("pattern $title", (pattern) => {
  it("has an id, a source and a plan for a plain log", () => {
    expect(pattern.id).toMatch(/^[a-z]+$/);
    expect(pattern.sources.length).toBeGreaterThan(0);
    expect(sawPlan({ ...order, pattern }).flitches.length).toBeGreaterThan(0);
  });
});
