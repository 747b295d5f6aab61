import { describe, expect, it } from "vitest";
import { breakEvenPrice, compareWays, homeSawNet, valueRange } from "../../src/functions/money";

describe("VALUERANGE", () => {
  it("prices a volume with its margin", () => {
    // 258 x 300, (258 - 57) x 300, (258 + 57) x 300
    expect(valueRange(258, 57, 300, null, null)).toEqual([[77_400, 60_300, 94_500]]);
  });

  it("takes the low volume at the low price and the high one at the high price", () => {
    expect(valueRange([[258]], [[57]], [[300]], 250, 400)).toEqual([[77_400, 201 * 250, 315 * 400]]);
  });

  it("never values timber below nothing", () => {
    expect(valueRange(10, 25, 300)).toEqual([[3000, 0, 10_500]]);
  });

  it("says when prices are swapped or do not hold the price between them", () => {
    expect(() => valueRange(258, 57, 300, 400, 250)).toThrow("Swap the low and high price.");
    expect(() => valueRange(258, 57, 300, 320, 400)).toThrow("320 and 400 $ per MBF. You have 300.");
    expect(() => valueRange(258, 57, "$300")).toThrow(
      'Price needs a number, but the cell has "$300". Type just the number.',
    );
  });

  it("waits for a volume", () => {
    expect(valueRange(null, 57, 300)).toEqual([["", "", ""]]);
  });
});

describe("HOMESAWNET", () => {
  it("leaves what lumber brings less other costs, in all and for an hour", () => {
    const [[net, perHour, perMbf]] = homeSawNet(5200, 60, 0, 900) as [[number, number, string]];
    expect(net).toBe(4300);
    expect(perHour).toBeCloseTo(71.67, 2);
    expect(perMbf).toBe("");
  });

  it("takes pay off first, and can end in a loss", () => {
    expect(homeSawNet(5200, 100, 50, 900, 4)).toEqual([[-700, -7, -175]]);
  });

  it("gives no figure for an hour without hours", () => {
    expect(homeSawNet(5200, 0, 20, 900)).toEqual([[4300, "", ""]]);
  });
});

describe("BREAKEVENPRICE", () => {
  it("spreads log value and costs over the lumber", () => {
    expect(breakEvenPrice(2400, 1800, 6)).toBe(700);
  });

  it("has nothing to work on without lumber", () => {
    expect(() => breakEvenPrice(2400, 1800, 0)).toThrow("Nothing to work on yet.");
  });

  it("agrees with the break-even of a worked conversion return, at $794.19", () => {
    // 1 MBF of logs at 450 less 60 haul; 1.05 MBF of lumber; sawing 230, drying 60, selling 40 on each MBF sawn;
    // 8 % lost to degrade and 4 % to trim leave 1.05 x 0.92 x 0.96 MBF that is paid for.
    expect(breakEvenPrice(390, 1.05 * 330, 1.05 * 0.92 * 0.96)).toBeCloseTo(794.19, 2);
  });
});

describe("COMPAREWAYS", () => {
  const names = [["Sell standing"], ["Sell logs"], ["Saw at home"]];
  const column = (...cells: unknown[]) => cells.map((cell) => [cell]);

  it("ranks ways whose ranges stand apart", () => {
    expect(compareWays(names, column(10, 30, 20), column(8, 26, 16), column(12, 34, 24))).toEqual([
      ["Way", "Value $", "Low $", "High $", "Rank"],
      ["Sell standing", 10, 8, 12, 3],
      ["Sell logs", 30, 26, 34, 1],
      ["Saw at home", 20, 16, 24, 2],
    ]);
  });

  it("calls none the better one while ranges meet, but still ranks the way that stands apart", () => {
    const ranks = compareWays(names, column(10, 30, 28), column(8, 25, 20), column(12, 35, 29)).map(
      (row) => row[4] as unknown,
    );
    expect(ranks).toEqual(["Rank", 3, "Too close to call", "Too close to call"]);
  });

  it("takes a way without low and high at its value, and a low of 0 as 0", () => {
    const rows = compareWays(names, column(10, 30, 20), column(null, 0, 15), column(null, 35, 25));
    expect(rows[1]).toEqual(["Sell standing", 10, 10, 10, "Too close to call"]);
    expect(rows[2]).toEqual(["Sell logs", 30, 0, 35, "Too close to call"]);
  });

  it("leaves out ways that are not worked out yet", () => {
    const rows = compareWays(names, column(10, null, 20), column(5, 0, 15), column(12, "", 25));
    expect(rows.slice(1).map((row) => row[4] as unknown)).toEqual([2, "No figures yet", 1]);
    expect(compareWays([[""]], [[""]], [[""]], [[""]])[1]).toEqual(["No ways yet", "", "", "", ""]);
  });

  it("names the row that cannot be used", () => {
    expect(() => compareWays(names, column(10, 30, 20), column(8, 31, 16), column(12, 34, 24))).toThrow(
      'The value of "Sell logs" should lie between its low and its high, 31 and 34 $. You have 30.',
    );
    expect(() => compareWays(names, column(10, "x", 20), column(8, 1, 16), column(12, 34, 24))).toThrow(
      /^Row 2: Value needs a number/,
    );
  });
});
