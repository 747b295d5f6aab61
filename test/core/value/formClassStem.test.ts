import { describe, expect, it } from "vitest";
import { feet, inches, percent } from "../../../src/core/basis/units";
import { formClassStem } from "../../../src/core/value/formClassStem";

const stem = formClassStem({ dbh: inches(16), logs: 3, formClass: percent(78) });
const at = (h: number) => stem.diameterAt(feet(h));

// 16 in, 3 logs, form class 78: 12.5, 11.0 and 9.3 in at the tops of the logs, as the taper table gives.
describe("the stem by form class", () => {
  it("is 16 in at the stump, 12.5 at 17.3 ft, 11.0 at 33.6 and 9.3 at 49.9, where it ends", () => {
    expect(stem.height).toBeCloseTo(49.9, 9);
    expect([1, 17.3, 33.6, 49.9].map(at)).toEqual([16, 12.5, 11, 9.3].map((d) => expect.closeTo(d, 9) as unknown));
  });

  it("runs straight in between, and is no thicker below the stump", () => {
    expect(at(9.15)).toBeCloseTo(14.25, 9);
    expect(at(25.45)).toBeCloseTo(11.75, 9);
    expect(at(0.5)).toBe(16);
  });

  it("holds the wood of cones cut off, added up from thin slices", () => {
    let sum = 0;
    const step = 0.001;
    for (let h = 5 + step / 2; h < 40; h += step) sum += (Math.PI / 576) * at(h) ** 2 * step;
    expect(stem.woodBetween(feet(5), feet(40))).toBeCloseTo(sum, 5);
  });

  it("gives half a log half of its 16.3 ft", () => {
    expect(formClassStem({ dbh: inches(16), logs: 2.5, formClass: percent(78) }).height).toBeCloseTo(1 + 2.5 * 16.3, 9);
  });
});
