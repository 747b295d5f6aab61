import { describe, expect, it } from "vitest";
import { InvalidInput } from "../../../src/core/basis/problem";
import { boardFeet, percent } from "../../../src/core/basis/units";
import { netScale } from "../../../src/core/log/netScale";
import { doyle } from "../../../src/core/log/rules/doyle";
import { internationalQuarter } from "../../../src/core/log/rules/internationalQuarter";
import { scribnerDecimalC } from "../../../src/core/log/rules/scribnerDecimalC";
import { notRounded } from "../../../src/core/log/scaleRounding";

describe("net scale", () => {
  it("is the gross scale less the percent, rounded as the rule rounds", () => {
    expect(netScale(doyle, boardFeet(144), percent(15))).toBe(122); // 122.4
    expect(netScale(internationalQuarter, boardFeet(180), percent(15))).toBe(155); // 153
    expect(netScale(scribnerDecimalC, boardFeet(110), percent(5))).toBe(100); // 104.5
    expect(netScale(doyle, boardFeet(144), percent(15), notRounded)).toBeCloseTo(122.4, 9);
  });

  it("takes nothing off at 0 % and everything at 100 %", () => {
    expect(netScale(doyle, boardFeet(144), percent(0))).toBe(144);
    expect(netScale(doyle, boardFeet(144), percent(100))).toBe(0);
  });

  it("asks whether 0.15 is 0.15 % or 15 %", () => {
    expect(() => netScale(doyle, boardFeet(144), percent(0.15))).toThrow(InvalidInput);
    expect(() => netScale(doyle, boardFeet(144), percent(0.15))).toThrow(
      "Deduction is 0.15: 0.15 %, or 15 %? Type 15 for 15 %; below 1 % nothing is deducted.",
    );
  });

  it.each([-1, 101, NaN])("refuses %f %", (wrong) => {
    expect(() => netScale(doyle, boardFeet(144), percent(wrong))).toThrow(InvalidInput);
  });
});
