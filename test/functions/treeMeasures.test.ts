import { describe, expect, it } from "vitest";
import { insideBark, treeValue } from "../../src/functions/treeMeasures";
import { biltmoreMark, dbhFromGirth, WoodsUnits } from "../../src/functions/woods";

/** A text or number as a cell may hold it, whatever the argument is meant to be. */
const cell = (value: unknown) => value as never;
const column = (...values: unknown[]) => values.map((value) => [value]);
const valueError = (message: string) => expect.objectContaining({ code: "#VALUE!", message }) as unknown;
const near = (value: number, digits: number) => expect.closeTo(value, digits) as unknown;

describe("DBHFROMGIRTH", () => {
  it("is 14.3 in for 44.9 in, and passes over blanks", () => {
    expect(dbhFromGirth(column(44.9, "", 0, null))).toEqual(column(near(14.292, 3), "", "", ""));
  });
  it("says what is off", () => {
    expect(dbhFromGirth(column("44.9 in", 4490))).toEqual([
      [valueError('Circumference needs a number, but the cell has "44.9 in". Type just the number.')],
      [valueError("Circumference should be between 1 and 800 in or cm. You have 4490. Missing a decimal point?")],
    ]);
  });
});

describe("BILTMOREMARK", () => {
  it("is 14.91 in for a 20 in tree at a reach of 25 in", () => {
    expect(biltmoreMark(cell(20), cell(25))).toEqual([[near(14.9071, 3)]]);
  });
  it("reads and answers in cm when metric", () => {
    expect(biltmoreMark(column(50.8, 50.8), cell(63.5), WoodsUnits.Metric)).toEqual(
      column(near(14.9071 * 2.54, 3), near(14.9071 * 2.54, 3)),
    );
  });
  it("refuses an arm that is none", () => {
    expect(biltmoreMark(cell(20), cell(2.5))).toEqual([
      [valueError("Reach should be between 10 and 60 in. You have 2.5.")],
    ]);
  });
});

describe("INSIDEBARK", () => {
  it("is 13.8 in for 15 in at 0.92, down a column with blanks", () => {
    expect(insideBark(column(15, "", 10), cell(0.92))).toEqual(column(near(13.8, 12), "", near(9.2, 12)));
  });
  it("wants a ratio, not percent", () => {
    expect(insideBark(cell(15), cell(92))).toEqual([
      [valueError("Bark ratio should be between 0.5 and 1. You have 92.")],
    ]);
  });
});

describe("TREEVALUE", () => {
  it("is $66.12 for 174 bf at $400 with 5 % cull", () => {
    expect(treeValue(cell(174), cell(400), cell(5))).toEqual([[near(66.12, 10)]]);
  });
  it("takes no cull when it is left out, and is blank without a volume or a price", () => {
    expect(treeValue(column(1000, "", 0, 1000), column(400, 400, 400, null))).toEqual(column(400, "", "", ""));
  });
  it("says what is off", () => {
    expect(treeValue(column(174, 174), cell(400), column(105, "5%"))).toEqual([
      [valueError("Cull should be between 0 and 100 %. You have 105. Missing a decimal point?")],
      [valueError('Cull needs a number, but the cell has "5%". Type just the number.')],
    ]);
  });
});
