import { describe, expect, it } from "vitest";
import { OutOfRange } from "../../../src/core/basis/problem";
import { numberIn } from "../../support/published";
import { expectAsPrinted } from "../../support/expectAsPrinted";
import { cellsOf, formClassTables, hasTapers, loaded, ourVolume, toleranceOf } from "./formClassTables";

describe.each(formClassTables)("$title", (table) => {
  const print = loaded(table);
  const cells = cellsOf(print);
  const built = cells.filter(hasTapers);

  describe.each(Object.entries(table.counts))("cells %s", (standing, count) => {
    const ofStanding = cells.filter((cell) => cell.standing === standing);

    it(`are ${count}`, () => expect(ofStanding).toHaveLength(count));

    it.each(ofStanding.filter(hasTapers))(`$dbh in, $logs logs: $volume bf (${standing})`, (cell) => {
      const off = Math.abs(ourVolume(table, cell) - cell.volume);
      expect(off, table.reason).toBeLessThanOrEqual(toleranceOf(table, print.printedTo, cell) + 1e-9);
    });
  });

  it("has no cell of another standing", () => {
    expect(cells).toHaveLength(Object.values(table.counts).reduce((sum, count) => sum + count, 0));
  });

  it(`comes within half a printed step in ${table.withinHalfAStep} of ${built.length} cells`, () => {
    const within = built.filter((cell) => Math.abs(ourVolume(table, cell) - cell.volume) <= print.printedTo / 2);
    expect(within).toHaveLength(table.withinHalfAStep);
  });

  it("refuses the cells whose tapers are not known", () => {
    for (const cell of cells.filter((one) => !hasTapers(one))) {
      expect(() => ourVolume(table, cell), `${cell.dbh} in, ${cell.logs} logs`).toThrow(OutOfRange);
    }
  });

  it("agrees with a build made outside this project", () => {
    for (const cell of built) {
      if (cell.row["rebuilt"]) expectAsPrinted(ourVolume(table, cell), numberIn(cell.row, "rebuilt"), 0.1);
    }
  });
});
