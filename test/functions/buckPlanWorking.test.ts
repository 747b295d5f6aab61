import { describe, expect, it } from "vitest";
import type { Step } from "../../src/core/basis/step";
import { buckPlan } from "../../src/functions/bucking";
import { buckPlan as listed } from "../../src/functions/shell/working/buckPlan";
import { working, WorkingName } from "../../src/functions/working";
import { errorOf } from "../support/cells";
import { expectWorking } from "../support/expectWorking";

const products = [
  ["Sawlogs", 10, 12, 16, 2, "International 1/4", 450],
  ["Short sawlogs", 8, 8, 10, 2, "Doyle", 330],
  ["Bolts", 6, 4, 8, 2, "Smalian", 1.5],
  ["Pulpwood", 4, 8, 8, 1, "Cords", 20],
  ["Chips", 2, 4, 4, 1, "Cubic", 0.05],
];
const metricProducts = [["Sawlogs", 25, 3, 5, 0.5, "Doyle", 450]];

const byHeight = ["white oak", 21.5, 84, products, 1, 0.33, [[26], [47]], [[29], [47]]];
const byLogs = [null, 18, null, products, null, null, null, null, null, null, 2.5, 80];
const metric = ["white oak", 55, 26, metricProducts, 0.3, 0.1, null, null, null, null, null, null, "metric"];

/** As a spreadsheet hands them over: each argument a range. */
const ranges = (args: readonly unknown[]) =>
  args.map((arg): unknown => (Array.isArray(arg) ? arg : [[arg]])) as unknown[][][];
const stepsOf = (args: readonly unknown[]): Step[] =>
  (working(WorkingName.buckPlan, ranges(args)).slice(1) as [string, string, number, string][]).map(
    ([sum, meaning, value, unit]) => ({ sum, meaning, value, unit }),
  );
const planOf = (args: readonly unknown[]): unknown[][] =>
  (buckPlan(...(ranges(args) as never as Parameters<typeof buckPlan>)) as unknown[][]).slice(1);

describe.each([
  ["by total height, with rot and a crook", byHeight],
  ["by logs and form class", byLogs],
  ["in metric measures", metric],
] as const)("the working of a plan %s", (_, args) => {
  it("ends in what the plan brings, and every step adds up", () => {
    expectWorking(
      stepsOf(args),
      planOf(args).reduce((sum, row) => sum + (row[6] as number), 0),
    );
  });

  it("sets down every log of the plan, and turns down nothing that would bring more", () => {
    const steps = stepsOf(args);
    const prices = steps.filter(({ meaning }) => meaning.endsWith(": at its price"));
    expect(prices.map(({ value }) => value)).toEqual(planOf(args).map((row) => row[6]));
    const ways = steps.filter(({ meaning }) => /with the best (that|above)/.test(meaning));
    ways.forEach(({ meaning, value }, i) => {
      if (meaning.startsWith("Next best")) expect(value).toBeLessThanOrEqual((ways[i - 1]?.value ?? NaN) + 1e-9);
    });
  });
});

it("is worked out by hand for a stem with one place for a log", () => {
  // Form class 80 of 20 in: 16.0 in at 17.3 ft, so that one log of 16 ft is cut at 1 + 16 + 0.3. Doyle: (16 - 4)^2 = 144 bf.
  const one = [["Sawlogs", 10, 16, 16, 1, "Doyle", 500]];
  const steps = stepsOf([null, 20, null, one, 1, 0.3, null, null, null, null, 1, 80]);
  expect(steps.map(({ sum, value, unit }) => [sum, Number(value.toFixed(6)), unit])).toEqual([
    ["17.3 - 1", 16.3, "ft"],
    ["1 + 16 + 0.3", 17.3, "ft"],
    ["at 17.3 ft", 16, "in"],
    ["16 - 4", 12, "in"],
    ["12 / 4", 3, "in"],
    ["3 ^ 2", 9, "bf"],
    ["9 * 16", 144, "bf"],
    ["round 144", 144, "bf"],
    ["144 / 1000 * 500", 72, "$"],
    ["72 + 0", 72, "$"],
    ["72", 72, "$"],
  ]);
});

it("says where no product fits between two flaws", () => {
  const flaws = [[20], [24]];
  const steps = stepsOf(["white oak", 21.5, 84, products, 1, 0.33, flaws, [[23], [40]]]);
  expect(steps).toContainEqual({
    sum: "no log",
    meaning: "No product fits here, or none that pays",
    value: 0,
    unit: "$",
  });
});

it("refuses in the words of the function itself", () => {
  for (const [place, wrong] of [
    [0, "no such tree"],
    [1, "14.3in"],
    [2, 5000],
    [3, [["Sawlogs", 10, 12, 16, 2, "Doyle", 0]]],
    [4, -1],
  ] as const) {
    const args = byHeight.map((arg, i) => (i === place ? wrong : arg));
    const refused = errorOf(() => planOf(args));
    expect(refused?.message).toMatch(/^[A-Z"].+[.?]$/);
    expect(errorOf(() => stepsOf(args))).toEqual(refused);
  }
});

it("takes as many arguments as the function, and wants its tree", () => {
  expect(listed.takes).toBe(buckPlan.length);
  expect(() => stepsOf(["white oak", null, 84, products])).toThrow("DBH is missing, so there is nothing to work out.");
  expect(() => stepsOf(["white oak", 20, null, products])).toThrow("missing, so there is nothing to work out.");
});
