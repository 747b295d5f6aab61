import { describe, expect, it } from "vitest";
import { usualPlan } from "../../../src/pane/plan/planForm";
import { readPlan, variationOf } from "../../../src/pane/plan/readPlan";
import { speciesList } from "../../../src/pane/plan/speciesList";

describe("the plan", () => {
  it("asks for 22 points at a CV of 45 % and a margin of 20 %, as t read again for each n gives", () => {
    // By hand: n = (t x 45 / 20)^2; t(0.95, 21) = 2.080 gives 21.9, t(0.95, 20) = 2.086 gives 22.03.
    expect(readPlan({ ...usualPlan, acres: "32" }).needed).toBe(22);
  });

  it("spaces 14 points on 32 acres 315.5 ft apart: the root of 43,560 x 32 / 14", () => {
    expect(readPlan({ ...usualPlan, acres: "32", points: "14" }).spacing).toBeCloseTo(315.5, 1);
  });

  it("can be built once acres are given", () => {
    expect(readPlan(usualPlan).settings).toBeUndefined();
    expect(readPlan({ ...usualPlan, acres: "32" }).settings).toMatchObject({ acres: 32, size: 10, target: 20 });
  });

  it("gives way to the variation of the owner's own points, but not over one that he typed", () => {
    expect(variationOf(usualPlan, undefined)).toBe("45");
    expect(variationOf({ ...usualPlan, mixture: "patchy" }, undefined)).toBe("65");
    expect(variationOf(usualPlan, 24.637)).toBe("24.6");
    expect(variationOf({ ...usualPlan, variation: "30" }, 24.637)).toBe("30");
  });

  it.each([
    ["acres", "32 ac", 'Acres needs a number in acres, but you typed "32 ac".'],
    ["acres", "-1", "Acres should be between 0.1 and 100000 acres. You have -1."],
    ["target", "0", "The margin should be between 1 and 100 percent. You have 0."],
    ["confidence", "100", "The confidence should be between 50 and 99.9 percent. You have 100."],
    ["gauge", "", "The basal area factor needs a number in square feet per acre."],
    ["points", "7.5", "The number of points should be whole."],
  ] as const)("says what is wrong with %s of %j", (field, typed, sentence) => {
    const reading = readPlan({ ...usualPlan, acres: "32", [field]: typed });
    expect(reading.problems[field]).toBe(sentence);
    expect(reading.settings).toBeUndefined();
  });
});

describe("the list of species", () => {
  it("reads a code and a name from each line", () => {
    expect(speciesList("ro red oak\n\n sm,sugar maple\nhi\nRO again")).toEqual([
      { code: "ro", name: "red oak" },
      { code: "sm", name: "sugar maple" },
      { code: "hi", name: "hi" },
    ]);
  });
});
