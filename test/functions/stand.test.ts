import { describe, expect, it } from "vitest";
import { samplingMethods } from "../../src/core/cruise/methods";
import { ClassTableSampling } from "../../src/functions/classTables";
import { SummarySampling } from "../../src/functions/standSummary";
import { qmd, SamplingMethodName, StandUnits, tractTotal, treesPerAcre } from "../../src/functions/stand";
import { errorOf } from "../support/cells";

const { point, fixed } = SamplingMethodName;

it.each([SamplingMethodName, SummarySampling, ClassTableSampling])(
  "each menu of methods is the core's list",
  (menu) => {
    expect(Object.values(menu)).toEqual(samplingMethods.map(({ title }) => title));
  },
);

describe("TREESPERACRE", () => {
  it("answers cell by cell and passes blanks over", () => {
    const answer = treesPerAcre([[14], [""], [0], ["14in"]], point, [[10]]);
    expect(answer[0]?.[0]).toBeCloseTo(9.354413, 5);
    expect([answer[1], answer[2]]).toEqual([[""], [""]]);
    expect(answer[3]?.[0]).toMatchObject({
      code: "#VALUE!",
      message: 'DBH needs a number, but the cell has "14in". Type just the number.',
    });
  });

  it("takes metric: 30 cm at 4 m2/ha stands for 4 over its basal area", () => {
    expect(treesPerAcre([[30]], point, [[4]], StandUnits.metric)[0]?.[0]).toBeCloseTo(4 / (Math.PI * 0.15 ** 2), 8);
    expect(treesPerAcre([[30]], fixed, [[0.05]], StandUnits.metric)[0]?.[0]).toBeCloseTo(20, 10);
  });

  it("names the methods when it is given another", () => {
    expect(errorOf(() => treesPerAcre([[14]], "Circle" as SamplingMethodName, [[10]]))).toMatchObject({
      code: "#VALUE!",
      message: 'Method should be one of: Point, Fixed, Strip, All, Point and fixed. You have "Circle".',
    });
  });
});

describe("QMD", () => {
  it("takes a row, a column or weights", () => {
    expect(qmd([[10, 14, 18]])).toBeCloseTo(14.376, 3);
    expect(qmd([[10], [14], [""], [18]])).toBeCloseTo(14.376, 3);
    expect(qmd([[10], [20]], [[3], [1]])).toBeCloseTo(Math.sqrt(175), 10);
    expect(qmd([[25], [35]], undefined, StandUnits.metric)).toBeCloseTo(Math.sqrt((625 + 1225) / 2), 10);
  });

  it("has nothing to work on without trees", () => {
    expect(errorOf(() => qmd([[""]]))).toMatchObject({
      code: "#N/A",
      message: "Nothing to work on yet.",
    });
    expect(errorOf(() => qmd([[12], [143]]))?.message).toContain("Row 2: DBH should be between 1 and 80 in.");
  });
});

describe("TRACTTOTAL", () => {
  it("gives one row: total, margin, low and high", () => {
    expect(tractTotal(8071, 1779, 32)).toEqual([[258_272, 56_928, 201_344, 315_200]]);
    expect(tractTotal([[1000]], [[30]], [[50]], [[2]])[0]?.[1]).toBeCloseTo(2500, 9);
  });

  it("asks for acres", () => {
    expect(errorOf(() => tractTotal(8071, 1779, ""))?.message).toBe(
      "Acres needs a number in ac (ha), but the cell is blank.",
    );
    expect(errorOf(() => tractTotal(8071, -1, 32))).toMatchObject({
      code: "#VALUE!",
    });
  });
});
