import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { measureTos } from "../../src/core/cruise/measureTo";
import { heightScales } from "../../src/core/tree/heightScales";
import { AngleScale, horizontalDistance, logsFromHeight, treeHeight, WoodsUnits } from "../../src/functions/woods";
import { inOrOut, limitingDistance, TapeTo, TapeUnits } from "../../src/functions/inOrOut";

/** A text or number as a cell may hold it, whatever the argument is meant to be. */
const cell = (value: unknown) => value as never;
const column = (...values: unknown[]) => values.map((value) => [value]);
const valueError = (message: string) => expect.objectContaining({ code: "#VALUE!", message }) as unknown;
const near = (value: number, digits: number) => expect.closeTo(value, digits) as unknown;

describe("LIMITINGDISTANCE", () => {
  it("is 39.3 ft for 14.3 in at BAF 10: 2.75 x 14.3 = 39.325", () => {
    expect(limitingDistance(cell(14.3), cell(10))).toEqual([[near(39.325, 9)]]);
  });

  it("is shorter to the face and longer along a slope", () => {
    // 12 in at BAF 10: 33 ft to the center, 32.5 to the face; 75 % stretches by 1.25.
    expect(limitingDistance(cell(12), cell(10), TapeTo.Face)).toEqual([[near(32.5, 9)]]);
    expect(limitingDistance(column(12, 12), cell(10), cell(null), column(0, 75))).toEqual([
      [near(33, 9)],
      [near(41.25, 9)],
    ]);
  });

  it("in metric is D / (2 sqrt(BAF)): 30 cm at 4 m2/ha is 7.5 m", () => {
    expect(limitingDistance(cell(30), cell(4), cell(null), cell(null), TapeUnits.Metric)).toEqual([[near(7.5, 9)]]);
  });

  it("passes over blanks and refuses a text", () => {
    expect(limitingDistance(column(null, 12, "twelve"), cell(10))).toEqual([
      [""],
      [near(33, 9)],
      [valueError('DBH needs a number, but the cell has "twelve". Type just the number.')],
    ]);
    expect(() => limitingDistance(cell(12), cell(10), cell("Bark"))).toThrow(
      'Measure to should be one of: Center, Face. You have "Bark".',
    );
  });
});

describe("INOROUT", () => {
  it("14.3 in at 39.0 ft and BAF 10 is in", () => expect(inOrOut(cell(14.3), cell(39), cell(10))).toEqual([["In"]]));

  it("tells in from out from too close, row by row", () => {
    expect(inOrOut(column(12, 12, 12, 12), column(32, 33.05, 34, ""), cell(10))).toEqual(
      column("In", "Too close - tape again", "Out", ""),
    );
  });

  it("takes a tolerance of 0 at its word, and one tenth of a foot when left out", () => {
    const at = (tolerance: unknown) =>
      inOrOut(cell(12), cell(33.05), cell(10), cell(null), cell(null), cell(tolerance));
    expect(at(0)).toEqual([["Out"]]);
    expect(at(null)).toEqual([["Too close - tape again"]]);
    expect(at(0.01)).toEqual([["Out"]]);
  });

  it("reads meters, and keeps the tenth of a foot when the tolerance is left out", () => {
    // 30 cm at 4 m2/ha: 7.5 m; a tenth of a foot is 0.0305 m.
    const at = (metres: number) =>
      inOrOut(cell(30), cell(metres), cell(4), cell(null), cell(null), cell(null), TapeUnits.Metric);
    expect([at(7.46), at(7.48), at(7.52), at(7.54)].flat(2)).toEqual([
      "In",
      "Too close - tape again",
      "Too close - tape again",
      "Out",
    ]);
  });
});

describe("TREEHEIGHT", () => {
  it("is 60.7 ft from 66 ft with 85 and -7 percent: 0.66 x 92 = 60.72", () => {
    expect(treeHeight(cell(66), cell(85), cell(-7))).toEqual([[near(60.72, 9)]]);
  });

  it("reads degrees and the topographic scale", () => {
    expect(treeHeight(cell(50), cell(45), cell(0), AngleScale.Degrees)).toEqual([[near(50, 9)]]);
    expect(treeHeight(cell(66), cell(41), cell(-9), AngleScale.Topo)).toEqual([[near(50, 9)]]);
  });

  it("brings a sloping tape down to the level: 50 ft on 75 % is 40 ft", () => {
    expect(treeHeight(cell(50), cell(100), cell(0), cell(null), cell(75))).toEqual([[near(40, 9)]]);
  });

  it("answers in meters when metric", () => {
    expect(treeHeight(cell(20), cell(85), cell(-5), cell(null), cell(null), WoodsUnits.Metric)).toEqual([
      [near(18, 9)],
    ]);
  });

  it("refuses a top that is not above the base, in its row", () => {
    expect(treeHeight(column(66, 66, ""), column(85, -9, 85), column(-7, -7, -7))).toEqual([
      [near(60.72, 9)],
      [valueError("The top reading should be above the base reading.")],
      [""],
    ]);
  });
});

describe("HORIZONTALDISTANCE", () => {
  it("is 46.4 ft for 50 ft on 40 %: 50 / sqrt(1.16)", () => {
    expect(horizontalDistance(cell(50), cell(40))).toEqual([[near(46.424, 3)]]);
  });

  it("is the distance itself on level ground, and blank without a distance", () => {
    expect(horizontalDistance(column(50, ""), column(null, 40))).toEqual([[50], [""]]);
  });
});

describe("LOGSFROMHEIGHT", () => {
  it("is 2.5 logs for 41 ft: 41 / 16.3 = 2.515", () => expect(logsFromHeight(cell(41))).toEqual([[2.5]]));

  it("reads a column, and other lengths, trims and steps", () => {
    expect(logsFromHeight(column(41, null, 16.3, 3))).toEqual(column(2.5, "", 1, 0));
    expect(logsFromHeight(cell(41), 8, 0, 1)).toEqual([[5]]);
    expect(logsFromHeight(cell(44), 16, 0)).toEqual([[3]]); // 2.75, half way, goes up
    expect(logsFromHeight(cell(44), null, null, null)).toEqual([[2.5]]); // 2.699
  });

  it("refuses a height no tree has", () => {
    expect(logsFromHeight(cell(-4))).toEqual([
      [valueError("Merchantable height should be between 0.1 and 400 ft. You have -4.")],
    ]);
  });
});

it("metric and imperial tell one limit and one height", () => {
  const reach = fc.record({
    dbh: fc.double({ min: 2, max: 75, noNaN: true }),
    baf: fc.double({ min: 5, max: 40, noNaN: true }),
    slope: fc.double({ min: -100, max: 100, noNaN: true }),
    distance: fc.double({ min: 10, max: 300, noNaN: true }),
  });
  const number = (answer: unknown[][]) => answer[0]?.[0] as number;
  fc.assert(
    fc.property(reach, fc.constantFrom(TapeTo.Center, TapeTo.Face), ({ dbh, baf, slope, distance }, to) => {
      // An inch is 2.54 cm, a foot 0.3048 m; an acre is 43 560 square feet and a hectare 10 000 square meters.
      const bafMetric = (baf * 10_000) / 43_560;
      const metric = limitingDistance(cell(dbh * 2.54), cell(bafMetric), to, cell(slope), TapeUnits.Metric);
      expect(number(metric)).toBeCloseTo(number(limitingDistance(cell(dbh), cell(baf), to, cell(slope))) * 0.3048, 6);

      const height = treeHeight(
        cell(distance * 0.3048),
        cell(80),
        cell(-5),
        cell(null),
        cell(slope),
        WoodsUnits.Metric,
      );
      const feet = treeHeight(cell(distance), cell(80), cell(-5), cell(null), cell(slope));
      expect(number(height)).toBeCloseTo(number(feet) * 0.3048, 6);
    }),
  );
});

describe("the menus that a formula offers", () => {
  it("hold every place where a tape may end", () => {
    expect(Object.values(TapeTo)).toEqual(measureTos.map(({ title }) => title));
  });
  it("hold every scale of an instrument", () => {
    expect(Object.values(AngleScale)).toEqual(heightScales.map(({ title }) => title));
  });
  it("hold both unit systems", () => {
    for (const menu of [WoodsUnits, TapeUnits]) expect(Object.values(menu)).toEqual(["imperial", "metric"]);
  });
});
