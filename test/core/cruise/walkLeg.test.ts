import { describe, expect, it } from "vitest";
import { feet } from "../../../src/core/basis/units";
import { compassBearing, quadrantBearing, walkLeg } from "../../../src/core/cruise/walkLeg";

const at = (east: number, north: number) => ({ east: feet(east), north: feet(north) });

describe("the way from one point to the next", () => {
  it.each([
    [0, 100, 0],
    [100, 0, 90],
    [0, -100, 180],
    [-100, 0, 270],
    [100, 100, 45],
    [-100, -100, 225],
  ])("%d east and %d north is %d degrees", (east, north, bearing) => {
    expect(walkLeg(at(5, 5), at(5 + east, 5 + north))?.bearing).toBeCloseTo(bearing, 9);
  });

  it("is 3, 4, 5 long", () => expect(walkLeg(at(0, 0), at(300, 400))?.distance).toBe(500));
  it("is none between a place and itself", () => expect(walkLeg(at(1, 1), at(1, 1))).toBeUndefined());

  it("reads less on a needle that points east", () => {
    expect(compassBearing(90, 10)).toBe(80);
    expect(compassBearing(5, 10)).toBe(355);
    expect(compassBearing(355, -10)).toBe(5);
  });

  it.each([
    [0, "due north"],
    [45, "N 45° E"],
    [90, "due east"],
    [100, "S 80° E"],
    [200, "S 20° W"],
    [300, "N 60° W"],
    [359.7, "due north"],
    [359.4, "N 1° W"],
  ])("%d by quarters is %s", (bearing, said) => expect(quadrantBearing(bearing)).toBe(said));
});
