import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { addFunctions } from "./support/extraFunctions";
import { type OpenPage, openPage } from "./support/page";
import { addSheet, answerOf, put, read } from "./support/sheet";

const scalar = (type: string, optional = false) => ({ name: "x", type, dimensionality: "scalar", optional });
const range = { name: "m", type: "any", dimensionality: "matrix" };

const extra = [
  { name: "TEST.THROWS", parameters: [], body: `() => { throw new TypeError("a bug"); }` },
  {
    name: "TEST.REFUSES",
    parameters: [scalar("any")],
    body: `() => { throw new CustomFunctions.Error("#N/A", "No table reaches that far."); }`,
  },
  {
    name: "TEST.ECHO",
    parameters: [scalar("any", true), scalar("any", true), scalar("any", true)],
    body: `(...all) => JSON.stringify(all)`,
  },
  { name: "TEST.CELLS", parameters: [range], body: `(m) => JSON.stringify(m)` },
  { name: "TEST.DOUBLE", parameters: [scalar("number")], body: `(x) => x * 2` },
  { name: "TEST.TEXT", parameters: [scalar("string")], body: `(text) => "[" + text + "]"` },
  { name: "TEST.SAME", parameters: [scalar("string")], body: `(text) => text` },
  {
    name: "TEST.MIXED",
    parameters: [],
    body: `() => [[1, NaN, null], ["1/8", new CustomFunctions.Error("#VALUE!", "Not that one."), Infinity]]`,
  },
  { name: "TEST.RAGGED", parameters: [], body: `() => [[1, 2], [3]]` },
  { name: "TEST.NOTHING", parameters: [], body: `() => undefined` },
];

/** What goes wrong between a spreadsheet engine and a function, tried in the engine itself. */
describe("functions in the page's cells", () => {
  let open: OpenPage;
  beforeAll(async () => {
    open = await openPage({ prepare: (page) => addFunctions(page, extra) });
    await addSheet(open.page, "Traps");
    await put(open.page, "Traps!A1:B4", [
      [1, "oak"],
      [2, ""],
      ["", "=1/0"],
      [true, "7"],
    ]);
  });
  afterAll(() => open.close());
  const answer = (formula: string) => answerOf(open.page, "Traps!D1", formula.replace(/TEST/g, "WOODLOT.TEST"));

  it("a function that throws answers #VALUE!, and everything entered afterwards still answers", async () => {
    expect(await answer("=TEST.THROWS()")).toBe("#VALUE!");
    expect(await answer("=1+1")).toBe(2);
    expect(await answer("=TEST.DOUBLE(4)")).toBe(8);
    expect(await answer("=IFERROR(TEST.THROWS(),5)")).toBe(5);
  });

  it("a single cell arrives as a value where a value is declared, and as a range where a range is", async () => {
    expect(await answer("=TEST.ECHO(A2)")).toBe("[2,null,null]");
    expect(await answer("=TEST.CELLS(A2)")).toBe("[[2]]");
    expect(await answer("=TEST.CELLS(2)")).toBe("[[2]]");
  });

  it("errors are passed on, from a cell or from inside a range, without a call", async () => {
    expect(await answer("=TEST.ECHO(B3)")).toBe("#DIV/0!");
    expect(await answer("=TEST.CELLS(A1:B4)")).toBe("#DIV/0!");
    expect(await answer('=TEST.ECHO("#N/A is a text")')).toBe('["#N/A is a text",null,null]');
  });

  it("a range for a single value makes the function answer for each cell", async () => {
    await answer("=TEST.DOUBLE(A1:A2)");
    expect(await read(open.page, "Traps!D1:D2")).toEqual([[2], [4]]);
    expect(await answer("=SUM(TEST.DOUBLE(A1:A2))")).toBe(6);
  });

  it("too few or too many arguments answer #VALUE!", async () => {
    expect(await answer("=TEST.DOUBLE()")).toBe("#VALUE!");
    expect(await answer("=TEST.DOUBLE(1,2)")).toBe("#VALUE!");
  });

  it("blank cells arrive as blanks, left-out arguments as null", async () => {
    expect(await answer("=TEST.ECHO(A3)")).toBe('["",null,null]');
    expect(await answer("=TEST.ECHO(1,,3)")).toBe("[1,null,3]");
    expect(await answer("=TEST.CELLS(A1:A4)")).toBe('[[1],[2],[""],[true]]');
    expect(await answer("=TEST.TEXT(A3)")).toBe("[]");
    expect(await answer("=TEST.DOUBLE(A3)")).toBe(0);
  });

  it("texts stay texts, even those that look like a number or a date", async () => {
    expect(await answer('=TEST.SAME("1/8")')).toBe("1/8");
    expect(await answer('=TEST.TEXT("5-4")')).toBe("[5-4]");
    expect(await answer("=TEST.SAME(A1)")).toBe("1");
    expect(await answer("=TYPE(TEST.SAME(A1))")).toBe(2);
  });

  it("an answer's cells are clean: no NaN, no gaps, errors as errors", async () => {
    await answer("=TEST.MIXED()");
    expect(await read(open.page, "Traps!D1:F2")).toEqual([
      [1, "#VALUE!", ""],
      ["1/8", "#VALUE!", "#NUM!"],
    ]);
    expect(await answer("=TEST.RAGGED()")).toBe("#VALUE!");
    expect(await answer("=TEST.NOTHING()")).toBe("");
    expect(await answer("=IFERROR(INDEX(TEST.MIXED(),2,2),9)")).toBe(9);
  });

  it("the sentence of an error shows while its cell is selected", async () => {
    const line = open.page.locator("#sentence");
    const select = (cell: string) => open.page.evaluate((at) => woodlotPage.select(at), cell);
    await answer("=TEST.REFUSES(1)");
    await select("Traps!D1");
    await expect.poll(() => line.textContent()).toBe("D1: No table reaches that far.");
    await select("Traps!A1");
    await expect.poll(() => line.textContent()).toBe("");
    await answer("=TEST.MIXED()");
    await select("Traps!E2");
    await expect.poll(() => line.textContent()).toBe("E2: Not that one.");
    await select("Traps!B3");
    await expect.poll(() => line.textContent()).toBe("");
  });

  it("a blocked answer shows #SPILL!, and comes when the way is free", async () => {
    await put(open.page, "Traps!D4", [["x"]]);
    await put(open.page, "Traps!D3", [["=SEQUENCE(2)"]]);
    expect(await read(open.page, "Traps!D3:D4")).toEqual([["#SPILL!"], ["x"]]);
    await put(open.page, "Traps!D4", [[""]]);
    expect(await read(open.page, "Traps!D3:D4")).toEqual([[1], [2]]);
    await put(open.page, "Traps!D3", [[""]]);
  });

  it("a formula may come before its table and its name, and follows a table that grows", async () => {
    const result = await open.page.evaluate(() =>
      Excel.run(async (context) => {
        const sheet = context.workbook.worksheets.getItem("Traps");
        sheet.getRange("H1").formulas = [["=Later_Name*2"]];
        await context.sync();
        sheet.getRange("J1:J3").values = [["Feet"], [1], [2]];
        const table = sheet.tables.add("J1:J3", true);
        table.name = "Lengths";
        context.workbook.names.add("Later_Name", sheet.getRange("A2"));
        sheet.getRange("H2:H3").formulas = [["=SUM(Lengths[Feet])"], ["=INDEX(Lengths[Feet],2)"]];
        await context.sync();
        const before = sheet.getRange("H1:H3").load("values");
        await context.sync();
        table.rows.add(undefined, [[10]]);
        const after = sheet.getRange("H2").load("values");
        await context.sync();
        return [before.values, after.values];
      }),
    );
    expect(result).toEqual([[[4], [3], [2]], [[13]]]);
  });

  it("INDEX into a table keeps to the table's sheet", async () => {
    await addSheet(open.page, "Elsewhere");
    expect(await answerOf(open.page, "Elsewhere!A1", "=INDEX(Lengths[Feet],2)")).toBe(2);
  });

  it("left the page without complaint", () => {
    expect(open.complaints).toEqual([]);
  });
});
