import { describe, expect, it } from "vitest";
import {
  refuseFormula,
  refuseHeadings,
  refuseName,
  refuseSheetName,
} from "../../../src/hosts/embedded/standin/refusals";
import { asTyped } from "../../../src/hosts/embedded/standin/typed";

const refused = (act: () => void, code = "InvalidArgument") => {
  expect(act).toThrow(expect.objectContaining({ code }) as Error);
};

describe("names that Excel refuses", () => {
  it.each(["", "   ", "a".repeat(32), "a/b", "a:b", "a\\b", "a?b", "a*b", "a[b", "a]b", "'a", "a'", "History"])(
    "sheet %j",
    (name) => {
      refused(() => refuseSheetName(name, []));
    },
  );
  it("a sheet's name that is taken, whatever its capitals", () => {
    refused(() => refuseSheetName("setup", ["Setup"]), "ItemAlreadyExists");
    expect(() => refuseSheetName("Stand table", ["Setup"])).not.toThrow();
    expect(() => refuseSheetName("a".repeat(31), [])).not.toThrow();
  });

  it.each(["", "1st", "a b", "a-b", "A1", "BA10", "XFD1048576", "R", "c", "R1C1", "a".repeat(256)])(
    "name %j",
    (name) => {
      refused(() => refuseName(name, []));
    },
  );
  it.each(["Acres", "_x", "Trees.2", "XFE1", "A0", "A1048577", "Kerf", "R1x"])("but not %j", (name) => {
    expect(() => refuseName(name, [])).not.toThrow();
  });
  it("a name that is taken", () => refused(() => refuseName("acres", ["Acres"]), "ItemAlreadyExists"));

  it("headings that are blank or the same but for capitals", () => {
    refused(() => refuseHeadings(["Plot", " "]));
    refused(() => refuseHeadings(["Plot", "plot"]));
    expect(() => refuseHeadings(["Plot", "DBH in"])).not.toThrow();
  });
});

describe("formulas", () => {
  it.each([
    "=SUM(C1#)",
    "=Trees[@DBH]",
    "=Trees[[@DBH]]",
    "=@A1",
    "=1+@A1",
    "=_xlfn.XLOOKUP(1,A1:A2,B1:B2)",
    "=SUM((1)",
    "=SUM(1))",
    "=SUM(Other[DBH in])",
    "=SUM(Trees[DBH (in)])",
  ])("refuses %s", (formula) => refused(() => refuseFormula(formula, ["Trees"])));

  it.each([
    "=SUM(trees[DBH in])",
    "=Trees[[#This Row],[DBH in]]*2",
    "=Trees[#All]",
    '=IF(A1="#1 (common","a@b","C1#")',
    "=IFERROR(A1,#N/A)",
    "='Stand table'!B2+1",
    '=WOODLOT.LOGSCALE(A1,16,"Doyle")',
  ])("reads %s", (formula) => expect(() => refuseFormula(formula, ["Trees"])).not.toThrow());
});

describe("a value is taken as if typed", () => {
  it.each([
    ["12", 12],
    ["-.5", -0.5],
    ["1e3", 1000],
    ["TRUE", true],
    ["false", false],
    ["oak", "oak"],
    ["'12", "12"],
    ["", ""],
    [3, 3],
  ])("%j becomes %j", (given, expected) => expect(asTyped(given, "General")).toBe(expected));

  it("stays a text in a cell for texts", () => expect(asTyped("5/4", "@")).toBe("5/4"));
  it.each(["5/4", "1/8", "2026-10-03", "5-4"])("refuses %j, which Excel would turn into a date", (text) => {
    refused(() => asTyped(text, "General"));
  });
  it.each([NaN, Infinity, undefined, {}])("refuses %j", (given) => refused(() => asTyped(given, "General")));
});
