import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { checkTrees } from "../../src/functions/stand";
import { column } from "../support/cells";

const plots = column([1, 2, 3]);
const codes = column(["ro", "wo", "yp"]);

describe("CHECKTREES", () => {
  it("gives one sentence or a blank for each row", () => {
    expect(
      checkTrees(
        column([1, 2, 15, 1, 1, "", 2]),
        column(["RO", "rp", "wo", "yp", "yp", "", "wo"]),
        column([14.3, 12, 12, 143, "14.3in", "", 0.4]),
        column([2.5, 2, 2, 3, 3, "", 1]),
        plots,
        codes,
      ),
    ).toEqual(
      column([
        "",
        '"rp" is not in your species list. Fix the code or add it on Setup.',
        "Plot 15 is not in the plot list.",
        "DBH 143 in is over your 60 in limit. Missing a decimal point?",
        'DBH needs a number, but the cell has "14.3in". Type just the number.',
        "",
        "DBH 0.4 in is under your 1 in limit.",
      ]),
    );
  });

  it("takes your own limits", () => {
    expect(checkTrees([[1]], [["ro"]], [[62]], [[4]], plots, codes, 5, 70)).toEqual([[""]]);
    expect(checkTrees([[1]], [["ro"]], [[4]], [[1]], plots, codes, 5, 70)).toEqual([
      ["DBH 4 in is under your 5 in limit."],
    ]);
  });

  it("knows a date where a number or a name belongs", () => {
    const date = "This looks like a date. Excel turns 5/4 or 1/8 into a date; type 1.25 or =5/4.";
    expect(
      checkTrees(column([1, 1]), column(["ro", "ro"]), column([45_752, "5/4"]), column([2, 2]), plots, codes),
    ).toEqual(column([date, date]));
    expect(checkTrees([[1]], [[45_901]], [[12]], [[2]], plots, codes)[0]?.[0]).toContain("Species looks like a date.");
  });

  it("minds missing logs only where the tally has logs at all", () => {
    expect(checkTrees(column([1, 1]), column(["ro", "ro"]), column([14, 14]), column([2, ""]), plots, codes)).toEqual(
      column(["", "Logs are missing for a tree of 14 in, so it adds no volume."]),
    );
    expect(checkTrees(column([1, 1]), column(["ro", "ro"]), column([14, 14]), [[""]], plots, codes)).toEqual(
      column(["", ""]),
    );
  });

  it("says in every row when lists or limits cannot be used, and is never an error", () => {
    const answer = checkTrees(
      column([1, 1]),
      column(["ro", "ro", "ro"]),
      column([14, ""]),
      column([2, ""]),
      plots,
      codes,
    );
    expect(answer).toEqual(
      column([...Array<string>(3).fill("These lists need the same number of rows: Plot has 2, Species has 3.")]),
    );
    expect(checkTrees([[1]], [["ro"]], [[14]], [[2]], plots, codes, "one")[0]?.[0]).toContain(
      "Least DBH needs a number",
    );
  });

  it("answers in the shape that was given, a row as a row", () => {
    expect(checkTrees([[1, 9]], [["ro", "ro"]], [[14, 14]], [[2, 2]], plots, codes)).toEqual([
      ["", "Plot 9 is not in the plot list."],
    ]);
  });

  it("whatever cells hold, every answer is a text", () => {
    const cell = fc.oneof(
      fc.constantFrom(0, "", null, "ro", true, -1, 14.3, 143, 1e300, "5/4", NaN, 45_000),
      fc.double(),
    );
    const list = fc.array(fc.tuple(cell), { minLength: 1, maxLength: 4 });
    fc.assert(
      fc.property(list, list, list, list, list, (a, b, c, d, e) => {
        for (const row of checkTrees(a, b, c, d, e, codes)) for (const one of row) expect(typeof one).toBe("string");
      }),
    );
  });
});
