import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { samplingMethods } from "../../src/core/cruise/methods";
import {
  plotTable,
  qmd,
  SamplingMethodName,
  speciesTable,
  standSummary,
  standTable,
  StandUnits,
  stockTable,
  tractTotal,
  treesPerAcre,
} from "../../src/functions/stand";
import { column, errorOf, numbersBelow } from "../support/cells";
import { published, numberIn } from "../support/published";

const { point, fixed } = SamplingMethodName;
const { rows } = published("cruise/constructed-four-points.csv");
const plot = column(rows.map((row) => numberIn(row, "point")));
const dbh = column(rows.map((row) => numberIn(row, "dbh")));
const plots = column([1, 2, 3, 4]);
const species = column(rows.map((_, at) => (at % 3 === 0 ? "wo" : at % 3 === 1 ? "RO" : "ro")));
const volume = column(rows.map((_, at) => 40 + 10 * at));

it("the menu of methods is the list of the core", () => {
  expect(Object.values(SamplingMethodName)).toEqual(samplingMethods.map(({ title }) => title));
});

describe("TREESPERACRE", () => {
  it("answers cell by cell and passes blanks over", () => {
    const answer = treesPerAcre([[14], [""], [0], ["14in"]], point, 10);
    expect(answer[0]?.[0]).toBeCloseTo(9.354413, 5);
    expect([answer[1], answer[2]]).toEqual([[""], [""]]);
    expect(answer[3]?.[0]).toMatchObject({
      code: "#VALUE!",
      message: 'DBH needs a number, but the cell has "14in". Type just the number.',
    });
  });

  it("takes metric: 30 cm at 4 m2/ha stands for 4 over its basal area", () => {
    expect(treesPerAcre([[30]], point, 4, StandUnits.metric)[0]?.[0]).toBeCloseTo(4 / (Math.PI * 0.15 ** 2), 8);
    expect(treesPerAcre([[30]], fixed, 0.05, StandUnits.metric)[0]?.[0]).toBeCloseTo(20, 10);
  });

  it("names the methods when it is given another", () => {
    expect(errorOf(() => treesPerAcre([[14]], "Circle" as SamplingMethodName, 10))).toMatchObject({
      code: "#VALUE!",
      message: 'Method should be one of: Point, Fixed. You have "Circle".',
    });
  });
});

describe("STANDSUMMARY", () => {
  it("gives five rows of six, with the figures worked out apart", () => {
    const table = standSummary(plot, dbh, plots, point, 10, volume);
    expect(table.map((row) => row.length)).toEqual([6, 6, 6, 6, 6]);
    expect(table[0]).toEqual(["Measure", "Value", "Margin +/- at 95 %", "Margin %", "Low", "High"]);
    expect(table.map(([name]) => name as string).slice(1)).toEqual([
      "Trees per ac",
      "Basal area ft2/ac",
      "Quadratic mean diameter in",
      "Volume per ac",
    ]);
    // 3.182446 is t of 3 degrees of freedom; 13.14978 and 10.09337 the standard errors
    expect(table[2]?.[1]).toBeCloseTo(37.5, 9);
    expect(table[2]?.[2]).toBeCloseTo(3.182446 * 13.14978, 3);
    expect(table[1]?.[4]).toBeCloseTo(-2.119, 3);
    expect(table[3]?.[1]).toBeCloseTo(15.13821, 5);
  });

  it("leaves the volume cells blank when no volume was measured", () => {
    for (const none of [undefined, null, [[""]], [[0]], column(rows.map(() => ""))]) {
      expect(standSummary(plot, dbh, plots, point, 10, none as never)[4]).toEqual([
        "Volume per ac",
        "",
        "",
        "",
        "",
        "",
      ]);
    }
  });

  it("gives the value of a single plot and says why it has no margin", () => {
    const table = standSummary([[1], [1]], [[12], [14]], [[1]], point, 10);
    expect(table[2]?.[1]).toBeCloseTo(20, 9);
    for (const cell of table[2]?.slice(2) ?? []) {
      expect(cell).toMatchObject({ code: "#N/A", message: "A margin of error needs at least 2 plots. You have 1." });
    }
  });

  it("takes the confidence that is asked for", () => {
    const wide = standSummary(plot, dbh, plots, point, 10, volume, undefined, 99);
    expect(wide[0]?.[2]).toBe("Margin +/- at 99 %");
    expect(wide[2]?.[2]).toBeCloseTo(5.840909 * 13.14978, 3);
  });

  it("is the same stand in metric", () => {
    const imperial = standSummary(plot, dbh, plots, point, 10, volume);
    const cm = dbh.map(([one]) => [(one as number) * 2.54]);
    const factor = 10 * 0.2295684113865932; // ft2/ac to m2/ha
    const metric = standSummary(plot, cm, plots, point, factor, volume, undefined, undefined, StandUnits.metric);
    const ha = 2.4710538146716536; // acres
    for (const [row, by] of [
      [1, ha],
      [2, 0.2295684113865932],
      [3, 2.54],
      [4, ha],
    ] as const) {
      expect(metric[row]?.[1]).toBeCloseTo((imperial[row]?.[1] as number) * by, 6);
      expect(metric[row]?.[3]).toBeCloseTo(imperial[row]?.[3] as number, 6);
    }
    expect(metric.slice(1).map(([name]) => name as string)).toEqual([
      "Trees per ha",
      "Basal area m2/ha",
      "Quadratic mean diameter cm",
      "Volume per ha",
    ]);
  });

  it("counts a row twice or half as its count says, once when it is blank or 0", () => {
    const basalArea = (count: unknown): unknown =>
      standSummary([[1], [2]], [[12], [14]], [[1], [2]], point, 10, undefined, count as never)[2]?.[1];
    expect(basalArea([[""], [0]])).toBeCloseTo(10, 9);
    expect(basalArea([[2], [1]])).toBeCloseTo(15, 9);
    expect(basalArea([[0.5], [null]])).toBeCloseTo(7.5, 9);
    expect(basalArea(2)).toBeCloseTo(20, 9);
  });

  it("passes over rows without a diameter and blanks after the last row", () => {
    const long = (cells: unknown[][]) => [...cells, [""], [null], [0]];
    expect(standSummary(long(plot), long(dbh), long(plots), point, 10, long(volume))).toEqual(
      standSummary(plot, dbh, plots, point, 10, volume),
    );
    expect(standSummary(plot, long(dbh), plots, point, 10)).toEqual(standSummary(plot, dbh, plots, point, 10));
  });

  it("finds plots by name in any case, by number or by the number as text", () => {
    const named = standSummary([["north 1"], ["2"]], [[12], [14]], [["North 1 "], [2]], point, 10);
    expect(named[2]?.[1]).toBeCloseTo(10, 9);
  });

  it("says that there are no trees yet", () => {
    for (const none of [[[""]], [[0]], [[null]], null]) {
      expect(standSummary(none as never, none as never, plots, point, 10)[1]).toEqual([
        "No trees yet",
        "",
        "",
        "",
        "",
        "",
      ]);
    }
  });
});

describe("a table that cannot be right", () => {
  const summary = (
    given: Partial<{ plot: unknown; dbh: unknown; plots: unknown; size: unknown; volume: unknown; count: unknown }>,
  ) =>
    errorOf(() =>
      standSummary(
        (given.plot ?? plot) as never,
        (given.dbh ?? dbh) as never,
        (given.plots ?? plots) as never,
        point,
        given.size ?? 10,
        given.volume as never,
        given.count as never,
      ),
    );

  it.each<[string, Parameters<typeof summary>[0]]>([
    ["Row 10: plot 4 is not in the plot list. And 5 more rows have problems.", { plots: [[1], [2], [3]] }],
    ["Row 1: plot 9 is not in the plot list.", { plot: [[9], [1]], dbh: [[12], [12]] }],
    ["Row 2: the plot is missing.", { plot: [[1], [""]], dbh: [[12], [12]] }],
    [
      "Row 2: DBH should be between 1 and 80 in. You have 143. Missing a decimal point?",
      { plot: [[1], [1]], dbh: [[12], [143]] },
    ],
    [
      "Row 1: DBH should be between 1 and 80 in. You have -3. And 1 more row has a problem.",
      { plot: [[1], [8]], dbh: [[-3], [12]] },
    ],
    ['Row 1: DBH needs a number, but the cell has "14.3in". Type just the number.', { plot: [[1]], dbh: [["14.3in"]] }],
    [
      "Row 1: This looks like a date. Excel turns 5/4 or 1/8 into a date; type 1.25 or =5/4.",
      { plot: [[1]], dbh: [[45_000]] },
    ],
    ["Row 1: Volume should be between 0 and 1000000. You have -5.", { plot: [[1]], dbh: [[12]], volume: [[-5]] }],
    [
      'Row 1: Count needs a number, but the cell has "two". Type just the number.',
      { plot: [[1]], dbh: [[12]], count: "two" },
    ],
    ["These lists need the same number of rows: DBH has 2, Plot has 3.", { plot: [[1], [2], [3]], dbh: [[12], [12]] }],
    ["Plot 2 is in the plot list twice.", { plots: [[1], [2], ["2"]] }],
    ["The plot list is empty. Every plot belongs in it, those without trees too.", { plots: [[""]] }],
    ["Basal area factor needs a number in ft2/ac, but the cell is blank.", { size: "" }],
    ["Basal area factor should be between 0.5 and 200 ft2/ac. You have -10.", { size: -10 }],
  ])("says: %s", (message, given) => {
    expect(summary(given)).toMatchObject({ code: "#VALUE!", message });
  });
});

describe("STANDTABLE and STOCKTABLE", () => {
  const trees = standTable(plot, species, dbh, plots, point, 10);
  const stock = stockTable(plot, species, dbh, volume, plots, point, 10, 2);

  it("have the classes down, the species by name across and totals both ways", () => {
    expect(trees[0]).toEqual(["Trees per ac by DBH class in", "RO", "wo", "All species"]);
    expect(stock[0]).toEqual(["Volume per ac by DBH class in", "RO", "wo", "All species"]);
    expect(trees.slice(1).map(([name]) => name as unknown)).toEqual([10, 12, 14, 16, 18, 20, 22, 24, "All classes"]);
  });

  it("add up to the stand", () => {
    const summary = standSummary(plot, dbh, plots, point, 10, volume);
    expect(trees.at(-1)?.at(-1)).toBeCloseTo(summary[1]?.[1] as number, 9);
    expect(stock.at(-1)?.at(-1)).toBeCloseTo(summary[4]?.[1] as number, 9);
    for (const table of [trees, stock]) {
      for (const row of table.slice(1))
        expect((row[1] as number) + (row[2] as number)).toBeCloseTo(row[3] as number, 9);
    }
  });

  it("take the width of a class, 5 cm in metric unless told", () => {
    expect(
      standTable(plot, species, dbh, plots, point, 10, 10)
        .slice(1, -1)
        .map(([name]) => name as unknown),
    ).toEqual([10, 20]);
    const metric = standTable([[1]], [["ro"]], [[27.5]], [[1]], point, 4, undefined, undefined, StandUnits.metric);
    expect(metric.map(([name]) => name as unknown)).toEqual(["Trees per ha by DBH class cm", 30, "All classes"]);
    expect(errorOf(() => standTable(plot, species, dbh, plots, point, 10, 100))?.message).toBe(
      "Class width should be between 0.5 and 20 in. You have 100. Missing a decimal point?",
    );
  });

  it("keep trees without a species, in the last column", () => {
    const table = standTable([[1], [1]], [[""], ["wo"]], [[12], [12]], [[1]], fixed, 0.1);
    expect(table).toEqual([
      ["Trees per ac by DBH class in", "wo", "(blank)", "All species"],
      [12, 10, 10, 20],
      ["All classes", 10, 10, 20],
    ]);
  });

  it("say that there are no trees yet", () => {
    expect(standTable([[""]], [[""]], [[""]], plots, point, 10)).toEqual([
      ["Trees per ac by DBH class in", "All species"],
      ["No trees yet", ""],
    ]);
  });
});

describe("SPECIESTABLE", () => {
  it("puts the largest share first and the whole stand last", () => {
    const table = speciesTable(
      [[1], [1], [2]],
      [["a"], ["b"], ["B"]],
      [[12], [14], [14]],
      [[10], [30], [50]],
      [[1], [2], [3]],
      fixed,
      0.1,
    );
    expect(table[0]).toEqual([
      "Species",
      "Trees per ac",
      "Basal area ft2/ac",
      "Quadratic mean diameter in",
      "Volume per ac",
      "Share of volume %",
      "Margin +/- at 95 %, volume",
    ]);
    expect(table.slice(1).map(([name]) => name as unknown)).toEqual(["b", "a", "All species"]);
    // Volume per acre of b by plot: 300, 500, 0; mean 800/3, s = 251.661, t of 2 degrees of freedom 4.302653
    expect(table[1]?.[4]).toBeCloseTo(800 / 3, 9);
    expect(table[1]?.[5]).toBeCloseTo((100 * 80) / 90, 9);
    expect(table[1]?.[6]).toBeCloseTo((4.302653 * 251.6611) / Math.sqrt(3), 2);
    expect(table[1]?.[3]).toBeCloseTo(14, 9);
    expect(table[3]?.[5]).toBeCloseTo(100, 9);
  });

  it("shares out the basal area when no volume was measured", () => {
    const table = speciesTable(plot, species, dbh, [[""]], plots, point, 10);
    expect(table[0]?.slice(5)).toEqual(["Share of basal area %", "Margin +/- at 95 %, basal area"]);
    expect(table[1]?.[4]).toBe("");
    expect(
      numbersBelow(table, 5)
        .slice(0, -1)
        .reduce((sum, one) => sum + one, 0),
    ).toBeCloseTo(100, 9);
  });

  it("says in the margin that one plot is too few", () => {
    const table = speciesTable([[1]], [["ro"]], [[12]], [[10]], [[1]], fixed, 0.1);
    expect(table[1]?.[4]).toBe(100);
    expect(table[1]?.[6]).toMatchObject({
      code: "#N/A",
      message: "A margin of error needs at least 2 plots. You have 1.",
    });
  });
});

describe("PLOTTABLE", () => {
  it("has a row for every plot in the order of the list, the empty one with zeros", () => {
    const table = plotTable([[7], ["b"], [7]], [[12], [14], [16]], [[100], [50], [""]], [["B"], [3], [7]], fixed, 0.1, [
      [1],
      [2],
      [0.5],
    ]);
    expect(table[0]).toEqual(["Plot", "Trees tallied", "Trees per ac", "Basal area ft2/ac", "Volume per ac"]);
    expect(table.map((row) => [row[0], row[1], row[2], row[4]] as unknown[]).slice(1)).toEqual([
      ["B", 2, 20, 1000],
      [3, 0, 0, 0],
      [7, 1.5, 15, 1000],
    ]);
    expect(table[1]?.[3]).toBeCloseTo((20 * Math.PI * 196) / 576, 9);
  });

  it("averages to the summary", () => {
    const table = plotTable(plot, dbh, volume, plots, point, 10);
    const summary = standSummary(plot, dbh, plots, point, 10, volume);
    for (const [from, to] of [
      [2, 1],
      [3, 2],
      [4, 4],
    ] as const) {
      expect(numbersBelow(table, from).reduce((sum, one) => sum + one, 0) / 4).toBeCloseTo(
        summary[to]?.[1] as number,
        9,
      );
    }
  });
});

describe("QMD", () => {
  it("takes a row, a column or weights", () => {
    expect(qmd([[10, 14, 18]])).toBeCloseTo(14.376, 3);
    expect(qmd([[10], [14], [""], [18]])).toBeCloseTo(14.376, 3);
    expect(qmd([[10], [20]], [[3], [1]])).toBeCloseTo(Math.sqrt(175), 10);
    expect(qmd([[25], [35]], undefined, StandUnits.metric)).toBeCloseTo(Math.sqrt((625 + 1225) / 2), 10);
  });

  it("has nothing to work on without trees", () => {
    expect(errorOf(() => qmd([[""]]))).toMatchObject({ code: "#N/A", message: "Nothing to work on yet." });
    expect(errorOf(() => qmd([[12], [143]]))?.message).toContain("Row 2: DBH should be between 1 and 80 in.");
  });
});

describe("TRACTTOTAL", () => {
  it("gives one row: total, margin, low and high", () => {
    expect(tractTotal(8071, 1779, 32)).toEqual([[258_272, 56_928, 201_344, 315_200]]);
    expect(tractTotal([[1000]], [[30]], [[50]], [[2]])[0]?.[1]).toBeCloseTo(2500, 9);
  });

  it("asks for acres", () => {
    expect(errorOf(() => tractTotal(8071, 1779, ""))?.message).toBe(
      "Acres needs a number in ac, but the cell is blank.",
    );
    expect(errorOf(() => tractTotal(8071, -1, 32))).toMatchObject({ code: "#VALUE!" });
  });
});

it("whatever cells hold, a table is square and clean, or there is one sentence", () => {
  const cell = fc.oneof(
    fc.constantFrom(0, "", null, "ro", "x", 1, 2, true, -1, 14.3, 143, 1e300, "5/4", NaN, Infinity),
    fc.double(),
  );
  const list = fc.array(fc.tuple(cell), { minLength: 1, maxLength: 4 });
  fc.assert(
    fc.property(list, list, list, list, fc.constantFrom(10, 0, "x", null), (a, b, c, d, size) => {
      const calls = [
        () => standSummary(a, b, c, point, size, d),
        () => standTable(a, b, c, d, fixed, size),
        () => speciesTable(a, b, c, d, a, point, size),
        () => plotTable(a, b, c, d, fixed, size),
      ];
      for (const call of calls) {
        let table: unknown[][];
        try {
          table = call();
        } catch (error) {
          expect((error as { code: string }).code).toMatch(/^#(VALUE!|N\/A)$/);
          expect((error as Error).message).toMatch(/^[A-Z].*[.?]$/s);
          continue;
        }
        for (const row of table) {
          expect(row.length).toBe(table[0]?.length);
          for (const one of row)
            expect(one === undefined || (typeof one === "number" && !Number.isFinite(one))).toBe(false);
        }
      }
    }),
    { numRuns: 500 },
  );
});
