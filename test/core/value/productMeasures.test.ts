import { describe, expect, it } from "vitest";
import { feet, inches } from "../../../src/core/basis/units";
import { byCord, byWood } from "../../../src/core/value/productMeasures";

describe("products sold by stacked cords", () => {
  const log = { smallEnd: inches(6), largeEnd: () => inches(7), middle: () => inches(6.5), length: feet(8) };

  // By hand: a cord of 4 x 4 x 8 = 128 ft3 is 62 percent wood, 79.36 ft3.
  it.each([
    [79.36, 1],
    [0, 0],
    [158.72, 2],
  ])("%d ft3 of wood make %d cords", (wood, cords) => {
    expect(byCord.volume({ ...log, wood: () => wood })).toBeCloseTo(cords, 12);
    expect(byWood.volume({ ...log, wood: () => wood })).toBe(wood);
  });
});
