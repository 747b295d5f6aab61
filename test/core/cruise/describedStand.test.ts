import { describe, expect, it } from "vitest";
import { importanceValues } from "../../../src/core/cruise/importanceValue";
import { loreysHeight } from "../../../src/core/cruise/loreysHeight";
import { partTotals } from "../../../src/core/cruise/plotTotals";
import { plotCruise } from "../../support/cruises";

describe("Lorey's height", () => {
  it("weighs each height by basal area: 60 ft at 1 and 90 ft at 3 ft2", () => {
    expect(loreysHeight([60, 90], [1, 3])).toBe(82.5);
  });

  it("is the plain mean of the trees that are in at a point, since each stands for the same basal area", () => {
    expect(loreysHeight([60, 72, 90], [10, 10, 10])).toBeCloseTo(74, 10);
  });

  it("needs a tree", () => expect(() => loreysHeight([], [])).toThrow("Nothing to work on yet."));
});

describe("importance values", () => {
  // Two plots of a tenth of an acre: oak on both, 3 trees of 12 in; pine on one, 1 tree of 12 in
  const lines = [0, 0, 1, 0].map((plot) => ({ plot, dbh: 12 }));
  const [oak, pine] = importanceValues(partTotals(plotCruise(0.1, 2, lines), [0, 0, 0, 1], 2));

  it("are the shares of frequency, density and dominance, by hand", () => {
    expect(oak?.frequency).toBeCloseTo(200 / 3, 9);
    expect(oak?.density).toBeCloseTo(75, 9);
    expect(oak?.dominance).toBeCloseTo(75, 9);
    expect(oak?.value).toBeCloseTo(200 / 3 + 150, 9);
  });

  it("come to 300 over all species", () => expect((oak?.value ?? 0) + (pine?.value ?? 0)).toBeCloseTo(300, 9));

  it("need a tree", () => {
    expect(() => importanceValues(partTotals(plotCruise(0.1, 2, []), [], 2))).toThrow("Nothing to work on yet.");
  });
});
