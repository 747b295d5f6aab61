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

  it("stops before the bed", () => {
    expect(headSettings(2.43, 1.125, 0.09, 2).at(-1)?.[1]).toBeCloseTo(0, 9);
    expect(() => headSettings(2.4, 1.125, 0.09, 2)).toThrow("The last cut would hit the bed.");
    expect(() => headSettings(14, 1.125, 0.09, null)).toThrow("Pieces needs a number, but the cell is blank.");
  });
});
