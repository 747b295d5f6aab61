import { describe, expect, it } from "vitest";
import { measureTos } from "../../src/core/cruise/measureTo";
import { plotGuides } from "../../src/core/cruise/plotsByAcres";
import {
  bafOptions,
  gridPoints,
  gridSpacing,
  plotRadius,
  plotRadiusFactor,
  plotsByAcres,
  PlanUnits,
  PlotGuideName,
  RadiusTo,
} from "../../src/functions/plan";

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

describe("PLOTSBYACRES", () => {
  it("follows the guide that is named, the least one when none is", () => {
    expect(plotsByAcres(32)).toBe(10);
    expect(plotsByAcres(32, PlotGuideName.Teaching)).toBe(32);
    expect(plotsByAcres([["32"]], cell("nrcs"))).toBe(10);
  });

  it("says where a guide stops", () => {
    expect(() => plotsByAcres(201, PlotGuideName.Teaching)).toThrow(
      expect.objectContaining({ code: "#N/A", message: "This rule stops at 200 acres." }),
    );
    expect(() => plotsByAcres("")).toThrow("Acres needs a number in ac, but the cell is blank.");
    expect(() => plotsByAcres(32, cell("Mine"))).toThrow(
      'Guide should be one of: NRCS minimum, Teaching rule. You have "Mine".',
    );
  });
});

describe("BAFOPTIONS", () => {
  it("has the trees to expect at a point of a stand of 95 ft2/ac", () => {
    const table = bafOptions(95);
    expect(table[0]).toEqual(["BAF ft2/ac", "Trees per point", "Note"]);
    expect(table.slice(1, 5).map(([baf, trees]) => [baf as number, Math.round((trees as number) * 10) / 10])).toEqual([
      [5, 19],
      [10, 9.5],
      [15, 6.3],
      [20, 4.8],
    ]);
    expect(table.slice(1).map(([, , note]) => note as string)).toEqual([
      "More than 8: many trees to check",
      "More than 8: many trees to check",
      "4 to 8 trees: as taught",
      "4 to 8 trees: as taught",
      "Fewer than 4: few trees to average",
      "Fewer than 4: few trees to average",
    ]);
  });

  it("has metric gauges for metric stands", () => {
    const table = bafOptions(24, PlanUnits.Metric);
    expect([table[0]?.[0], table[3]]).toEqual(["BAF m2/ha", [3, 8, "4 to 8 trees: as taught"]]);
  });
});

describe("GRIDPOINTS", () => {
  it("walks a grid of 4 lines by 3 points", () => {
    const table = gridPoints(1320, 1056, 315.5, 90, 140);
    expect(table[0]).toEqual(["Point", "East", "North"]);
    expect(table.slice(1)).toHaveLength(12);
    expect(table[4]).toEqual([4, 405.5, 771]);
    expect(table.at(-1)).toEqual([12, 1036.5, 140]);
  });

  it("starts half a spacing in when it is not told where", () => {
    expect(gridPoints(200, 100, 100)).toEqual([
      ["Point", "East", "North"],
      [1, 50, 50],
      [2, 150, 50],
    ]);
    expect(gridPoints(200, 100, 100, 0, "")).toEqual(gridPoints(200, 100, 100));
  });

  it("says what is wrong", () => {
    expect(() => gridPoints(100, 100, 500)).toThrow(
      expect.objectContaining({ code: "#N/A", message: "No point falls inside; use a smaller spacing." }),
    );
    expect(() => gridPoints(900, 900, 100, 150)).toThrow("Start x should be between 0 and 100. You have 150.");
    expect(() => gridPoints("", 100, 50)).toThrow("Width needs a number, but the cell is blank.");
  });
});

describe("the menus that a formula offers", () => {
  it("hold every place where a distance may end", () => {
    expect(Object.values(RadiusTo)).toEqual(measureTos.map(({ title }) => title));
  });
  it("hold every printed guide", () => {
    expect(Object.values(PlotGuideName)).toEqual(plotGuides.map(({ title }) => title));
  });
  it("hold both unit systems", () => expect(Object.values(PlanUnits)).toEqual(["imperial", "metric"]));
});
