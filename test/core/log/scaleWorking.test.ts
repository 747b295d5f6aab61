import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { feet, inches, percent } from "../../../src/core/basis/units";
import { fractionDropped, rounderFor } from "../../../src/core/log/diameterRounding";
import { grossScale } from "../../../src/core/log/grossScale";
import { netScale } from "../../../src/core/log/netScale";
import { logRules } from "../../../src/core/log/rules";
import { doyle } from "../../../src/core/log/rules/doyle";
import { internationalQuarter } from "../../../src/core/log/rules/internationalQuarter";
import { scribnerDecimalC } from "../../../src/core/log/rules/scribnerDecimalC";
import { scaleRoundings } from "../../../src/core/log/scaleRounding";
import { scaleWorking } from "../../../src/core/log/scaleWorking";
import { expectWorking } from "../../support/expectWorking";

const log = (diameter: number, length: number) => ({ diameter: inches(diameter), length: feet(length) });
const none = percent(0);

it("a 14-in, 16-ft log by Doyle: 14 less 4 is 10, a quarter of it 2.5, squared 6.25, times 16 is 100", () => {
  expect(scaleWorking(doyle, log(14, 16), none).map(({ sum, value }) => [sum, value])).toEqual([
    ["14 - 4", 10],
    ["10 / 4", 2.5],
    ["2.5 ^ 2", 6.25],
    ["6.25 * 16", 100],
    ["round 100", 100],
  ]);
});

it("a table rule says where in the table it looked", () => {
  const steps = scaleWorking(scribnerDecimalC, log(14.5, 15), none);
  expect(steps.map(({ value, unit }) => `${value} ${unit}`)).toEqual([
    "14 in",
    "14 ft",
    "10 tens of bf",
    "100 bf",
    "100 bf",
  ]);
  expect(steps[2]?.sum).toBe("table at 14 in and 14 ft");
});

it("International goes section by section, half an inch thicker each, a short one last", () => {
  const tops = scaleWorking(internationalQuarter, log(10, 10), none).filter(({ unit }) => unit === "in");
  expect(tops.map(({ meaning, value }) => [meaning, value])).toEqual([
    ["Section 1: its top diameter", 10],
    ["Section 2: its top diameter", 10.5],
    ["Section 3, a short one: its top diameter", 11],
  ]);
});

it("a long log names its pieces and adds them, and a deduction comes last", () => {
  const meanings = scaleWorking(doyle, log(14, 32), percent(10), undefined, feet(16)).map(({ meaning }) => meaning);
  expect(meanings.slice(0, 2)).toEqual([
    "Piece 1 of 2: diameter taken, and length",
    "Piece 1 of 2: diameter less slabs and edgings",
  ]);
  expect(meanings.slice(-3)).toEqual([
    "All pieces together",
    "Less the deduction for defect",
    "Rounded as the rule's printed tables are",
  ]);
});

it("a rounded diameter is the first thing it says", () => {
  const [taken, less] = scaleWorking(doyle, log(14.6, 16), none, undefined, undefined, rounderFor(fractionDropped, 1));
  expect(taken).toEqual({ sum: "14 in x 16 ft", meaning: "Diameter taken, and length", value: 14, unit: "in" });
  expect(less?.sum).toBe("14 - 4");
});

describe.each(logRules)("$title", (rule) => {
  it.each(scaleRoundings)("ends in what LOGSCALE gives, rounding: $title", (rounding) => {
    const anyLog = fc.record({
      diameter: fc.double({ min: 6, max: 40, noNaN: true }),
      length: fc.double({ min: 6, max: 40, noNaN: true }),
      deduction: fc.oneof(fc.constant(0), fc.double({ min: 1, max: 100, noNaN: true })),
      longest: fc.constantFrom(12, 16, 20),
    });
    fc.assert(
      fc.property(anyLog, ({ diameter, length, deduction, longest }) => {
        const steps = scaleWorking(rule, log(diameter, length), percent(deduction), rounding, feet(longest));
        const gross = grossScale(rule, log(diameter, length), rounding, feet(longest));
        expectWorking(steps, netScale(rule, gross, percent(deduction), rounding));
      }),
    );
  });

  it("refuses with the sentences of the rule itself", () => {
    const sentence = sentenceOf(() => rule.scale(log(2, 16)));
    expect(sentenceOf(() => scaleWorking(rule, log(2, 16), none))).toBe(sentence);
    expect(() => scaleWorking(rule, log(-1, 16), none)).toThrow("Diameter should be above 0 in. You have -1.");
  });
});

/** What a call is refused with; undefined when it answers, as a rule does that reaches down to small logs. */
function sentenceOf(call: () => unknown): string | undefined {
  try {
    call();
  } catch (problem) {
    return (problem as Error).message;
  }
  return undefined;
}
