import fc from "fast-check";
import Papa from "papaparse";
import { describe, expect, it } from "vitest";
import { demoContent } from "../../src/demo/demoWorkbook";
import { readPasted } from "../../src/pane/paste/readPasted";
import { csvText, plotCsv, rowsWithTrees, treeCsv, withoutPrivateColumns } from "../../src/workbook/csv";
import { pastedTally } from "../../src/workbook/pastedTally";
import type { TableRow } from "../../src/workbook/plan";
import { dayOfSerial, serialOfDay } from "../../src/workbook/serialDay";
import { plot, tree } from "../../src/workbook/tables";

const filled = (columns: typeof treeCsv, row: TableRow): TableRow =>
  Object.fromEntries(columns.map(({ heading }) => [heading, row[heading] ?? null]));

describe("the trees as CSV text", () => {
  it("have the columns that foresters read, units in their names, blanks blank, points for decimals", () => {
    const rows = [
      {
        [tree.plot]: 3,
        [tree.species]: "ro",
        [tree.dbh]: 14.3,
        [tree.logs]: 2.5,
        [tree.take]: "No",
        [tree.note]: 'old, "hollow"',
        [tree.distance]: 27.5,
      },
      { [tree.plot]: null, [tree.volume]: 55 },
      {
        [tree.plot]: "7a",
        [tree.species]: "wo",
        [tree.dbh]: 9,
        [tree.count]: 2,
        [tree.cull]: 15,
        [tree.accepted]: "twin stem",
      },
    ];
    expect(csvText("North stand", treeCsv, rows)).toBe(
      [
        "stand,plot,species,dbh_in,logs_16ft,height_ft,count,take,cull_pct,note,distance_ft,accepted_because",
        'North stand,3,ro,14.3,2.5,,,No,,"old, ""hollow""",27.5,',
        "North stand,7a,wo,9,,,2,,15,,,twin stem",
      ].join("\n"),
    );
  });

  it("leave out a row with nothing but a plot, which would read back as a plot that was found empty", () => {
    const rows = [{ [tree.plot]: 3, [tree.dbh]: 14 }, { [tree.plot]: 4 }, { [tree.plot]: 5, [tree.count]: 6 }];
    expect(rowsWithTrees(rows).map((row) => row[tree.plot])).toEqual([3, 5]);
  });

  it("keep names and places to oneself where that is wanted", () => {
    const text = csvText("", withoutPrivateColumns(plotCsv), demoContent.plots);
    expect(text.split("\n")[0]).toMatch(/^stand,plot,date,visited,trees_none,slope_pct,note/);
    for (const secret of ["owner", "463.4", "Demo woodlot"]) expect(text).not.toContain(secret);
  });
});

describe("the same text read back", () => {
  it("is the demo's cruise: every tree, and every plot with its day, its place and its marks", () => {
    const trees = readPasted(csvText("Demo", treeCsv, demoContent.trees), undefined);
    expect([trees.kind, trees.rejects, trees.warnings]).toEqual(["trees", [], []]);
    expect(trees.trees.map((row) => filled(treeCsv, row))).toEqual(
      demoContent.trees.map((row) => filled(treeCsv, row)),
    );
    const plots = readPasted(csvText("Demo", plotCsv, demoContent.plots), undefined);
    expect([plots.kind, plots.rejects, plots.trees]).toEqual(["points", [], []]);
    expect(plots.plots).toEqual(demoContent.plots.map((row) => filled(plotCsv, row)));
  });

  const words = fc
    .string({
      unit: fc.constantFrom("a", "Z", "é", "木", " ", ",", ";", "\t", '"', "'", "=", "\n", "5", "/"),
      maxLength: 12,
    })
    .map((text) => text.trim());
  const note = words.map((text) => text || null);
  const tenth = (low: number, high: number) => fc.integer({ min: low * 10, max: high * 10 }).map((value) => value / 10);
  const name = fc.oneof(fc.integer({ min: 1, max: 400 }), fc.constantFrom("A", "7a", "North 3", "é-1"));
  const blankOr = <T>(value: fc.Arbitrary<T>) => fc.oneof(fc.constant(null), value);
  const yesNo = fc.constantFrom(null, "Yes", "No");

  const aTree = fc.record({
    [tree.plot]: name,
    [tree.species]: blankOr(fc.constantFrom("ro", "wo", "802", "sugar maple")),
    [tree.dbh]: tenth(1, 60),
    [tree.logs]: blankOr(tenth(0, 6)),
    [tree.height]: blankOr(tenth(10, 150)),
    [tree.count]: blankOr(fc.constantFrom(0.5, 1, 2, 12)),
    [tree.take]: yesNo,
    [tree.cull]: blankOr(fc.integer({ min: 0, max: 100 })),
    [tree.note]: note,
    [tree.distance]: blankOr(tenth(1, 300)),
    [tree.accepted]: note,
  });
  const aPlot = fc.record({
    [plot.plot]: name,
    [plot.east]: blankOr(tenth(-900, 9000)),
    [plot.north]: blankOr(tenth(-900, 9000)),
    [plot.date]: blankOr(fc.integer({ min: 61, max: 73_000 })),
    [plot.crew]: note,
    [plot.visited]: yesNo,
    [plot.none]: yesNo,
    [plot.slope]: blankOr(fc.integer({ min: 0, max: 100 })),
    [plot.note]: note,
  });

  it("is any tally of trees, whatever stands in its notes", () => {
    fc.assert(
      fc.property(fc.array(aTree, { minLength: 1, maxLength: 12 }), words, (rows, stand) => {
        const back = pastedTally(csvText(stand, treeCsv, rows));
        expect(back.rejects).toEqual([]);
        expect(back.trees.map((row) => filled(treeCsv, row))).toEqual(rows);
      }),
    );
  });

  it("is any list of plots, empty ones and those not visited among them", () => {
    const plots = fc.uniqueArray(aPlot, {
      minLength: 1,
      maxLength: 12,
      selector: (row) => String(row[plot.plot]).toLowerCase(),
    });
    fc.assert(
      fc.property(plots, words, (rows, stand) => {
        const back = pastedTally(csvText(stand, plotCsv, rows));
        expect(back.kind).toBe("points");
        expect(back.rejects).toEqual([]);
        expect(back.plots).toEqual(rows.map((row) => filled(plotCsv, row)));
      }),
    );
  });

  it("is not taken for plots when it has trees, nor for trees when it has none", () => {
    expect(pastedTally("plot,note,dbh\n1,a,14").kind).toBe("trees");
    expect(pastedTally("plot,species,note\n1,ro,x").kind).toBe("trees");
    expect(pastedTally("plot;visited;trees_none\n1;yes;\n2;y;y").plots).toEqual([
      { [plot.plot]: 1, [plot.visited]: "Yes", [plot.none]: null },
      { [plot.plot]: 2, [plot.visited]: "Yes", [plot.none]: "Yes" },
    ]);
  });

  it("says which lines of a list of plots are left out", () => {
    const { rejects, plots } = pastedTally("plot,visited\n1,Yes\n,Yes\n1,No\n2,maybe");
    expect(plots).toHaveLength(1);
    expect(rejects.map(({ line, says }) => [line, says])).toEqual([
      [3, "The plot is missing."],
      [4, "Plot 1 stands twice in this list."],
      [5, 'Visited should be Yes, No or blank. This line has "maybe".'],
    ]);
  });

  it("is read by another reader of CSV too", () => {
    const { data } = Papa.parse<Record<string, string>>(csvText("Demo", treeCsv, demoContent.trees), { header: true });
    expect(data).toHaveLength(132);
    expect(data[0]).toMatchObject({
      stand: "Demo",
      plot: "1",
      species: "wo",
      dbh_in: "16.9",
      logs_16ft: "2",
      cull_pct: "15",
    });
  });
});

describe("the days of a spreadsheet", () => {
  it.each([
    [61, "1900-03-01"],
    [25_569, "1970-01-01"],
    [36_585, "2000-02-29"],
    [46_298, "2026-10-03"],
    [73_050, "2099-12-31"],
  ])("%d is %s", (serial, day) => {
    expect(dayOfSerial(serial)).toBe(day);
    expect(serialOfDay(day)).toBe(serial);
  });

  it("go there and back, as the calendar of the language has them", () => {
    fc.assert(
      fc.property(fc.integer({ min: 61, max: 400_000 }), (serial) => {
        const day = new Date(Date.UTC(1970, 0, 1) + (serial - 25_569) * 86_400_000).toISOString().slice(0, 10);
        expect(dayOfSerial(serial)).toBe(day);
        expect(serialOfDay(day)).toBe(serial);
      }),
    );
  });

  it.each(["2026-02-30", "2026-13-01", "10/3/2026", "", "yesterday"])("has no day %j", (text) =>
    expect(serialOfDay(text)).toBeUndefined(),
  );
});
