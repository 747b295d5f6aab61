import { describe, expect, it } from "vitest";
import { sawingPatterns } from "../../src/core/sawing/patterns";
import { kerfRecovery, SawingPatternName, sawPlan, sawYield } from "../../src/functions/sawing";

const boards = [
  [1, 4],
  [1, 6],
  [1, 8],
  [2, 8],
];
const live = SawingPatternName.live;

describe("KERFRECOVERY", () => {
  it("gives the share that becomes board, and what a thinner kerf adds", () => {
    expect(kerfRecovery([[1]], [[0.125]])[0]?.[0]).toBeCloseTo(88.9, 1); // 1 / 1.125
    expect(kerfRecovery([[1]], [[0.125]], [[0.25]])[0]?.[0]).toBeCloseTo(11.1, 1); // 1.25 / 1.125
  });

  it("answers a column row by row", () => {
    const answer = kerfRecovery([[1], [null], [-1]], [[0.25]]);
    expect(answer[0]).toEqual([80]);
    expect(answer[1]).toEqual([""]);
    expect(String(answer[2]?.[0])).toContain("Thickness should be between 0.1 and 60 in. You have -1.");
  });
});

describe("SAWPLAN", () => {
  it("lists the cuts from the first to the board left on the bed", () => {
    // The settings of test/core/sawing/cutList.test.ts, worked by hand there.
    expect(sawPlan([[10.8]], [[10.8]], [[8]], [[1, 10]], 0.125, live).map((row) => row.map(rounded))).toEqual([
      ["Step", "Turn", "Head reading in", "Piece in x in x ft", "Board feet", "Value $"],
      [1, "none", 7.025, "slab", "", ""],
      [2, "none", 5.9, "1 x 10 x 8", 6.667, ""],
      [3, "half turn", 2.125, "slab", "", ""],
      [4, "none", 1, "1 x 10 x 8", 6.667, ""],
      [5, "none, left on the bed", "", "1 x 10 x 8", 6.667, ""],
      [6, "edge", "", "3 flitches to 10 in", "", ""],
    ]);
  });

  it("says how far to raise the small end of a tapered log, and values each piece", () => {
    const rows = sawPlan([[12]], [[14]], [[16]], [[2, 8, "", 900]], 0.09, live);
    expect(rows[1]?.[1]).toBe("none, small end raised 1 in");
    expect(rows[2]?.[3]).toBe("2 x 8 x 16");
    expect(rows[2]?.[5]).toBeCloseTo(19.2, 9); // 2 x 8 x 16 / 12 = 21.333 bf at $900 per MBF
  });

  it("reads and writes metric units", () => {
    const metric = sawPlan(
      [[27.432]],
      [[27.432]],
      [[2.4384]],
      [[2.54, 25.4]],
      0.3175,
      live,
      undefined,
      "metric" as never,
    );
    expect(metric[0]?.[2]).toBe("Head reading cm");
    expect(metric[1]?.[2]).toBeCloseTo(7.025 * 2.54, 9);
    expect(metric[2]?.[3]).toBe("2.54 x 25.4 x 2.438");
    expect(() =>
      sawPlan([[30]], [[30]], [[5]], [[2.5, 10]], 0.25, live, [["Longest log", 4.5]], "metric" as never),
    ).toThrow("Too long by 0.5 m.");
  });

  it("takes a list with headings, blank rows and further columns", () => {
    const plain = sawPlan(
      [[12]],
      [[14]],
      [[16]],
      [
        [1, 6, 500],
        [2, 8, 900],
      ],
      0.09,
      live,
    );
    const table = [
      ["Thickness green in", "Width in", "Wanted first", "Price per MBF"],
      [1, 6, "No", 500],
      ["", "", "", ""],
      [2, 8, "Yes", 900],
      [null, null, null, null],
    ];
    expect(sawPlan([[12]], [[14]], [[16]], table, 0.09, live)).toEqual(plain);
  });

  it("keeps to the mill, and knows its limits by name", () => {
    const mill = [
      ["Limit", "Value"],
      ["Longest log", 14],
      ["Largest diameter", 26],
      ["Blade above bed", ""],
    ];
    expect(() => sawPlan([[12]], [[14]], [[16]], boards, 0.09, live, mill)).toThrow("Too long by 2 ft.");
    expect(() => sawPlan([[12]], [[14]], [[16]], boards, 0.09, live, [["Blade width", 2]])).toThrow(
      "Mill limit should be one of: Largest diameter, Longest log, Shortest log, Blade above bed, Shortest board, " +
        "Widest cut, Throat, Edger kerf, Wane allowed.",
    );
  });

  it("says what is wrong in a sentence", () => {
    expect(() => sawPlan([[12]], [[14]], [[16]], boards, 0.09, "Gang" as never)).toThrow(
      'Pattern should be one of: Live, Cant, Around, Quarter, Best. You have "Gang".',
    );
    expect(() => sawPlan([[14]], [[12]], [[16]], boards, 0.09, live)).toThrow("Ends swapped?");
    expect(() => sawPlan([[4]], [[5]], [[16]], [[2, 8]], 0.09, live)).toThrow("No board in your list fits this log.");
    expect(() => sawPlan([[12]], [[14]], [[16]], [[1, ""]], 0.09, live)).toThrow(
      "Board width of board 1 in your list is missing.",
    );
    expect(() => sawPlan([[12]], [[14]], [[16]], [["5/4", 6]], 0.09, live)).toThrow("This looks like a date.");
    expect(() => sawPlan([[12]], [[14]], [[16]], [[null, null]], 0.09, live)).toThrow("Your board list is empty.");
    expect(() => sawPlan([[12], [13]], [[14]], [[16]], boards, 0.09, live)).toThrow(
      "Small end should be one cell here. You have 2.",
    );
    expect(() => sawPlan([[12]], [[14]], [[16]], boards, null, live)).toThrow("Kerf needs a number in in");
  });

  it("waits for a log", () => {
    expect(sawPlan([[null]], [[14]], [[16]], boards, 0.09, live)[1]?.[0]).toBe("No log yet");
  });
});

describe("SAWYIELD", () => {
  it("gives pieces, board feet, value and three shares that add to 100", () => {
    const [header, row] = sawYield([[10.8]], [[10.8]], [[8]], [[1, 10, 600]], 0.125, live) as [string[], number[]];
    expect(header).toEqual(["Pieces", "Board feet", "Value $", "Lumber %", "Sawdust %", "Slab %"]);
    const [pieces, boardFeet, value, lumber, sawdust, slab] = row as [number, number, number, number, number, number];
    expect(pieces).toBe(3);
    expect(boardFeet).toBeCloseTo(20, 9); // 3 x 10 x 8 / 12
    expect(value).toBeCloseTo(12, 9); // 20 bf at $600 per MBF
    expect(lumber).toBeCloseTo(32.75, 2); // 30 in2 of pi 10.8^2 / 4 = 91.609 in2
    expect(lumber + sawdust + slab).toBeCloseTo(100, 9);
  });

  it("answers a log that is not measured yet with a blank row", () => {
    expect(sawYield([[0]], [[""]], [[16]], boards, 0.09, live)[1]).toEqual(["", "", "", "", "", ""]);
  });
});

it("Excel offers the patterns that the add-in knows", () => {
  expect(Object.values(SawingPatternName)).toEqual(sawingPatterns.map(({ title }) => title));
});

function rounded(cell: unknown): unknown {
  return typeof cell === "number" ? Number(cell.toFixed(3)) : cell;
}
