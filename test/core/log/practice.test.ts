import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { feet, inches, percent } from "../../../src/core/basis/units";
import { halfDown, halfUp } from "../../../src/core/log/diameterRounding";
import { grossScale, NO_LIMIT } from "../../../src/core/log/grossScale";
import { netScale } from "../../../src/core/log/netScale";
import { logRules } from "../../../src/core/log/rules";
import { doyle } from "../../../src/core/log/rules/doyle";
import { internationalQuarter } from "../../../src/core/log/rules/internationalQuarter";
import { scribnerNorthwestFactors } from "../../../src/core/log/rules/scribnerNorthwestFactors";
import { vermont } from "../../../src/core/log/rules/vermont";
import { asTheRuleDoes, notRounded } from "../../../src/core/log/scaleRounding";
import { scaleWorking } from "../../../src/core/log/scaleWorking";
import { expectWorking } from "../../support/expectWorking";
import { log } from "./printedLog";

const tapered = (diameter: number, length: number, largeEnd: number) => ({
  ...log(diameter, length),
  largeEnd: inches(largeEnd),
});

describe("a long log whose large end is known", () => {
  it("gives 130 bf for 32 ft, 10 in at the top and 12 at the butt, in two pieces, and 120 in one", () => {
    const scaled = (longest: number) =>
      grossScale(scribnerNorthwestFactors, tapered(10, 32, 12), asTheRuleDoes, feet(longest));
    expect(scaled(20)).toBe(130); // 16 ft at 10 and at 11 in: 6 and 7 tens
    expect(scaled(40)).toBe(120); // 3.815 * 32 = 122
  });

  it("has segments as thick as its own taper makes them, not the rule's", () => {
    // 12 in and, half way, 14 in of 16 ft: 64 + 100
    expect(grossScale(doyle, tapered(12, 32, 16), asTheRuleDoes, feet(16))).toBe(164);
    expect(grossScale(doyle, log(12, 32), asTheRuleDoes, feet(16))).toBe(128);
    // 95 + 230 for 12 and 18 in (Wengert 2001)
    expect(grossScale(internationalQuarter, tapered(12, 32, 24), asTheRuleDoes, feet(16))).toBe(325);
  });

  it("is scaled at the small end as long as it is one piece", () => {
    expect(grossScale(doyle, tapered(12, 16, 20))).toBe(64);
  });

  it("has its tops rounded as the buyer rounds diameters", () => {
    // 12 in and, half way, 13.5 in
    const scaled = (toWhole = halfUp.start()) =>
      grossScale(doyle, tapered(12, 32, 15), asTheRuleDoes, feet(16), toWhole);
    expect(scaled()).toBe(64 + 100);
    expect(scaled(halfDown.start())).toBe(64 + 81);
    expect(grossScale(doyle, log(13.5, 16), asTheRuleDoes, NO_LIMIT, halfUp.start())).toBe(100);
  });

  it("asks whether its ends are swapped", () => {
    expect(() => grossScale(doyle, tapered(14, 16, 12))).toThrow("Ends swapped?");
  });
});

describe("Vermont", () => {
  it("has a log of over 12 ft measured in 12-ft sections from the top (9 V.S.A. 2693)", () => {
    // 12 ft at 10 in, 12 ft at 12 in, 6 ft at 14 in: 50 + 72 + 49
    expect(grossScale(vermont, tapered(10, 30, 15))).toBe(171);
    expect(grossScale(vermont, tapered(12, 12, 20))).toBe(72);
  });

  it("has sections of one thickness where only the small end is known", () => {
    expect(grossScale(vermont, log(10, 30))).toBe(125);
  });

  it("sets its sections down one by one", () => {
    const steps = scaleWorking(vermont, tapered(10, 30, 15), percent(0));
    expectWorking(steps, 171);
    expect(steps.at(-2)).toMatchObject({ sum: "50 + 72 + 49", meaning: "All sections together", value: 171 });
  });
});

describe.each(logRules)("$title, by any practice", (rule) => {
  const practice = fc.record({
    diameter: fc.double({ min: 6, max: 30, noNaN: true }),
    length: fc.double({ min: 6, max: 40, noNaN: true }),
    more: fc.double({ min: 0, max: 6, noNaN: true }),
    longest: fc.constantFrom(12, 16, 20),
  });

  it("adds up over the segments of a log that does not taper, whichever way it is cut", () => {
    if (rule.taper !== undefined || rule.id === "scribnerNorthwestFactors" || rule.id === "scribnerDecimalC") return;
    fc.assert(
      fc.property(
        fc.integer({ min: 6, max: 30 }),
        fc.integer({ min: 3, max: 10 }),
        fc.constantFrom(4, 8, 12),
        (diameter, pieces, longest) => {
          const long = log(diameter, 2 * pieces);
          expect(grossScale(rule, long, notRounded, feet(longest))).toBeCloseTo(grossScale(rule, long, notRounded), 6);
        },
      ),
    );
  });

  it("ends its working in what LOGSCALE gives, with the large end known", () => {
    if (rule.measuredAt === "middle") {
      expect(() => grossScale(rule, tapered(12, 16, 14))).toThrow("needs the middle diameter");
      return;
    }
    fc.assert(
      fc.property(practice, ({ diameter, length, more, longest }) => {
        const long = tapered(diameter, length, diameter + more);
        const args = [asTheRuleDoes, feet(longest), halfDown.start()] as const;
        const steps = scaleWorking(rule, long, percent(0), ...args);
        expectWorking(steps, grossScale(rule, long, ...args));
      }),
    );
  });

  it("takes nothing off at 0 % and all at 100 %, and never more for less", () => {
    fc.assert(
      fc.property(practice, fc.integer({ min: 1, max: 99 }), ({ diameter, length, longest }, deduction) => {
        const gross = grossScale(rule, log(diameter, length), asTheRuleDoes, feet(longest));
        expect(netScale(rule, gross, percent(0))).toBe(gross);
        expect(netScale(rule, gross, percent(100))).toBe(0);
        const net = netScale(rule, gross, percent(deduction), notRounded);
        expect(net).toBeCloseTo(gross * (1 - deduction / 100), 9);
        expect(netScale(rule, gross, percent(deduction + 1), notRounded)).toBeLessThanOrEqual(net);
      }),
    );
  });
});
