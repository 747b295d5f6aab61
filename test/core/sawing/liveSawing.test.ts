import { describe, expect, it } from "vitest";
import { sawYield } from "../../../src/core/sawing/sawYield";
import { expectAsPrinted } from "../../support/expectAsPrinted";
import { numberIn, published } from "../../support/published";
import { boardsOf, inchBoards, livePlan, sawLog } from "../../support/sawing";

const cylinders = published("sawing/liveSawing.csv");
const cones = published("sawing/taperedLog.csv");

describe("live sawing of inch boards from a cylinder", () => {
  it.each(cylinders.rows)("$diameter in, kerf $kerf, from $least width in: $rigid volume bf", (row) => {
    const diameter = numberIn(row, "diameter");
    const log = sawLog(diameter, diameter, numberIn(row, "length"));
    const plan = livePlan(log, inchBoards(numberIn(row, "least width"), diameter), numberIn(row, "kerf"));
    const widths = boardsOf(plan).reduce((sum, { piece }) => sum + piece.width, 0);

    expect(widths).toBe(numberIn(row, "rigid widths"));
    expect(widths).toBe(numberIn(row, "free-gap widths"));
    expect(boardsOf(plan).length).toBeLessThanOrEqual(numberIn(row, "boards"));
    expectAsPrinted(sawYield(plan).boardFeet, numberIn(row, "rigid volume"), cylinders.printedTo);
  });

  it("holds every row of the enumeration, of which some openings are worse than the best", () => {
    expect(cylinders.rows).toHaveLength(76);
    const worse = cylinders.rows.filter((row) => numberIn(row, "worst-opening widths") < numberIn(row, "rigid widths"));
    expect(worse).toHaveLength(76);
  });
});

describe("live sawing of inch boards from a tapered log", () => {
  it.each(cones.rows)("$small end to $large end in, kerf $kerf: $volume with short boards bf", (row) => {
    const log = sawLog(numberIn(row, "small end"), numberIn(row, "large end"), numberIn(row, "length"));
    const sizes = inchBoards(numberIn(row, "least width"), log.largeEnd);
    const kerf = numberIn(row, "kerf");
    const withShort = sawYield(livePlan(log, sizes, kerf));

    expectAsPrinted(sawYield(livePlan(log, sizes, kerf, false)).boardFeet, numberIn(row, "full-length volume"), 0.001);
    expectAsPrinted(withShort.boardFeet, numberIn(row, "volume with short boards"), cones.printedTo);
    expectAsPrinted(withShort.lumber, numberIn(row, "cubic recovery"), 0.1);
  });
});
