import { describe, expect, it } from "vitest";
import { InvalidInput } from "../../../src/core/basis/problem";
import { acres } from "../../../src/core/basis/units";
import { tractTotal } from "../../../src/core/cruise/tractTotal";

describe("the total of a tract", () => {
  it("is acres times the amount of one, margin and all, when the acres are sure", () => {
    const total = tractTotal(8071, 1779, acres(32), acres(0));
    expect(total).toMatchObject({ value: 8071 * 32, margin: 1779 * 32, low: 6292 * 32, high: 9850 * 32 });
    expect(total.marginPercent).toBeCloseTo((100 * 1779) / 8071, 10);
  });

  it("joins the two shares of error as sides of a right angle: 3 and 4 percent make 5", () => {
    expect(tractTotal(1000, 30, acres(50), acres(2)).marginPercent).toBeCloseTo(5, 10);
  });

  it("has a margin of acres only when the amount is sure", () => {
    expect(tractTotal(1000, 0, acres(50), acres(2)).margin).toBe(2000);
  });

  it("refuses what makes no sense", () => {
    expect(() => tractTotal(1000, -1, acres(50), acres(0))).toThrow(InvalidInput);
    expect(() => tractTotal(1000, 30, acres(0), acres(0))).toThrow("Acres should be above 0 ac. You have 0.");
  });
});
