import { describe, expect, it } from "vitest";
import { cellsFromCorner, sheetOf } from "../../../src/hosts/excel/copyVerb";
import { validationOf } from "../../../src/hosts/excel/entryRules";
import { pointsWide, runsOf } from "../../../src/hosts/excel/layValues";
import { paneThemeFor } from "../../../src/hosts/excel/officeTheme";

describe("what the host hands to Excel", () => {
  it("asks about odd numbers and refuses only what is strict", () => {
    const asked = validationOf({ kind: "number", low: 1, high: 80, strict: false, message: "Inches." });
    expect(asked.rule).toEqual({ decimal: { formula1: 1, formula2: 80, operator: "Between" } });
    expect(asked.errorAlert).toMatchObject({ style: "Warning", message: "Inches.", showAlert: true });
    const refused = validationOf({ kind: "listOf", range: "Points!$A$8:$A$20", strict: true, message: "A plot." });
    expect(refused.rule).toEqual({ list: { inCellDropDown: true, source: "=Points!$A$8:$A$20" } });
    expect(refused.errorAlert.style).toBe("Stop");
    expect(validationOf({ kind: "list", choices: ["Yes", "No"], strict: false, message: "" }).rule.list?.source).toBe(
      "Yes,No",
    );
  });

  // Excel's standard column: 8.43 characters, shown as 64 pixels, which are 48 points at 96 pixels an inch.
  it("counts widths as Excel does", () => {
    expect(pointsWide(8.43)).toBeCloseTo(48, 1);
  });

  it("writes neighbours that are alike at once", () => {
    expect(runsOf([true, true, false, true])).toEqual([
      { from: 0, length: 2, value: true },
      { from: 2, length: 1, value: false },
      { from: 3, length: 1, value: true },
    ]);
    expect(runsOf([])).toEqual([]);
  });
});

describe("what the host makes of Excel's answers", () => {
  it("copies a used range from A1 on, with formulas where there are any", () => {
    const cells = cellsFromCorner({
      values: [[7, ""]],
      formulas: [["=3+4", ""]],
      numberFormat: [["0.0", "General"]],
      rowIndex: 1,
      columnIndex: 1,
    });
    expect(cells).toEqual([
      [],
      [
        { value: null, format: "General" },
        { value: 7, format: "0.0", formula: "=3+4" },
        { value: null, format: "General" },
      ],
    ]);
  });

  it("reads the sheet out of an address", () => {
    expect(sheetOf("Trees!A1")).toBe("Trees");
    expect(sheetOf("'Sources and cautions'!$A$1:$B$2")).toBe("Sources and cautions");
    expect(sheetOf("'Tom''s lot'!A1")).toBe("Tom's lot");
  });

  it("takes the pane's theme from Office's ground, and leaves it to the system where there is none", () => {
    expect(paneThemeFor("#292929")).toBe("dark");
    expect(paneThemeFor("#FFFFFF")).toBe("light");
    expect(paneThemeFor(undefined)).toBeUndefined();
    expect(paneThemeFor("white")).toBeUndefined();
  });
});
