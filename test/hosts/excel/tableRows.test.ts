import { describe, expect, it } from "vitest";
import { even, fromExcel, planned, toExcel } from "../../../src/hosts/excel/cellValues";
import { isBlankRow, onlyFormulas, rowsByHeading, rowsToAppend } from "../../../src/hosts/excel/tableRows";

describe("cells on their way in and out", () => {
  it("takes a blank for null both ways, and keeps false and 0", () => {
    expect(["", null, undefined].map(fromExcel)).toEqual([null, null, null]);
    expect([0, false, "#N/A", 14.3].map(fromExcel)).toEqual([0, false, "#N/A", 14.3]);
    expect([null, undefined, 0, false].map((value) => toExcel(value))).toEqual(["", "", 0, false]);
  });

  it.each(["=1+1", "+A1", "-B2", "@now", "5/4", "1-2", "'quoted"])(
    "keeps %s a text, never a formula or a date",
    (text) => {
      expect(toExcel(text)).toBe(`'${text}`);
    },
  );

  it("writes a text as it is where the cell keeps text anyway", () => {
    expect(toExcel("1/8 in off", "@")).toBe("1/8 in off");
  });

  it("leaves a plain text and a number as they are", () => {
    expect(["red oak", "7", "14.3", 7].map((value) => toExcel(value))).toEqual(["red oak", "7", "14.3", 7]);
  });

  it("writes formulas as they are and makes ragged rows even", () => {
    expect(planned({ formula: "=1+1" })).toBe("=1+1");
    expect(even([[1], [1, 2], []], 0)).toEqual([
      [1, 0],
      [1, 2],
      [0, 0],
    ]);
  });
});

describe("rows of a table", () => {
  const headings = ["Plot", "DBH in", "Volume bf"];
  const formula = "=WOODLOT.TREEVOLUME(Trees[[#This Row],[DBH in]])";

  it("are read by heading, without the blank ones at the end but with those between", () => {
    const rows = rowsByHeading(headings, [
      [1, 14.3, 100],
      ["", "", ""],
      [2, "", ""],
      ["", "", ""],
    ]);
    expect(rows).toEqual([
      { Plot: 1, "DBH in": 14.3, "Volume bf": 100 },
      { Plot: null, "DBH in": null, "Volume bf": null },
      { Plot: 2, "DBH in": null, "Volume bf": null },
    ]);
  });

  it("are added with the formulas of the computed columns, whatever is given for those", () => {
    const rows = rowsToAppend(
      "Trees",
      headings,
      [1, 12, formula],
      [{ "DBH in": 14.3, Plot: 2, "Volume bf": 7 }, { Plot: 3 }],
    );
    expect(rows).toEqual([
      [2, 14.3, formula],
      [3, "", formula],
    ]);
  });

  it("are refused when they name a column that is not there", () => {
    expect(() => rowsToAppend("Trees", headings, [], [{ Dbh: 1 }])).toThrow(
      'The table named Trees has no column "Dbh".',
    );
  });

  it("count as blank when there is nothing but formulas, which stay when a row is emptied", () => {
    expect(isBlankRow(["", "", formula])).toBe(true);
    expect(isBlankRow(["", 0, formula])).toBe(false);
    expect(onlyFormulas([1, "x", formula])).toEqual(["", "", formula]);
  });
});
