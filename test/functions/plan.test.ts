import { describe, expect, it } from "vitest";
import { measureTos } from "../../src/core/cruise/measureTo";
import { gridSpacing, plotRadius, plotRadiusFactor, PlanUnits, RadiusTo } from "../../src/functions/plan";

/** A text or number as a cell may hold it, whatever the argument is meant to be. */
const cell = (value: unknown) => value as never;
const column = (...values: unknown[]) => values.map((value) => [value]);
const valueError = (message: string) => expect.objectContaining({ code: "#VALUE!", message }) as unknown;
const near = (value: number, digits: number) => expect.closeTo(value, digits) as unknown;

describe("GRIDSPACING", () => {
  it("is 315.5 ft for 14 plots on 32 acres: sqrt(43560 x 32 / 14)", () => {
    expect(gridSpacing(32, 14)).toBeCloseTo(315.54, 2);
  });

  it("is 100 m for one plot to the hectare", () => expect(gridSpacing(12, 12, PlanUnits.Metric)).toBeCloseTo(100, 9));

  it("asks for what is missing", () => {
    expect(() => gridSpacing(null, 14)).toThrow("Acres needs a number in ac, but the cell is blank.");
    expect(() => gridSpacing(32, 0)).toThrow("Plots should be between 1 and 100000 plots. You have 0.");
    expect(() => gridSpacing(32, 14, cell("feet"))).toThrow(
      'Units should be one of: imperial, metric. You have "feet".',
    );
  });
});

describe("PLOTRADIUS", () => {
  it("is 37.2 ft for a tenth of an acre: sqrt(4356 / pi)", () => {
    expect(plotRadius(cell(0.1))).toEqual([[near(37.237, 3)]]);
  });

  it("is larger along a slope, by the fourth root: 75 % stretches by the root of 1.25", () => {
    expect(plotRadius(column(0.1, 0.1, ""), column(0, 75, 75))).toEqual([
      [near(Math.sqrt(4356 / Math.PI), 9)],
      [near(Math.sqrt((4356 / Math.PI) * 1.25), 9)],
      [""],
    ]);
  });

  it("in metric is 17.84 m for a tenth of a hectare: sqrt(1000 / pi)", () => {
    expect(plotRadius(cell(0.1), cell(null), PlanUnits.Metric)).toEqual([[near(Math.sqrt(1000 / Math.PI), 9)]]);
  });

  it("refuses a slope that no one stands on", () => {
    expect(plotRadius(cell(0.1), cell(900))).toEqual([
      [valueError("Slope should be between -200 and 200 %. You have 900. Missing a decimal point?")],
    ]);
  });
});

describe("PLOTRADIUSFACTOR", () => {
  it("is 2.75 ft per inch at BAF 10, and half an inch less to the face", () => {
    expect(plotRadiusFactor(cell(10))).toEqual([[2.75]]);
    expect(plotRadiusFactor(column(10, null), RadiusTo.Face)).toEqual([[near(2.75 - 0.5 / 12, 9)], [""]]);
  });

  it("in metric is 1 / (2 sqrt(BAF)) m per cm", () => {
    expect(plotRadiusFactor(cell(4), cell(null), PlanUnits.Metric)).toEqual([[near(0.25, 9)]]);
  });
});

describe("the menus that a formula offers", () => {
  it("hold every place where a distance may end", () => {
    expect(Object.values(RadiusTo)).toEqual(measureTos.map(({ title }) => title));
  });
  it("hold both unit systems", () => expect(Object.values(PlanUnits)).toEqual(["imperial", "metric"]));
});
