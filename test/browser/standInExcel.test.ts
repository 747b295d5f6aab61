import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { type OpenPage, openPage } from "./support/page";
import { addSheet, put } from "./support/sheet";

type Work = (context: Excel.RequestContext, sheet: Excel.Worksheet) => unknown;

/** What the stand-in promises of Excel, beyond what the add-in's own code happens to try. */
describe("the stand-in for Excel", () => {
  let open: OpenPage;
  beforeAll(async () => {
    open = await openPage();
    await addSheet(open.page, "Strict");
  });
  afterAll(() => open.close());

  /** Runs a batch in the page: what it answers, or the code of what it throws. */
  const batch = (work: Work): Promise<unknown> =>
    open.page.evaluate(async (text) => {
      try {
        return await Excel.run((context) => {
          const run = (0, eval)(`(${text})`) as Work;
          return Promise.resolve(run(context, context.workbook.worksheets.getItem("Strict")));
        });
      } catch (problem) {
        const { code, message } = problem as { code?: string; message: string };
        return code === "NotImplemented" ? message : (code ?? message);
      }
    }, String(work));

  it("names a member that it lacks", async () => {
    expect(await batch((_, sheet) => sheet.charts)).toContain("NotImplemented: Excel.Worksheet.charts");
    expect(await batch((_, sheet) => sheet.getRange("A1").getSurroundingRegion())).toContain(
      "NotImplemented: Excel.Range.getSurroundingRegion",
    );
    expect(await batch((_, sheet) => (sheet.getRange("A1").hyperlink = {}))).toContain("Excel.Range.hyperlink =");
    expect(await batch(() => Excel.ChartType)).toContain("NotImplemented: Excel.ChartType");
  });

  it("refuses what was not loaded, and what does not fit", async () => {
    expect(await batch((_, sheet) => sheet.getRange("A1").values)).toBe("PropertyNotLoaded");
    expect(
      await batch(async (context, sheet) => {
        sheet.getRange("A1:B2").values = [[1, 2, 3]];
        await context.sync();
      }),
    ).toBe("InvalidArgument");
  });

  it("refuses names, sheets and tables as Excel does", async () => {
    expect(await batch((context) => (context.workbook.worksheets.add("strict"), context.sync()))).toBe(
      "ItemAlreadyExists",
    );
    expect(await batch((context) => (context.workbook.worksheets.add("a/b"), context.sync()))).toBe("InvalidArgument");
    expect(
      await batch((context, sheet) => (context.workbook.names.add("BA10", sheet.getRange("A1")), context.sync())),
    ).toBe("InvalidArgument");
    expect(await batch((context) => context.workbook.worksheets.getItem("None").load("name") && context.sync())).toBe(
      "ItemNotFound",
    );
    await put(open.page, "Strict!A10:B11", [
      ["Key", "Feet"],
      [1, 2],
    ]);
    expect(
      await batch((context, sheet) => ((sheet.tables.add("A10:B11", true).name = "Undone"), context.sync())),
    ).toBeUndefined();
    expect(await batch((context, sheet) => (sheet.tables.add("B11:C12", true), context.sync()))).toBe(
      "InvalidArgument",
    );
    await put(open.page, "Strict!E10:F11", [
      ["Key", "key"],
      [1, 2],
    ]);
    expect(await batch((context, sheet) => (sheet.tables.add("E10:F11", true), context.sync()))).toBe(
      "InvalidArgument",
    );
  });

  it("refuses formulas that it could not answer", async () => {
    for (const formula of ["=SUM(A1#)", "=@A1", "=NoTable[Feet]", "=SUM(1"]) {
      const given = `async (context, sheet) => { sheet.getRange("A1").formulas = [[${JSON.stringify(formula)}]]; await context.sync(); }`;
      expect(await batch({ toString: () => given } as unknown as Work), formula).toBe("InvalidArgument");
    }
  });

  it("reads values at full precision, blanks as empty texts, booleans and errors as such; text as shown", async () => {
    await put(open.page, "Strict!A1:D2", [
      ["=1/3", "", true, "=1/0"],
      ["oak", 12, "=A1>0", "=A1*3"],
    ]);
    const read = await batch(async (context, sheet) => {
      const range = sheet.getRange("A1:D2");
      range.numberFormat = "0.00" as unknown as string[][];
      range.load("values,text,formulas,numberFormat,address,rowIndex,columnCount");
      await context.sync();
      return [
        range.values,
        range.text,
        range.formulas[0],
        range.numberFormat[0],
        range.address,
        range.rowIndex,
        range.columnCount,
      ];
    });
    expect(read).toEqual([
      [
        [1 / 3, "", true, "#DIV/0!"],
        ["oak", 12, true, 1],
      ],
      [
        ["0.33", "", "TRUE", "#DIV/0!"],
        ["oak", "12.00", "TRUE", "1.00"],
      ],
      ["=1/3", "", true, "=1/0"],
      ["0.00", "0.00", "0.00", "0.00"],
      "Strict!A1:D2",
      0,
      4,
    ]);
  });

  it("writes as if typed, and leaves a cell alone for null", async () => {
    const read = await batch(async (context, sheet) => {
      const range = sheet.getRange("A4:C4");
      range.values = [[1, 2, 3]];
      range.values = [["7", null, ""]];
      range.load("values");
      await context.sync();
      return range.values;
    });
    expect(read).toEqual([[7, 2, ""]]);
  });

  it("keeps a formula when only the looks of its cell change", async () => {
    const read = await batch(async (context, sheet) => {
      const cell = sheet.getRange("A5");
      cell.formulas = [["=2+3"]];
      cell.format.font.bold = true;
      cell.format.fill.color = "#FFF4CE";
      cell.numberFormat = [["0.0"]];
      cell.load("formulas,values");
      await context.sync();
      return [cell.formulas, cell.values];
    });
    expect(read).toEqual([[["=2+3"]], [[5]]]);
  });

  it("tells of changes with sheet and address, of calculated answers not, and stops when asked", async () => {
    const told = await batch(async (context, sheet) => {
      const heard: string[] = [];
      const handler = context.workbook.worksheets.onChanged.add((event) => {
        heard.push(event.address);
        return Promise.resolve();
      });
      sheet.getRange("A6:B6").values = [[1, 2]];
      await context.sync();
      await new Promise((resolve) => setTimeout(resolve, 600));
      handler.remove();
      sheet.getRange("A7").values = [[1]];
      await context.sync();
      await new Promise((resolve) => setTimeout(resolve, 300));
      return heard;
    });
    expect(told).toEqual(["A6:B6"]);
  });

  it("takes back an appended row, and a deleted one, in one step of undo", async () => {
    const table = () => open.page.evaluate(() => woodlotPage.read("Strict!A10:B13"));
    const undo = async () => {
      await open.page.evaluate(() => woodlotPage.select("Strict!H1"));
      await open.page.waitForTimeout(200);
      await open.page.keyboard.press("Control+z");
      await open.page.waitForTimeout(300);
    };
    const before = await table();
    await batch((context, sheet) => {
      sheet.tables.getItem("Undone").rows.add(undefined, [[2, 5]]);
      return context.sync();
    });
    expect(await table()).not.toEqual(before);
    await undo();
    expect(await table()).toEqual(before);
    await batch((context, sheet) => {
      sheet.tables.getItem("Undone").rows.add(undefined, [[2, 5]]);
      return context.sync();
    });
    const longer = await table();
    await batch((context, sheet) => {
      sheet.tables.getItem("Undone").rows.getItemAt(0).delete();
      return context.sync();
    });
    expect(await table()).not.toEqual(longer);
    await undo();
    expect(await table()).toEqual(longer);
    const rows = await open.page.evaluate(() => woodlotPage.tables().find(({ sheet }) => sheet === "Strict")?.rows);
    expect(rows).toBe(2);
  });

  it("says no to newer parts of Excel than it stands in for", async () => {
    const supported = await open.page.evaluate(() =>
      (
        [
          ["ExcelApi", "1.12"],
          ["ExcelApi", "1.13"],
          ["CustomFunctionsRuntime", "1.3"],
          ["SharedRuntime", "1.1"],
          ["RibbonApi", "1.1"],
        ] as const
      ).map(([set, version]) => Office.context.requirements.isSetSupported(set, version)),
    );
    expect(supported).toEqual([true, false, true, true, false]);
  });

  it("left the page without complaint", () => {
    expect(open.complaints).toEqual([]);
  });
});
