import { describe, expect, it } from "vitest";
import { boardFeet, boardTally, BoardUnits } from "../../src/functions/boards";

describe("BOARDFEET", () => {
  it("is 8 for 1 in x 8 in x 12 ft, and as many times that as there are pieces", () => {
    expect(boardFeet([[1]], [[8]], [[12]])).toEqual([[8]]);
    expect(boardFeet([[1]], [[8]], [[12]], [[10]])).toEqual([[80]]);
  });

  it("takes a blank or a 0 under pieces for one board", () => {
    expect(boardFeet([[1], [1], [1], [1]], [[8]], [[12]], [[2], [""], [null], [0]])).toEqual([[16], [8], [8], [8]]);
    expect(boardFeet([[1]], [[8]], [[12]], null as never)).toEqual([[8]]);
  });

  it("leaves a blank line of the tally blank, and keeps a problem in its own cell", () => {
    const [first, second, third] = boardFeet([[1], [""], ["1/8"]], [[8]], [[12]]);
    expect([first, second]).toEqual([[8], [""]]);
    expect(third?.[0]).toMatchObject({
      code: "#VALUE!",
      message: "This looks like a date. Excel turns 5/4 or 1/8 into a date; type 1.25 or =5/4.",
    });
  });

  it("takes the quarter scale as a text: 5/4 in x 8 in x 12 ft is 10", () => {
    expect(boardFeet([["5/4"], ["4/4"], [" 8 / 4 "], [1]], [[8]], [[12]])).toEqual([[10], [8], [16], [8]]);
    expect(boardTally([["5/4"], [1.25]], [[8]], [[12]], [[1]])[1]).toEqual(["1.25 x 8 x 12", 2, 20]);
    expect(boardFeet([["5/4"]], [[8]], [[12]], null as never, BoardUnits.metric)[0]?.[0]).toMatchObject({
      code: "#VALUE!",
    });
  });

  it("catches a thickness that a spreadsheet turned into a date", () => {
    expect(boardFeet([[46_117]], [[8]], [[12]])[0]?.[0]).toMatchObject({
      message: expect.stringContaining("date") as string,
    });
  });

  it("reads metric measures, and answers in board feet all the same", () => {
    const [cells] = boardFeet([[2.54]], [[20.32]], [[3.6576]], null as never, BoardUnits.metric);
    expect(cells?.[0]).toBeCloseTo(8, 9); // 1 in x 8 in x 12 ft
  });

  it("refuses tallies of different lengths", () => {
    expect(() => boardFeet([[1], [1]], [[8], [8], [8]], [[12]])).toThrow(
      "These lists need the same number of rows: Thickness has 2, Width has 3.",
    );
  });
});
