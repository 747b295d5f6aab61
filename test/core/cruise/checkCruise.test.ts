import quantile from "@stdlib/stats-base-dists-t-quantile";
import { describe, expect, it } from "vitest";
import { percent } from "../../../src/core/basis/units";
import { compareCheckCruise } from "../../../src/core/cruise/checkCruise";

const at95 = percent(95);

describe("a check cruise", () => {
  it("is held against the cruise plot by plot", () => {
    // Differences 2, 4, 3, 5: mean 3.5, s = sqrt(5 / 3)
    const { difference, shown } = compareCheckCruise([80, 60, 100, 40], [82, 64, 103, 45], at95);
    expect(difference.value).toBe(3.5);
    expect(difference.margin).toBeCloseTo((quantile(0.975, 3) * Math.sqrt(5 / 3)) / 2, 5);
    expect(shown).toBe(true);
  });

  it("shows nothing where differences go both ways, however far the plots are apart", () => {
    const { difference, shown } = compareCheckCruise([80, 60, 100, 40], [83, 57, 104, 37], at95);
    expect(shown).toBe(false);
    expect(difference.low).toBeLessThan(0);
    expect(difference.high).toBeGreaterThan(0);
  });

  it("needs pairs", () => {
    expect(() => compareCheckCruise([1, 2], [1], at95)).toThrow(
      "Every checked plot needs both figures: the cruise has 2, the check 1.",
    );
    expect(() => compareCheckCruise([1], [1], at95)).toThrow("at least 2 plots. You have 1.");
  });
});
