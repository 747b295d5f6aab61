import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { pastedTally } from "../../src/workbook/pastedTally";

const lines = (...text: readonly string[]) => pastedTally(text.join("\n"));
const says = (notes: readonly { readonly line: number; readonly says: string }[]) =>
  notes.map((note) => [note.line, note.says]);

describe("a pasted tally", () => {
  it("is read by its headings, in any order and with any unit", () => {
    const { match, trees, plots } = lines(
      "Species\tPlot no.\tLogs (16 ft)\tDBH (in)\tRemark",
      "ro\t3\t2.5\t14.3\tfork",
      "wo\t4\t\t12",
    );
    expect(match).toMatchObject({
      by: "headings",
      headingRows: 1,
      columns: { species: 0, plot: 1, logs: 2, dbh: 3, note: 4 },
    });
    expect(trees[0]).toMatchObject({ Plot: 3, Species: "ro", "DBH in": 14.3, "Logs 16 ft": 2.5, Note: "fork" });
    expect(trees[1]).toMatchObject({ Plot: 4, Species: "wo", "DBH in": 12, "Logs 16 ft": null, Note: null });
    expect(plots.map((row) => row["Plot"])).toEqual([3, 4]);
  });

  it("takes total heights by their heading, and asks where they cannot be such", () => {
    const { match, trees, warnings } = lines(
      "plot,sp,dbh,logs,Total height (ft)",
      "1,ro,14.3,2.5,85",
      "1,ro,14.3,,2.5",
      "1,ro,14.3,85,",
    );
    expect(match.columns).toEqual({ plot: 0, species: 1, dbh: 2, logs: 3, height: 4 });
    expect(trees[0]).toMatchObject({ "Logs 16 ft": 2.5, "Height ft": 85 });
    expect(trees[2]).not.toHaveProperty("Height ft");
    expect(says(warnings)).toEqual([
      [3, "Total height 2.5 ft is less than 5 ft. Are these logs?"],
      [4, "85 logs of 16 ft? A total height has a column of its own."],
    ]);
  });

  it("says that a height in meters is not one in feet, and leaves out one that is no number", () => {
    const { warnings, rejects } = lines("plot,sp,dbh,Height (m)", "1,ro,14.3,tall", "1,ro,14.3,26");
    expect(says(warnings)).toEqual([[0, 'The heading "Height (m)" says meters, but the workbook takes feet.']]);
    expect(says(rejects)).toEqual([[2, 'Height needs a number of feet, but this line has "tall".']]);
  });

  it.each([
    ["tabs", "1\tro\t14.3\t2\t3"],
    ["commas", "1,ro,14.3,2,3"],
    ["semicolons", "1;ro;14.3;2;3"],
  ])("is read by order, parted by %s", (_, line) => {
    const { match, trees } = lines(line);
    expect(match.by).toBe("order");
    expect(trees).toHaveLength(1);
    expect(trees[0]).toMatchObject({ Plot: 1, Species: "ro", "DBH in": 14.3, "Logs 16 ft": 2, Count: 3 });
  });

  it("passes over headings it does not know and reads by order", () => {
    const { match, trees, rejects } = lines("where,what,how thick", "1,ro,14.3");
    expect(match).toMatchObject({ by: "order", headingRows: 1 });
    expect(trees).toHaveLength(1);
    expect(rejects).toEqual([]);
  });

  it("reads the columns that this add-in writes", () => {
    const { match, trees } = lines(
      "stand,plot,species,dbh_in,logs_16ft,count,take,cull_pct,note",
      'north,1,ro,14.3,2.5,,no,10,"leans, but sound"',
    );
    expect(match.columns).toEqual({ plot: 1, species: 2, dbh: 3, logs: 4, count: 5, take: 6, cull: 7, note: 8 });
    expect(trees[0]).toMatchObject({ Take: "No", "Cull pct": 10, Note: "leans, but sound", Count: null });
  });

  it("takes a row with nothing but a plot for a plot without trees, and counts it as visited", () => {
    const { trees, plots } = lines("1,ro,14.3", "2", "3,,,");
    expect(trees).toHaveLength(1);
    expect(plots).toEqual([
      { Plot: 1, Visited: "Yes", "Trees none": null },
      { Plot: 2, Visited: "Yes", "Trees none": "Yes" },
      { Plot: 3, Visited: "Yes", "Trees none": "Yes" },
    ]);
  });

  it("says which plots it takes for empty, since each counts as 0", () => {
    expect(says(lines("1,ro,14.3", "2").warnings)).toEqual([
      [
        0,
        "Point 2 has a line without a tree, so it counts as visited and empty. If nobody was there, take that line out.",
      ],
    ]);
    expect(lines("1,ro,14.3", "2", "7", "3,,,").warnings[0]?.says).toContain("Points 2, 7 and 3 have lines");
  });

  it("takes a count without a diameter for trees that were counted, and their plot for one of Kind Count", () => {
    const { trees, plots, rejects, warnings } = lines(
      "plot,species,dbh,count",
      "1,ro,14.3,",
      "2,,,7",
      "3,ro,,4",
      "3,wo,,2",
    );
    expect([rejects, warnings]).toEqual([[], []]);
    expect(trees.map((row) => [row["Plot"], row["DBH in"], row["Count"]])).toEqual([
      [1, 14.3, null],
      [2, null, 7],
      [3, null, 4],
      [3, null, 2],
    ]);
    expect(plots.map((row) => [row["Trees none"], row["Kind"]])).toEqual([
      [null, undefined],
      [null, "Count"],
      [null, "Count"],
    ]);
  });

  it("takes a count without a diameter beside measured trees for a diameter that was forgotten", () => {
    const { trees, rejects } = lines("plot,species,dbh,count", "1,ro,14.3,", "1,wo,,2");
    expect(trees).toHaveLength(1);
    expect(says(rejects)).toEqual([[3, "The DBH is missing."]]);
  });

  it("takes taped distances and reasons by their headings", () => {
    const { trees } = lines("plot,sp,dbh,Distance (ft),Accepted because", "1,ro,14.3,27.5,twin stem", "1,ro,14,,");
    expect(trees[0]).toMatchObject({ "Distance ft": 27.5, "Accepted because": "twin stem" });
    expect(trees[1]).not.toHaveProperty("Distance ft");
  });

  it("does not mark a plot as empty that has trees further down, whatever its spelling", () => {
    expect(lines("N1", "n1,ro,14.3").plots).toEqual([{ Plot: "N1", Visited: "Yes", "Trees none": null }]);
  });

  it("keeps names of plots that are no numbers", () => {
    expect(lines("A-7,ro,14.3").trees[0]?.["Plot"]).toBe("A-7");
  });
});

describe("lines that cannot be read", () => {
  it("are left out with the reason and their line", () => {
    const { trees, rejects } = lines(
      "plot,species,dbh,logs",
      "1,ro,14.3in,2",
      ",ro,14,2",
      "1,ro,,2",
      "1,ro,0,2",
      "1,ro,14,-1",
      "",
      "2,wo,12,1",
    );
    expect(trees).toHaveLength(1);
    expect(says(rejects)).toEqual([
      [2, 'DBH needs a number of inches, but this line has "14.3in".'],
      [3, "The plot is missing."],
      [4, "The DBH is missing."],
      [5, "DBH should be above 0 inches. This line has 0."],
      [6, "Logs should be 0 or more 16-ft logs. This line has -1."],
    ]);
    expect(rejects[0]?.text).toBe("1, ro, 14.3in, 2");
  });

  it("with a comma that is no decimal one say how to write the number", () => {
    expect(lines("1;ro;1,435").rejects[0]?.says).toBe(
      'DBH needs a number of inches, but this line has "1,435". Write 1435 or 1.435.',
    );
  });

  it("are left out where decimal commas have cut them, rather than read as other trees", () => {
    const { trees, rejects } = lines("plot,species,dbh,logs", "1,ro,12,5,2", "1,wo,14,2");
    expect(trees).toHaveLength(1);
    expect(says(rejects)).toEqual([
      [
        2,
        "This line has 5 cells under 4 headings. Are decimals written with a comma? Part the columns with tabs or semicolons, or write decimals with a point.",
      ],
    ]);
    expect(lines("plot,species,dbh,logs,note", "1,ro,12,5,2,leans").rejects).toHaveLength(1);
    expect(lines("plot,species,dbh,logs,note", "1,ro,12,2,leans, but sound").rejects).toEqual([]);
  });

  it("with an odd Take or Cull are told", () => {
    const { rejects } = lines("plot,species,dbh,take,cull", "1,ro,14,maybe,", "1,ro,14,,150");
    expect(says(rejects)).toEqual([
      [2, 'Take should be Yes, No or blank. This line has "maybe".'],
      [3, "Cull should be at most 100 percent. This line has 150."],
    ]);
  });
});

describe("what looks odd but is taken", () => {
  it.each([
    ["semicolons", "1;ro;14,3;2,5"],
    ["tabs", "1\tro\t14,3\t2,5"],
    ["quotes", '1,ro,"14,3","2,5"'],
  ])("reads decimal commas between %s, and says so", (_, line) => {
    const { trees, rejects, warnings } = lines(line);
    expect(rejects).toEqual([]);
    expect(trees[0]).toMatchObject({ "DBH in": 14.3, "Logs 16 ft": 2.5 });
    expect(says(warnings)).toEqual([[0, "The comma in 14,3 was read as a decimal point: 14.3, and 1 more like it."]]);
  });

  it("asks about decimal commas where a line without headings may have been cut at them", () => {
    const cut = lines("1,ro,12,5", "1,wo,14,8", "2,sm,11,9", "2,ro,16,0");
    expect(
      says(cut.warnings).map(([line, said]) => [line, /Were decimals written with a comma/.test(String(said))]),
    ).toEqual([[0, true]]);
    expect(lines("1,ro,12,2", "1,wo,14,3", "2,sm,11,1").warnings).toEqual([]);
    expect(lines("1,ro,12.5,8", "1,wo,14.8,9").warnings).toEqual([]);
  });

  it("asks whether 143 was meant as 14.3", () => {
    const { trees, warnings } = lines("1,ro,143,2", "1,ro,14,2", "1,ro,15,2");
    expect(trees).toHaveLength(3);
    expect(says(warnings)).toEqual([[1, "DBH 143 in is very large. Did you mean 14.3?"]]);
  });

  it("asks whether a whole tally is in centimetres", () => {
    const { trees, warnings } = lines("1,ro,36,2", "1,ro,41,2", "1,wo,29.5,1");
    expect(trees).toHaveLength(3);
    expect(says(warnings)).toEqual([
      [0, "Half of the trees are 36 in DBH or more. Are these centimetres? The workbook takes inches."],
    ]);
  });

  it("asks when the heading says centimetres", () => {
    expect(lines("plot,species,dbh (cm)", "1,ro,20").warnings[0]?.says).toMatch(
      /centimetres, but the workbook takes inches/,
    );
  });

  it("asks about a missing species and a cull under one percent", () => {
    expect(says(lines("plot,species,dbh,cull", "1,,14,0.15").warnings)).toEqual([
      [2, "The species is missing."],
      [2, "Cull 0.15 percent, or 15 percent?"],
    ]);
  });
});

it("reads any text without failing, and says of every line what became of it", () => {
  const cell = fc.oneof(
    fc.constantFrom("", "1", "ro", "14.3", "143", "x", "Plot", "DBH", "-2", "1e9"),
    fc.stringMatching(/^[a-zA-Z0-9 .#-]{0,8}$/),
  );
  const line = fc.array(cell, { minLength: 1, maxLength: 6 }).map((cells) => cells.join("\t"));
  fc.assert(
    fc.property(fc.uniqueArray(line, { maxLength: 8 }), (all) => {
      const { trees, plots, rejects, match } = pastedTally(all.join("\n"));
      for (const row of trees) expect(Number(row["DBH in"] ?? row["Count"])).toBeGreaterThan(0);
      const said = all.slice(match.headingRows).filter((text) => text.trim() !== "").length;
      const named = trees.length + rejects.length;
      expect(named).toBeLessThanOrEqual(said);
      expect(named + plots.length).toBeGreaterThanOrEqual(said > 0 ? 1 : 0);
      if (said > named) expect(plots.length).toBeGreaterThan(0);
    }),
  );
});
