import { describe, expect, it } from "vitest";
import { standTable } from "../../src/functions/classTables";
import { tractTotal, treesPerAcre } from "../../src/functions/stand";
import { plotTable, speciesTable, standSummary, SummaryUnits } from "../../src/functions/standSummary";
import { column, errorOf } from "../support/cells";
import { dbh, plot, plots, species, volume } from "../support/fourPoints";

const point = "Point" as never;
const fixed = "Fixed" as never;
const strip = "Strip" as never;
const all = "All" as never;
const valueOf = (table: unknown[][], row: number) => table[row]?.[1];

describe("a size beside the plot list", () => {
  it("is one for each plot, in the order of the list", () => {
    const table = standSummary(
      column([1, 1, 2, 3]),
      column([14, 14, 14, 14]),
      column([1, 2, 3]),
      point,
      column([10, 20, 40]),
    );
    expect(valueOf(table, 2)).toBeCloseTo((20 + 20 + 40) / 3, 9);
  });

  it("goes with its row, also past blank rows and to the end of a whole column", () => {
    const list = [["a"], [""], ["b"], [""], [""]];
    const table = plotTable(column(["a", "b"]), column([12, 12]), [[""]], list, fixed, [
      [0.1],
      [""],
      [0.2],
      [""],
      [""],
    ]);
    expect(table.slice(1).map((row) => row[2] as unknown)).toEqual([10, 5]);
  });

  it("is the same stand in metric", () => {
    const given = [column([1, 2]), column([35.56, 35.56]), column([1, 2])] as const;
    const table = standSummary(
      ...given,
      point,
      column([2, 4]),
      undefined,
      undefined,
      undefined,
      undefined,
      undefined,
      undefined,
      undefined,
      SummaryUnits.metric,
    );
    expect(valueOf(table, 2)).toBeCloseTo(3, 9);
  });

  it("may lie in a row, as the plots do", () => {
    expect(valueOf(standSummary([[1, 2]], [[14, 14]], [[1, 2]], point, [[10, 20]]), 2)).toBeCloseTo(15, 9);
  });

  it("must be there for every plot, and sound", () => {
    const summary = (size: unknown[][]) =>
      errorOf(() => standSummary(column([1, 2]), column([12, 12]), column([1, 2, 3]), point, size))?.message;
    expect(summary([[10], [""], [""]])).toBe(
      "Plot list, row 2: Basal area factor is missing. And 1 more row has a problem.",
    );
    expect(summary([[10], [-4], [20]])).toBe(
      "Plot list, row 2: Basal area factor should be between 0.5 and 400 ft2/ac. You have -4.",
    );
    expect(summary([[10], [10], [20], [20]])).toBe(
      "These lists need the same number of rows: Plot list has 3, Basal area factor has 4.",
    );
  });

  it("goes with each tree in TREESPERACRE", () => {
    const answer = treesPerAcre(column([14, 14, ""]), point, column([10, 20, ""]));
    expect((answer[1]?.[0] as number) / (answer[0]?.[0] as number)).toBeCloseTo(2, 9);
    expect(answer[2]).toEqual([""]);
  });
});

describe("two columns of sizes", () => {
  const nested = [
    [5, 0.01],
    [10, 0.1],
  ];
  const table = (trees: number[]) =>
    errorOf(() => standTable(column(trees.map(() => 1)), [["oak"]], column(trees), [[1]], fixed, nested));

  it("are nested plots: the least diameter of each, and its size", () => {
    const stand = standTable(column([1, 1, 1]), [["oak"]], column([6, 10, 14]), [[1]], fixed, nested);
    expect(stand.slice(1).map(([name, trees]) => [name, trees] as unknown[])).toEqual([
      [6, 100],
      [8, 0],
      [10, 10],
      [12, 0],
      [14, 10],
      ["All classes", 120],
    ]);
  });

  it("take from 0 where the least diameter is blank", () => {
    const size = [
      ["", 0.01],
      [10, 0.1],
    ];
    expect(valueOf(standSummary(column([1, 1]), column([2, 12]), [[1]], fixed, size), 1)).toBe(110);
  });

  it("refuse a tree that no plot takes in, a breakpoint twice and a size that is missing", () => {
    expect(table([4, 6])?.message).toBe("Row 1: DBH should be between 5 and 80 in. You have 4.");
    const sizes = (size: unknown[][]) => errorOf(() => standSummary([[1]], [[12]], [[1]], fixed, size))?.message;
    expect(
      sizes([
        [5, 0.01],
        [5, 0.1],
      ]),
    ).toBe("Size, row 2: this least DBH stands there twice.");
    expect(
      sizes([
        [5, ""],
        [10, 0.1],
      ]),
    ).toContain("Size, row 1: Plot size needs a number in ac");
    expect(errorOf(() => standSummary([[1]], [[12]], [[1]], strip, nested))?.message).toBe(
      "Strip size cannot go by the diameter of the tree.",
    );
  });
});

describe("strips", () => {
  it("are a ratio of means, by hand", () => {
    // 6 trees on 1 acre and 4 on 3 acres: 10/4 an acre; residuals 6 - 2.5 and 4 - 7.5, so s = sqrt(24.5 / 2) / 2
    const tally = [column([1, 2]), column([12, 12]), column([1, 2])] as const;
    const table = standSummary(...tally, strip, column([1, 3]), undefined, column([6, 4]));
    expect(valueOf(table, 1)).toBeCloseTo(2.5, 10);
    expect(table[1]?.[2]).toBeCloseTo((12.706205 * Math.sqrt(24.5 / 2)) / 2, 3);
    expect(valueOf(table, 3)).toBeCloseTo(12, 9);
  });
});

describe("a tally of every tree", () => {
  const one = [column([1, 1, 1]), column([12, 14, 16]), column([1])] as const;

  it("has values, and words where a margin would be false", () => {
    const table = standSummary(...one, all, [[1.5]], column([100, 200, 300]));
    expect(table[1]).toEqual(["Trees per ac", 2, ...Array<string>(4).fill("not applicable")]);
    expect(valueOf(table, 4)).toBe(400);
    const kinds = speciesTable(one[0], column(["a", "b", "b"]), one[1], column([100, 200, 300]), one[2], all, [[1.5]]);
    expect(kinds.slice(1).map((row) => row.at(-1) as unknown)).toEqual(Array(3).fill("not applicable"));
  });

  it("goes on to the total of the tract", () => {
    expect(tractTotal(400, "not applicable", 1.5)).toEqual([
      [600, "not applicable", "not applicable", "not applicable"],
    ]);
  });

  it("may be taken part by part, each with its acres", () => {
    const parts = standSummary(column([1, 1, 2]), column([12, 12, 12]), column([1, 2]), all, column([2, 4]));
    expect(valueOf(parts, 1)).toBe(0.5);
    expect(errorOf(() => standSummary(plot, dbh, plots, all, [[6]]))).toMatchObject({
      code: "#VALUE!",
      message:
        "Each part of the tract needs its own acres. Give them as a column beside the plot list, or list one plot.",
    });
  });
});

it("parts and totals agree under every design", () => {
  for (const [method, size] of [
    [point, [[10]]],
    [point, column([10, 20, 10, 40])],
    [
      point,
      [
        ["", 10],
        [14, 20],
      ],
    ],
    [
      fixed,
      [
        ["", 0.05],
        [14, 0.2],
      ],
    ],
    [strip, column([0.4, 1.5, 0.8, 2])],
    [all, column([3, 4, 5, 6])],
  ] as const) {
    const summary = standSummary(plot, dbh, plots, method, size as never, volume);
    const kinds = speciesTable(plot, species, dbh, volume, plots, method, size as never);
    const classes = standTable(plot, species, dbh, plots, method, size as never);
    const sum = (place: number) => kinds.slice(1, -1).reduce((total, row) => total + (row[place] as number), 0);
    for (const [place, row] of [
      [1, 1],
      [2, 2],
      [4, 4],
    ] as const) {
      expect(sum(place)).toBeCloseTo(valueOf(summary, row) as number, 8);
      expect(kinds.at(-1)?.[place]).toBeCloseTo(valueOf(summary, row) as number, 8);
    }
    expect(classes.at(-1)?.at(-1)).toBeCloseTo(valueOf(summary, 1) as number, 8);
    if (method !== all) expect(kinds.at(-1)?.at(-1)).toBeCloseTo(summary[4]?.[2] as number, 6);
  }
});
