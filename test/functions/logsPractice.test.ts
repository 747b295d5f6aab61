import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { LogDiameterRounding, LogRuleName, logScale, LogUnits } from "../../src/functions/logs";

const none = null as never;
const { doyle, vermont } = LogRuleName;
const problem = (code: string, message: string) => expect.objectContaining({ code, message }) as unknown;
const scaled = (
  diameters: unknown[][],
  length: number,
  rule: LogRuleName,
  longest: unknown,
  ends: unknown,
  rounding?: LogDiameterRounding,
) => logScale(diameters, [[length]], rule, none, none, longest, ends as never, rounding);

describe("LOGSCALE by the buyer's practice", () => {
  it("lets the segments of a long log taper as its two ends say", () => {
    expect(scaled([[12], [12]], 32, doyle, 16, [[16], [""]])).toEqual([[64 + 100], [64 + 64]]); // 12 and 14 in
    expect(scaled([[10]], 30, vermont, null, [[15]])).toEqual([[50 + 72 + 49]]); // 12-ft sections, 9 V.S.A. 2693
    expect(scaled([[14]], 16, doyle, null, [[12]])).toEqual([
      [
        problem(
          "#VALUE!",
          "Large end should be at least as thick as the small end, 14 in. You have 12 in. Ends swapped?",
        ),
      ],
    ]);
  });

  it("rounds diameters as it is told, down the column", () => {
    const halves = [[13.5], [13.5], [""], [13.5]];
    const { halfUp, halfDown, halfAlternate, none: asMeasured } = LogDiameterRounding;
    expect(scaled(halves, 16, doyle, null, null, halfUp)).toEqual([[100], [100], [""], [100]]);
    expect(scaled(halves, 16, doyle, null, null, halfDown)).toEqual([[81], [81], [""], [81]]);
    expect(scaled(halves, 16, doyle, null, null, halfAlternate)).toEqual([[100], [81], [""], [100]]);
    expect(scaled(halves, 16, doyle, null, null, asMeasured)).toEqual([[90], [90], [""], [90]]); // 9.5^2 = 90.25
    expect(() => scaled([[13.5]], 16, doyle, null, null, halfAlternate)).toThrow("the whole column of diameters");
  });

  it("reads both ends in centimetres under metric", () => {
    const metric = logScale([[30.48]], [[9.7536]], doyle, none, none, 4.8768, [[40.64]], none, LogUnits.metric);
    expect(metric).toEqual([[164]]);
  });

  it("accepts by name what menus leave out, in any spelling", () => {
    expect(logScale([[12]], [[16]], "roy" as never)).toEqual([[97]]); // 96.8
    expect(logScale([[12]], [[16]], "Roy (from memory)" as never)).toEqual([[97]]);
    expect(logScale([[12]], [[16]], "Big Sandy Cube" as never)).toEqual([[85]]); // 8^2 * 16 / 12
    expect(logScale([[10]], [[32]], "Northwest factors" as never)).toEqual([[120]]); // 3.815 * 32
  });

  it("is the same for a log in either unit system", () => {
    const log = fc.record({
      diameter: fc.double({ min: 6, max: 30, noNaN: true }),
      length: fc.double({ min: 8, max: 40, noNaN: true }),
      more: fc.double({ min: 0.1, max: 8, noNaN: true }),
    });
    const rule = fc.constantFrom(doyle, LogRuleName.internationalQuarter);
    fc.assert(
      fc.property(log, rule, ({ diameter, length, more }, by) => {
        const ends = diameter + more;
        const imperial = logScale([[diameter]], [[length]], by, none, "None" as never, 16, [[ends]]);
        const [across, along] = [2.54, 0.3048];
        const metric = logScale(
          [[diameter * across]],
          [[length * along]],
          by,
          none,
          "None" as never,
          16 * along,
          [[ends * across]],
          none,
          LogUnits.metric,
        );
        expect(metric[0]?.[0]).toBeCloseTo(imperial[0]?.[0] as number, 6);
      }),
    );
  });
});
