import { describe, expect, it } from "vitest";
import { sawingPatterns } from "../../src/core/sawing/patterns";
import { kerfRecovery, sawLayout, SawingPatternName, sawPlan, sawYield } from "../../src/functions/sawing";

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
      undefined,
      undefined,
      "metric" as never,
    );
    expect(metric[0]?.[2]).toBe("Head reading cm");
    expect(metric[1]?.[2]).toBeCloseTo(7.025 * 2.54, 9);
    expect(metric[2]?.[3]).toBe("2.54 x 25.4 x 2.438");
    expect(() =>
      sawPlan([[30]], [[30]], [[5]], [[2.5, 10]], 0.25, live, [["Longest log", 4.5]], 0, undefined, "metric" as never),
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
        "Length step, Widest cut, Throat, Edger kerf, Scale step, Wane allowed.",
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
    expect(() => sawPlan([[12], [13], [12]], [[14]], [[16]], boards, 0.09, live)).toThrow(
      "Small end should be one cell, or two for an oval end. You have 3.",
    );
    expect(() => sawPlan([[12]], [[14]], [[16]], boards, null, live)).toThrow(
      "Kerf needs a number in inches, but the cell is blank.",
    );
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

describe("SAWPLAN by other patterns", () => {
  const turns = (rows: unknown[][]) => rows.slice(1).map((row) => String(row[1]));

  it("saws a 4-in cant of inch boards from an 8-in cylinder, settings worked by hand", () => {
    // Boards of 1 x 4 only: the cant's faces lie 2 in from the pith. Inside it a full face reaches
    // sqrt(4^2 - 2^2) = 3.464 in: 6.928 in hold 6 boards and 5 kerfs, 6.625 in. Above the cant a board would have its
    // outer face at 2 + 0.125 + 1 = 3.125 in, where a face is 2 sqrt(16 - 9.766) = 4.994 in wide: one on each side.
    const rows = sawPlan([[8]], [[8]], [[8]], [[1, 4]], 0.125, SawingPatternName.cant).map((row) => row.map(rounded));
    expect(rows.slice(1)).toEqual([
      [1, "none", 7.125, "slab", "", ""], // 4 + 3.125
      [2, "none", 6, "1 x 4 x 8", 2.667, ""], // 7.125 - 1 - 0.125: the cant's face, 4 + 2
      [3, "half turn", 5.125, "slab", "", ""], // on that face: 4 + 0.125 + 1
      [4, "none", 4, "1 x 4 x 8", 2.667, ""],
      [5, "quarter turn", 7.313, "slab", "", ""], // 4 + 6.625 / 2 = 7.3125
      [6, "none", 6.188, "1 x 4 x 8", 2.667, ""],
      [7, "none", 5.063, "1 x 4 x 8", 2.667, ""],
      [8, "none", 3.938, "1 x 4 x 8", 2.667, ""],
      [9, "half turn", 3.25, "slab", "", ""], // three boards and two kerfs are left: 3 + 2 x 0.125
      [10, "none", 2.125, "1 x 4 x 8", 2.667, ""],
      [11, "none", 1, "1 x 4 x 8", 2.667, ""],
      [12, "none, left on the bed", "", "1 x 4 x 8", 2.667, ""],
      [13, "edge", "", "2 flitches to 4 in", "", ""],
    ]);
  });

  it("turns by a quarter for each face around a heart, and names the grain where quarters are sawn", () => {
    const around = sawPlan(
      [[14]],
      [[14]],
      [[8]],
      [
        [1, 6],
        [6, 6],
      ],
      0.125,
      SawingPatternName.around,
    );
    expect(turns(around).filter((turn) => turn === "quarter turn")).toHaveLength(3);
    expect(around.some((row) => row[1] === "none, left on the bed" && row[3] === "6 x 6 x 8")).toBe(true);
    const quartered = sawPlan([[20]], [[20]], [[8]], [[1, 5]], 0.125, SawingPatternName.quarter);
    const pieces = quartered.slice(4).map((row) => String(row[3]));
    expect(pieces.filter((piece) => /^1 x 5 x 8 (quarter|rift)$/.test(piece)).length).toBeGreaterThan(12);
    expect(pieces.filter((piece) => piece.endsWith("flat"))).toEqual([]);
    const counted = (grain: string) => pieces.filter((piece) => piece.endsWith(grain)).length;
    const [quarters, rifts] = [counted("quarter"), counted("rift")];
    const boardFeet = (boards: number) => Number(((boards * 5 * 8) / 12).toFixed(1)).toString();
    expect(quartered.at(-1)).toEqual([
      "",
      "grain",
      "",
      `${quarters} quarter (${boardFeet(quarters)} bf), ${rifts} rift (${boardFeet(rifts)} bf)`,
      "",
      "",
    ]);
  });

  it("says which pattern was the best, and joins the boards of one flitch", () => {
    const rows = sawPlan([[20]], [[20]], [[8]], [[1, 6]], 0.125, SawingPatternName.best);
    expect(rows[1]?.[1]).toMatch(/^(Live|Cant|Around|Quarter) sawing: none$/);
    const wide = sawPlan([[20]], [[20]], [[8]], [[1, 6]], 0.125, live);
    expect(wide.some((row) => row[3] === "1 x 6 x 8 + 1 x 6 x 8 + 1 x 6 x 8")).toBe(true);
    expect(wide.some((row) => row[3] === "1 flitch to 6 in" || /flitches to 6 \+ 6 \+ 6 in/.test(String(row[3])))).toBe(
      true,
    );
  });

  it("knows limits that only some patterns can keep", () => {
    const narrow = [["Widest cut", 12]];
    expect(() => sawPlan([[14]], [[16]], [[8]], [[1, 6]], 0.125, live, narrow)).toThrow(
      "Live sawing cuts through the middle of the log, 16 in wide, and your widest cut is 12 in.",
    );
    const rows = sawPlan(
      [[14]],
      [[16]],
      [[8]],
      [
        [1, 6],
        [1, 11],
      ],
      0.125,
      SawingPatternName.cant,
      narrow,
    );
    // A 12-in face at the large end lies sqrt(8^2 - 6^2) = 5.292 in from the pith: only the 11-in cant is thick enough.
    expect(rows.some((row) => row[3] === "1 x 11 x 8")).toBe(true);
  });

  it("reads lengths and prices of a piece under their headings", () => {
    const list = [
      ["Thickness", "Width", "Length ft", "Price per piece"],
      [1, 6, 8, 4],
    ];
    const rows = sawPlan([[8]], [[8]], [[10]], list, 0.125, live);
    expect(rows[2]?.slice(3)).toEqual(["1 x 6 x 8", 4, 4]);
  });
});

describe("SAWLAYOUT", () => {
  it("draws the ends of the log and every board, closed, with a gap after each", () => {
    const [header, ...rows] = sawLayout([[10.8]], [[12.8]], [[8]], [[1, 10, 600]], 0.125, live);
    expect(header).toEqual(["X in", "Y in", "Piece", "Grain"]);
    const outlines = new Map<string, unknown[][]>();
    for (const row of rows) outlines.set(String(row[2]), [...(outlines.get(String(row[2])) ?? []), row]);
    expect([...outlines.keys()].slice(0, 3)).toEqual(["Small end", "", "Large end"]);
    const [first] = [...outlines.entries()].filter(([piece]) => piece.startsWith("1: "));
    expect(first?.[1]).toHaveLength(5);
    expect(first?.[1][0]?.slice(0, 2)).toEqual(first?.[1][4]?.slice(0, 2));
    const gaps = rows.filter((row) => row[2] === "");
    expect(gaps).toHaveLength(outlines.size - 2);
    expect(String(gaps[0]?.[0])).toContain("A gap between two outlines.");
  });

  it("waits for a log", () => {
    expect(sawLayout([[null]], [[14]], [[16]], boards, 0.09, live)[1]?.[0]).toBe("No log yet");
  });
});

it("Excel offers the patterns that the add-in knows", () => {
  expect(Object.values(SawingPatternName)).toEqual(sawingPatterns.map(({ title }) => title));
});

function rounded(cell: unknown): unknown {
  return typeof cell === "number" ? Number(cell.toFixed(3)) : cell;
}
