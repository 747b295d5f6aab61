import { describe, expect, it } from "vitest";
import { headSettings, largestCant, millFits, MillUnits } from "../../src/functions/millSetup";

const mill = [
  ["Limit", "Value"],
  ["Longest log", 14],
  ["Largest diameter", 26],
  ["Throat", 8],
];

describe("MILLFITS", () => {
  it("says that a log fits, or every reason why not, log by log", () => {
    expect(millFits([[12], [12], [""], [25]], [[14], [14], [14], [27]], [[16], [14], [14], [15]], mill)).toEqual([
      ["Too long by 2 ft"],
      ["Fits"],
      [""],
      ["Too thick by 1 in; Too long by 1 ft"],
    ]);
  });

  it("reads and says metric units, and gives a log whose ends are swapped its own sentence", () => {
    const longest = [["Longest log", 4.5]];
    expect(millFits([[30]], [[30]], [[5]], longest, MillUnits.metric)).toEqual([["Too long by 0.5 m"]]);
    expect(String(millFits([[14]], [[12]], [[16]], mill)[0]?.[0])).toContain("Ends swapped?");
    expect(() => millFits([[12]], [[14]], [[16]], [["Blade width", 2]])).toThrow("Mill limit should be one of:");
  });
});

describe("LARGESTCANT", () => {
  it("gives the square, or the thickness left at a width: 6 x 8 from a 10-in log", () => {
    const [header, square] = largestCant([[14]]) as [string[], number[]];
    expect(header).toEqual(["Thickness", "Width"]);
    expect(square?.[0]).toBeCloseTo(9.899, 3); // 14 / sqrt(2)
    expect(square?.[1]).toBe(square?.[0]);
    expect(largestCant([[10]], 8)[1]).toEqual([6, 8]); // 6 x 6 + 8 x 8 = 10 x 10
  });

  it("refuses a width that the log does not have, and waits for a log", () => {
    expect(() => largestCant([[10]], 12)).toThrow("Width should be between 0.01 and 10. You have 12.");
    expect(() => largestCant([[10]], 10)).toThrow("should be above 0");
    expect(largestCant([[""]])[1]).toEqual(["No log yet", ""]);
  });
});

describe("HEADSETTINGS", () => {
  it("counts down by a board and a kerf", () => {
    // 14 - 1.215 = 12.785, and so on down to 14 - 5 x 1.215 = 7.925.
    const readings = headSettings(14, 1.125, 0.09, 5).slice(1) as [number, number][];
    expect(readings.map(([cut, reading]) => [cut, Number(reading.toFixed(3))])).toEqual([
      [1, 12.785],
      [2, 11.57],
      [3, 10.355],
      [4, 9.14],
      [5, 7.925],
    ]);
  });

  it("stops at the marks of the mill's scale, so that no board is thinner than asked", () => {
    // 1.125 + 0.09 is 19.44 sixteenths: 20 of them, 1 1/4 in, leave boards of 1.16 in. 14 - 1 1/4 = 12 3/4, and so on.
    expect(headSettings(14, 1.125, 0.09, 3, [["Scale step", 0.0625]])).toEqual([
      ["Cut", "Head reading in", "On the scale", "Board comes out in"],
      [1, 12.75, "12 3/4", expect.closeTo(1.16, 9)],
      [2, 11.5, "11 1/2", expect.closeTo(1.16, 9)],
      [3, 10.25, "10 1/4", expect.closeTo(1.16, 9)],
    ]);
    // A face that was opened between two marks: 8.03 - 1.215 = 6.815, and the mark below is 6 13/16 or 6.8125.
    expect(headSettings(8.03, 1.125, 0.09, 2, [["Scale step", 0.0625]]).slice(1)).toEqual([
      [1, 6.8125, "6 13/16", expect.closeTo(1.1275, 9)],
      [2, 5.5625, "5 9/16", expect.closeTo(1.16, 9)],
    ]);
    // Board and kerf just as thick as so many marks.
    expect(headSettings(3, 0.9, 0.1, 2, [["Scale step", 0.125]]).slice(1)).toEqual([
      [1, 2, "2", expect.closeTo(0.9, 9)],
      [2, 1, "1", expect.closeTo(0.9, 9)],
    ]);
  });

  it("reads and says centimetres, down to where the blade stops", () => {
    const metric = [
      ["Scale step", 0.1],
      ["Blade above bed", 2.5],
    ];
    // 2.7 + 0.25 is 29.5 marks of a millimetre: 3 cm, and boards of 2.75 cm.
    expect(headSettings(12, 2.7, 0.25, 3, metric, MillUnits.metric)).toEqual([
      ["Cut", "Head reading cm", "On the scale", "Board comes out cm"],
      [1, expect.closeTo(9, 9), "9", expect.closeTo(2.75, 9)],
      [2, expect.closeTo(6, 9), "6", expect.closeTo(2.75, 9)],
      [3, expect.closeTo(3, 9), "3", expect.closeTo(2.75, 9)],
    ]);
    expect(() => headSettings(11, 2.7, 0.25, 3, metric, MillUnits.metric)).toThrow(
      "Cut 3 would be 2 cm above the bed, and your blade stops 2.5 cm above it.",
    );
    expect(() => headSettings(4, 1, 0.25, 3, [["Blade above bed", 1]])).toThrow(
      "Cut 3 would be 0.25 in above the bed, and your blade stops 1 in above it.",
    );
  });

  it("stops before the bed", () => {
    expect(headSettings(2.43, 1.125, 0.09, 2).at(-1)?.[1]).toBeCloseTo(0, 9);
    expect(() => headSettings(2.4, 1.125, 0.09, 2)).toThrow("The last cut would hit the bed.");
    expect(() => headSettings(14, 1.125, 0.09, null)).toThrow("Pieces needs a number, but the cell is blank.");
    expect(() => headSettings(14, 1.125, 0.09, 2.5)).toThrow("Pieces should be a whole number. You have 2.5.");
    expect(() => headSettings(null, 1.125, 0.09, 2)).toThrow("Start needs a number in inches, but the cell is blank.");
  });
});
