import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { feet } from "../../../src/core/basis/units";
import { grossScale } from "../../../src/core/log/grossScale";
import { logRules } from "../../../src/core/log/rules";
import { doyle } from "../../../src/core/log/rules/doyle";
import { internationalQuarter } from "../../../src/core/log/rules/internationalQuarter";
import { scribnerDecimalC } from "../../../src/core/log/rules/scribnerDecimalC";
import { asTheRuleDoes, notRounded } from "../../../src/core/log/scaleRounding";
import { log } from "./printedLog";

describe("gross scale", () => {
  it("is rounded as the rule's tables are, or not at all", () => {
    expect(grossScale(internationalQuarter, log(20, 16))).toBe(290); // Wengert 2001
    expect(grossScale(internationalQuarter, log(20, 16), notRounded)).toBeCloseTo(289.741, 3); // Michigan 290.401
    expect(grossScale(doyle, log(14, 18))).toBe(113); // an exact half, upwards
  });

  it("adds the segments of a long log, each read from the table by itself", () => {
    expect(grossScale(scribnerDecimalC, log(10, 32), asTheRuleDoes, feet(20))).toBe(60 + 60); // Wengert 2001, 10 in x 16 ft
    expect(grossScale(internationalQuarter, log(12, 32), asTheRuleDoes, feet(16))).toBe(95 + 135); // 12 and 14 in x 16 ft
  });

  it("by International, whose sections taper, is the same in whole sections as in one piece", () => {
    const whole = fc.integer({ min: 1, max: 10 });
    fc.assert(
      fc.property(fc.double({ min: 4, max: 40, noNaN: true }), whole, whole, (diameter, sections, pieces) => {
        const longest = feet(4 * sections);
        const long = log(diameter, 4 * sections * pieces);
        const inSegments = grossScale(internationalQuarter, long, notRounded, longest);
        return Math.abs(inSegments - grossScale(internationalQuarter, long, notRounded)) < 1e-6;
      }),
    );
  });

  it.each(logRules.filter(({ taper }) => !taper))("by $title, which takes no taper, is twice the half", (rule) => {
    expect(grossScale(rule, log(15, 32), asTheRuleDoes, feet(16))).toBe(2 * grossScale(rule, log(15, 16)));
  });
});
