import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  LogDiameterRounding,
  logScale,
  logScaleRules,
  LogUnits,
  RuleSelectionName,
  ScaleRoundingName,
} from "../../src/functions/logs";
import { allRules } from "../../src/core/log/ruleSelections";
import { cardScale, scaleSheet } from "../../src/functions/scaleSheets";

const none = null as never;
const column = (values: readonly unknown[]) => values.map((value) => [value]);
const summed = (cells: unknown[][]) =>
  cells.flat().reduce<number>((total, one) => total + (typeof one === "number" ? one : 0), 0);

/** Logs that every rule has a value for, some with a butt, some with a defect. */
const logs = fc.array(
  fc.record({
    across: fc.integer({ min: 32, max: 80 }).map((quarters) => quarters / 4),
    along: fc.integer({ min: 16, max: 80 }).map((halves) => halves / 2),
    grown: fc.option(fc.integer({ min: 0, max: 8 }), { nil: undefined }),
    off: fc.constantFrom(0, 10, 15, 100),
  }),
  { minLength: 2, maxLength: 8 },
);
const conventions = fc.record({
  round: fc.constantFrom(none, ...Object.values(ScaleRoundingName)),
  longest: fc.constantFrom(none, 8, 16, 20),
  toWhole: fc.constantFrom(none, ...Object.values(LogDiameterRounding)),
  butts: fc.boolean(),
  metric: fc.boolean(),
});

const arranged = fc.tuple(logs, conventions).map(([list, { round, longest, toWhole, butts, metric }]) => {
  const [across, along] = metric ? [2.54, 0.3048] : [1, 1];
  const ends = list.map((one) => (one.grown === undefined ? "" : (one.across + one.grown) * across));
  return {
    list,
    diameter: column(list.map((one) => one.across * across)),
    length: column(list.map((one) => one.along * along)),
    deduction: column(list.map(({ off }) => off)),
    practice: [
      round,
      longest === none ? none : longest * along,
      butts ? column(ends) : none,
      toWhole,
      metric ? LogUnits.metric : none,
    ] as const,
  };
});

describe("the conventions of a buyer", () => {
  it("mean the same to LOGSCALE, to the sum of a scale sheet and to every rule side by side", () => {
    fc.assert(
      fc.property(arranged, ({ list, diameter, length, deduction, practice }) => {
        const [heads, ...rows] = logScaleRules(
          diameter,
          length,
          deduction,
          RuleSelectionName.all,
          ...(practice as unknown as []),
        );
        allRules.rules.forEach(({ title }, i) => {
          expect(heads?.[i]).toBe(`${title} bf`);
          const rule = title as never;
          const alone = logScale(diameter, length, rule, deduction, ...(practice as unknown as []));
          expect(rows.map((row) => [row[i] as unknown])).toEqual(alone);
          if (!alone.flat().every((one) => typeof one === "number")) return;
          const sheet = scaleSheet([["RO"]], diameter, length, [[rule]], deduction, ...(practice as unknown as []));
          expect(sheet.at(-1)?.[1]).toBe(list.length);
          expect(sheet.at(-1)?.[3]).toBeCloseTo(summed(alone), 6);
        });
      }),
      { numRuns: 60 },
    );
  });

  it("mean the same by a card as by the rule that it was printed from", () => {
    const lengths = Array.from({ length: 40 }, (_, i) => i + 1);
    const diameters = Array.from({ length: 40 }, (_, i) => i + 4);
    const doyle = (across: number, along: number) => ((across - 4) ** 2 * along) / 16;
    const card = [
      ["", ...lengths],
      ...diameters.map((across) => [across, ...lengths.map((along) => doyle(across, along))]),
    ];
    const whole = logs.map((list) =>
      list.map((one) => ({ ...one, across: Math.ceil(one.across), along: Math.ceil(one.along) })),
    );
    fc.assert(
      fc.property(whole, fc.constantFrom(none, 8, 16), fc.boolean(), (list, longest, butts) => {
        const ends = butts ? column(list.map(({ across, grown = 0 }) => across + grown)) : none;
        const args = [column(list.map(({ across }) => across)), column(list.map(({ along }) => along))] as const;
        const off = column(list.map((one) => one.off));
        const practice = [off, ScaleRoundingName.none, longest, ends, LogDiameterRounding.halfDown] as never[];
        const byName = logScale(...args, "Doyle" as never, ...(practice as []));
        const byCard = cardScale(...args, card, ...(practice as []));
        byCard.forEach(([one], row) => {
          if (byName[row]?.[0] !== 0) expect(one).toBeCloseTo(byName[row]?.[0] as number, 9);
        });
      }),
      { numRuns: 60 },
    );
  });

  it("take a butt that rounding left a little thinner than the small end for one not measured", () => {
    const { halfUp } = LogDiameterRounding;
    const scaled = (butt: unknown, rounding: LogDiameterRounding) =>
      logScale([[15]], [[32]], "Doyle" as never, none, none, 16, [[butt]] as never, rounding)[0]?.[0] as unknown;
    expect(scaled(14.8, halfUp)).toBe(242); // 11^2, twice
    expect(scaled(14.5, halfUp)).toBe(242);
    expect(scaled(14.4, halfUp)).toMatchObject({ message: expect.stringContaining("Ends swapped?") as string });
    expect(scaled(14.8, LogDiameterRounding.none)).toMatchObject({ code: "#VALUE!" });
  });

  it("scale a sheet's long logs by Vermont in sections where the butt is known", () => {
    const sheet = scaleSheet([["RO"]], [[10]], [[30]], [["Vermont"]], none, none, none, [[15]]);
    expect(sheet.at(-1)?.[2]).toBe(50 + 72 + 49); // 12-ft sections of 10, 12 and 14 in, 9 V.S.A. 2693
  });

  it("speak of centimetres and metres to whoever gave them", () => {
    const metric = LogUnits.metric;
    const rest = [none, none, none] as const;
    expect(logScale([[5.08]], [[4.8768]], "Scribner Decimal C" as never, none, ...rest, none, metric)).toEqual([
      [
        expect.objectContaining({
          message: "Scribner Decimal C as published has no value for 5.08 cm x 4.8768 m.",
        }),
      ],
    ]);
    expect(logScale([[7.62]], [[4.8768]], "Doyle" as never, none, ...rest, none, metric)).toEqual([
      [
        expect.objectContaining({
          message: "The Doyle rule as published has no value below 10.16 cm. You have 7.62.",
        }),
      ],
    ]);
    expect(logScale([[40]], [[5]], "Doyle" as never, none, none, none, [[30]], none, metric)[0]?.[0]).toMatchObject({
      message: "Large end should be at least as thick as the small end, 40 cm. You have 30 cm. Ends swapped?",
    });
    expect(() =>
      scaleSheet([["RO"]], column([40, 7.62]), [[5]], [["Doyle"]], none, ...rest, none, metric as never),
    ).toThrow("Row 2: The Doyle rule as published has no value below 10.16 cm. You have 7.62.");
  });
});
