import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { checkList, checkPlots, checkTrees } from "../../src/functions/checks";
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
        '"rp" is not in your species list. Fix the code or add it on Setup. Did you mean ro or yp?',
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

describe("CHECKTREES over whole columns", () => {
  const many = <T>(cell: T) => column(Array.from({ length: 6 }, () => cell));

  it("holds a tree against the others of its point", () => {
    const dbh = column([12, 13, 12, 14, 13, 40]);
    expect(checkTrees(many(1), many("ro"), dbh, many(2), plots, codes).flat().at(-1)).toBe(
      "DBH 40 in is far from the other trees of this point: 12 in to 14 in. Is it right?",
    );
  });

  it("holds a taped distance against the limiting distance of the gauge, or against the plot", () => {
    // Reference table of basal area factor 10: 14 in, 38.5 ft. A plot of 1/10 ac has a radius of 37.2 ft.
    const taped = (method: string, size: number, distance: number): unknown =>
      checkTrees([[1]], [["ro"]], [[14]], [[2]], plots, codes, "", "", [[""]], [[distance]], method, [[size]])[0]?.[0];
    expect(taped("Point", 10, 38.5)).toBe("");
    expect(taped("Point", 10, 38.9)).toBe(
      "Taped at 38.9 ft, but a tree of 14 in is out beyond 38.5 ft. Distance, DBH or gauge?",
    );
    expect(taped("Fixed", 0.1, 37.2)).toBe("");
    expect(taped("Fixed", 0.1, 38)).toContain("out beyond 37.2 ft");
    expect(taped("All", 10, 380)).toBe("");
  });

  it("goes by the gauge beside each plot where points have gauges of their own", () => {
    // The same table: 14 in reach 38.5 ft at a factor of 10, and half as far at 40
    const taped = (plot: unknown, distance: number): unknown =>
      checkTrees(
        [[plot]],
        [["ro"]],
        [[14]],
        [[2]],
        column([1, "2a", 3]),
        codes,
        "",
        "",
        [[""]],
        [[distance]],
        "Point",
        column([10, 40, ""]),
      )[0]?.[0];
    expect(taped(1, 38.5)).toBe("");
    expect(taped("2A", 19.2)).toBe("");
    expect(taped("2a", 20)).toContain("out beyond 19.3 ft");
    expect(taped(3, 300)).toBe(""); // a plot without a size has no limit to hold a tree against
  });

  it("does so in metric units, too", () => {
    // Metric gauge of 2 m2/ha: a tree stands at most 0.5 / sqrt(2) m for each cm of its diameter, 12.83 m at 36.3 cm.
    const taped = (distance: number): unknown =>
      checkTrees(
        [[1]],
        [["ro"]],
        [[36.3]],
        [[2]],
        plots,
        codes,
        "",
        "",
        [[""]],
        [[distance]],
        "Point",
        [[2]],
        "metric",
      )[0]?.[0];
    expect(taped(12.8)).toBe("");
    expect(taped(14)).toBe("Taped at 14 m, but a tree of 36.3 cm is out beyond 12.8 m. Distance, DBH or gauge?");
  });

  it("says in every row when the gauge cannot be used", () => {
    expect(
      checkTrees(
        column([1, 1]),
        column(["ro", "ro"]),
        column([14, 14]),
        column([2, 2]),
        plots,
        codes,
        "",
        "",
        [[""]],
        [[30]],
        "Prizm",
        [[10]],
      ),
    ).toEqual(column([0, 0].map(() => expect.stringContaining("Method should be one of") as string)));
  });
});

describe("CHECKPLOTS", () => {
  const trees = [column([1, 3, 3, 3, 4, 4, 4]), column(["ro", "ro", "wo", "wo", "wo", "ro", "wo"])] as const;
  const sizes = [column([12, 12, 14, 16, 16, 12, 14]), column([2, 2, 2, 1, 1, 2, 2])] as const;
  const listed = column([1, 2, 3, 4, 5, ""]);
  const checked = (visited: unknown[][], none: unknown[][]) => checkPlots(...trees, ...sizes, listed, visited, none);

  it("gives one sentence or a blank for each plot", () => {
    expect(checked(column(["Yes", "", "", "", "", ""]), column(["", "", "", "", "", ""]))).toEqual(
      column([
        "",
        "No trees and not marked: is it empty, or not visited yet?",
        "",
        "Its 3 trees are the same as those of plot 3. Was one plot entered under two numbers?",
        "",
        "",
      ]),
    );
  });

  it("says in every row when a list cannot be used, and is never an error", () => {
    expect(checked(column(["maybe", "", "", "", "", ""]), column(["", "", "", "", "", ""])).flat()[0]).toContain(
      "Visited should be one of",
    );
    expect(checkPlots([[null]], [[null]], [[null]], [[null]], [[null]], [[null]], [[null]])).toEqual([[""]]);
  });
});

describe("CHECKLIST", () => {
  it("puts what is open first and what was kept with its reason last", () => {
    expect(
      checkList(
        column([1, 2]),
        column(["", "Listed twice."]),
        column(["", "two walks"]),
        column([1, 2, ""]),
        column(["DBH is odd.", "", "The plot is missing."]),
        column(["measured twice", "", ""]),
        column([7]),
        column(["No length."]),
      ),
    ).toEqual([
      ["Sheet", "Where", "What to look at", "Kept because"],
      ["Trees", "Tree in row 3", "The plot is missing.", ""],
      ["Logs", "Log 7", "No length.", ""],
      ["Points", "Point 2", "Listed twice.", "two walks"],
      ["Trees", "Point 1, tree in row 1", "DBH is odd.", "measured twice"],
    ]);
  });

  it("says so when there is nothing", () => {
    const none = [[""]];
    expect(checkList(none, none, none, none, none, none)[1]).toEqual(["Nothing to look at", "", "", ""]);
  });
});
