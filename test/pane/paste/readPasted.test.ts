import { describe, expect, it } from "vitest";
import { readPasted } from "../../../src/pane/paste/readPasted";
import { plot, tree } from "../../../src/workbook/tables";

const text = "when,dia,what,pt\n2026,14.3,ro,1\n2026,twelve,sm,1\n2026,16,wo,2\n2026,,,3";

describe("a pasted tally whose columns were matched by hand", () => {
  const read = readPasted(text, { plot: 3, species: 2, dbh: 1 });

  it("is read by those columns", () => {
    expect(read.trees.map((row) => [row[tree.plot], row[tree.species], row[tree.dbh]])).toEqual([
      [1, "ro", 14.3],
      [2, "wo", 16],
    ]);
    expect(read.plots.map((row) => [row[plot.plot], row[plot.none]])).toEqual([
      [1, null],
      [2, null],
      [3, "Yes"],
    ]);
  });

  it("tells what was left out by its line in the text that was pasted", () => {
    expect(read.rejects).toEqual([
      { line: 3, text: "2026, twelve, sm, 1", says: 'DBH needs a number of inches, but this line has "twelve".' },
    ]);
  });

  it("says which column holds what", () => {
    expect(read.match.columns).toEqual({ plot: 3, species: 2, dbh: 1 });
  });
});
