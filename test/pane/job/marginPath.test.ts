import quantile from "@stdlib/stats-base-dists-t-quantile";
import { expect, it } from "vitest";
import { marginPath } from "../../../src/pane/job/marginPath";

it("the margin after each point is that of the points so far, by hand for 10, 14, 12, 20", () => {
  const points = [10, 14, 12, 20].map((volume, at) => ({ plot: String(at), trees: 3, basalArea: 90, volume }));
  const path = marginPath(points, 95);
  expect(path.map((one) => one.points)).toEqual([3, 4]);
  // s of 10, 14, 12 is 2; of all four the root of 56 over 3
  expect(path[0]?.margin).toBeCloseTo((100 * quantile(0.975, 2) * 2) / Math.sqrt(3) / 12, 6);
  expect(path[1]?.margin).toBeCloseTo((100 * quantile(0.975, 3) * Math.sqrt(56 / 3)) / 2 / 14, 6);
});

it("goes by basal area while there is no volume, and has nothing to say of two points", () => {
  const points = [80, 100, 120].map((basalArea, at) => ({ plot: String(at), trees: 3, basalArea, volume: 0 }));
  expect(marginPath(points, 95)).toHaveLength(1);
  expect(marginPath(points.slice(0, 2), 95)).toEqual([]);
});
