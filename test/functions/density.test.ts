import { describe, expect, it } from "vitest";
import { densityMeasures } from "../../src/core/cruise/densities";
import { DensityMeasureName, DensityUnits, standDensity } from "../../src/functions/density";
import { errorOf } from "../support/cells";

it("the menu of measures is the list of the core", () => {
  expect(Object.values(DensityMeasureName)).toEqual(densityMeasures.map(({ title }) => title));
});

describe("STANDDENSITY", () => {
  it("is 200 for 200 trees of 10 in, by either way", () => {
    expect(standDensity([[200]], [[10]])).toBeCloseTo(200, 9);
    expect(standDensity([[120], [80]], [[10], [10]], DensityMeasureName.SdiBySummation)).toBeCloseTo(200, 9);
  });

  it("passes rows over that lack trees or diameter, such as the totals of a table", () => {
    expect(standDensity([[200], [""], [200]], [[10], [12], [""]])).toBeCloseTo(200, 9);
  });

  it("in metric answers per hectare, but for relative density, which has units of its own", () => {
    const [trees, cm] = [[[200 * 2.4710538146716536]], [[25.4]]];
    expect(standDensity(trees, cm, undefined, DensityUnits.metric)).toBeCloseTo(200 * 2.4710538146716536, 6);
    expect(standDensity(trees, cm, DensityMeasureName.RelativeDensity, DensityUnits.metric)).toBeCloseTo(
      standDensity([[200]], [[10]], DensityMeasureName.RelativeDensity),
      9,
    );
    expect(standDensity(trees, cm, DensityMeasureName.UplandOakStocking, DensityUnits.metric)).toBeCloseTo(
      standDensity([[200]], [[10]], DensityMeasureName.UplandOakStocking),
      9,
    );
  });

  it("says what it lacks", () => {
    expect(errorOf(() => standDensity([[""]], [[""]]))).toMatchObject({
      code: "#N/A",
      message: "Nothing to work on yet.",
    });
    expect(errorOf(() => standDensity([[100]], [[143]]))?.message).toBe(
      "Row 1: DBH should be between 1 and 80 in. You have 143. Missing a decimal point?",
    );
    expect(errorOf(() => standDensity([[100]], [[14]], "Crowding" as DensityMeasureName))?.message).toContain(
      "Measure should be one of: SDI, SDI by summation, Relative density, Upland oak stocking.",
    );
  });
});
