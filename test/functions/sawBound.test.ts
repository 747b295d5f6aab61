import { describe, expect, it } from "vitest";
import { splitTaper, fullTaper } from "../../src/core/sawing/lyingLog";
import { sawingPatterns } from "../../src/core/sawing/patterns";
import { BoundPattern, BoundTaper, sawBound, type BoundUnits } from "../../src/functions/sawBound";

describe("SAWBOUND", () => {
  it("tells how much of what area and kerf allow a plan gives, and that it is the best at any setting (by hand)", () => {
    const [header, row] = sawBound([[12]], [[12]], [[8]], [[2, 6, 500]], 0.125, BoundPattern.live);
    expect(header).toEqual(["Most bf", "Most $", "Plan gives %", "Settings in", "Best of"]);
    const [most, dollars, reached, settings, bestOf] = row as [number, number, number, string, string];
    // 2 x 6 x 8 is 8 bf and $4 on 6 (2 + 0.125) in2 of pi 6.0625^2
    expect(most).toBeCloseTo((Math.PI * 6.0625 ** 2 * 8) / 12.75, 9);
    expect(dollars).toBeCloseTo((Math.PI * 6.0625 ** 2 * 4) / 12.75, 9);
    // Four of them: 4 x 2 + 3 x 0.125 = 8.375 high, within a circle of 12 at 6 wide; five do not fit
    expect(reached).toBeCloseTo((100 * 16) / dollars, 9);
    expect(settings).toBe("any");
    expect(bestOf).toBe("No other set of parallel cuts gives more value from these board sizes.");
  });

  it("names the step of the scale, and that of quarter sawing, in the unit of the user", () => {
    const settings = (pattern: BoundPattern, mill?: unknown[][], units?: BoundUnits) =>
      sawBound([[16]], [[16]], [[8]], [[1, 4]], 0.125, pattern, mill, undefined, undefined, units)[1]?.[3] as unknown;
    expect(settings(BoundPattern.live, [["Scale step", 0.0625]])).toBe(0.0625);
    expect(settings(BoundPattern.quarter)).toBe(1 / 32);
    expect(settings(BoundPattern.quarter, [["Scale step", 0.125]])).toBe(0.125);
  });

  it("says that there is no log yet, and gives the reason where there is no plan", () => {
    expect(sawBound([[""]], [[""]], [[""]], [[1, 4]], 0.125, BoundPattern.live)[1]?.[0]).toBe("No log yet");
    expect(() => sawBound([[3]], [[3]], [[8]], [[1, 6]], 0.125, BoundPattern.live)).toThrow("No board in your list");
  });

  it("offers the patterns and tapers there are", () => {
    expect(Object.values(BoundPattern)).toEqual(sawingPatterns.map(({ title }) => title));
    expect(Object.values(BoundTaper)).toEqual([splitTaper.title, fullTaper.title]);
  });
});
