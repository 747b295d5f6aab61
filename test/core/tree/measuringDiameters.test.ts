import { describe, expect, it } from "vitest";
import { dollarsPerMbf, boardFeet, inches, percent } from "../../../src/core/basis/units";
import { biltmoreMark } from "../../../src/core/tree/biltmoreMark";
import { dbhFromGirth } from "../../../src/core/tree/dbhFromGirth";
import { insideBark } from "../../../src/core/tree/insideBark";
import { treeValue } from "../../../src/core/value/treeValue";
import { expectAsPrinted } from "../../support/expectAsPrinted";
import { numberIn, published } from "../../support/published";

describe("a diameter from a girth", () => {
  it("is 14.29 in for 44.9 in: 449 / 31.416", () => expect(dbhFromGirth(inches(44.9))).toBeCloseTo(14.292, 3));
  it("is 7 in for 22 in, as Archimedes had it, to a part in two thousand", () => {
    expect(dbhFromGirth(inches(22)) / 7).toBeCloseTo(1, 3);
  });
  it("refuses nothing", () => expect(() => dbhFromGirth(inches(0))).toThrow("Circumference should be above 0."));
});

/**
 * Where the far line of sight meets the stick, drawn out: the eye at the origin, the stick `reach` ahead and touching the
 * stem, the stem's centre half a diameter behind it. The sight turns until it just touches the stem.
 */
function markDrawn(dbh: number, reach: number): number {
  const centre = reach + dbh / 2;
  let [low, high] = [0, Math.PI / 2];
  for (let i = 0; i < 60; i += 1) {
    const angle = (low + high) / 2;
    if (centre * Math.sin(angle) < dbh / 2) low = angle;
    else high = angle;
  }
  return 2 * reach * Math.tan(low);
}

describe("a mark on a Biltmore stick", () => {
  const marks = published("tree/biltmoreMarks.csv");
  it.each(marks.rows.map((row) => [row.dbh, row] as const))("for %s in at 25 in, as worked out before", (_, row) => {
    expectAsPrinted(biltmoreMark(inches(numberIn(row, "dbh")), inches(25)), numberIn(row, "mark"), marks.printedTo);
  });

  it.each([
    [6, 25],
    [20, 25],
    [36, 25],
    [14, 28],
  ])("for %s in at %s in stands where the line of sight falls", (dbh, reach) => {
    expect(biltmoreMark(inches(dbh), inches(reach))).toBeCloseTo(markDrawn(dbh, reach), 9);
  });
});

describe("inside bark and money", () => {
  it("15 in at 0.92 is 13.8 in inside bark", () => expect(insideBark(inches(15), 0.92)).toBeCloseTo(13.8, 12));
  it("wants a ratio, not percent", () => {
    expect(() => insideBark(inches(15), 92)).toThrow("Bark ratio should be between 0.5 and 1. You have 92.");
  });
  it("174 bf at $400 with 5 % cull is $66.12", () => {
    expect(treeValue(boardFeet(174), dollarsPerMbf(400), percent(5))).toBeCloseTo(66.12, 10);
  });
});
