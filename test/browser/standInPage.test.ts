import { readFile } from "node:fs/promises";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { type OpenPage, openPage, untilReady } from "./support/page";
import { addSheet, put, read } from "./support/sheet";

/** The page around the grid: what a person does with the whole workbook. */
describe("the page", () => {
  let open: OpenPage;
  beforeAll(async () => {
    open = await openPage();
  });
  afterAll(() => open.close());

  const typeInto = async (address: string, ...keys: string[]) => {
    await open.page.evaluate((at) => woodlotPage.select(at), address);
    await open.page.waitForTimeout(150);
    for (const key of keys) {
      if (key.length > 1 && /^[A-Z]/.test(key)) await open.page.keyboard.press(key);
      else await open.page.keyboard.type(key);
    }
    await open.page.waitForTimeout(150);
    await open.page.evaluate(() => woodlotPage.settled());
  };

  it("asks nobody but its own server, and runs under its policy", () => {
    const origin = new URL(open.page.url()).origin;
    expect(open.requests.filter((address) => !address.startsWith(origin))).toEqual([]);
    expect(open.complaints).toEqual([]);
  });

  it("shows the task pane with the very bundle that Excel shows", () => {
    expect(open.requests.map((address) => new URL(address).pathname)).toContain("/taskpane.js");
  });

  it("computes what is typed with the keyboard", async () => {
    await addSheet(open.page, "Typed");
    await typeInto("Typed!A1", '=woodlot.logscale(12,16,"doyle")', "Enter");
    // Doyle: (12 - 4)^2 * 16 / 16 = 64 bf.
    expect(await read(open.page, "Typed!A1")).toEqual([[64]]);
  });

  it("grows a table by what is typed under it, with its formulas, formats and entry rules", async () => {
    await put(open.page, "Typed!C1:E2", [
      ["Key", "Feet", "Twice"],
      ["a", 1, ""],
    ]);
    await open.page.evaluate(() =>
      Excel.run(async (context) => {
        const sheet = context.workbook.worksheets.getItem("Typed");
        sheet.tables.add("C1:E2", true).name = "Grown";
        sheet.getRange("E2").formulas = [["=Grown[[#This Row],[Feet]]*2"]];
        sheet.getRange("D2").numberFormat = [["0.00"]];
        sheet.getRange("D2").dataValidation.rule = { decimal: { formula1: 0, formula2: 100, operator: "Between" } };
        await context.sync();
      }),
    );
    await typeInto("Typed!D3", "7", "Enter");
    await expect
      .poll(() => open.page.evaluate(() => woodlotPage.tables().find(({ name }) => name === "Grown")?.rows))
      .toBe(2);
    await expect.poll(() => read(open.page, "Typed!C3:E3")).toEqual([["", 7, 14]]);
    expect(await open.page.evaluate(() => woodlotPage.text("Typed!D3"))).toEqual([["7.00"]]);
  });

  it("does not grow a table by what is typed a row further down", async () => {
    await typeInto("Typed!D6", "7", "Enter");
    expect(await open.page.evaluate(() => woodlotPage.tables().find(({ name }) => name === "Grown")?.rows)).toBe(2);
  });

  it("loses nothing in a reload", async () => {
    await open.page.evaluate(() => woodlotPage.saved());
    const before = await read(open.page, "Trees!A7:L30");
    await open.page.reload();
    await untilReady(open.page);
    expect(await read(open.page, "Trees!A7:L30")).toEqual(before);
    expect(await read(open.page, "Typed!C1:E3")).toEqual([
      ["Key", "Feet", "Twice"],
      ["a", 1, 2],
      ["", 7, 14],
    ]);
    await put(open.page, "Typed!D2", [[5]]);
    expect(await read(open.page, "Typed!E2")).toEqual([[10]]);
    expect(open.complaints).toEqual([]);
  });

  it("saves a file that opens again", async () => {
    const [download] = await Promise.all([
      open.page.waitForEvent("download"),
      open.page.getByRole("button", { name: "Save a file" }).click(),
    ]);
    const file = await download.path();
    expect(JSON.parse(await readFile(file, "utf8"))).toMatchObject({ format: "woodlot-workbook", version: 1 });
    await put(open.page, "Typed!D2", [[6]]);
    await open.page.setInputFiles("#file", file);
    await expect.poll(() => read(open.page, "Typed!D2:E2").catch(() => "opening")).toEqual([[5, 10]]);
  });

  it("says what is wrong with a file that is none of its own, and keeps the workbook", async () => {
    await open.page.setInputFiles("#file", { name: "x.json", mimeType: "application/json", buffer: Buffer.from("{}") });
    await expect
      .poll(() => open.page.locator("#notice").textContent())
      .toContain("not a workbook saved from this page");
    expect(await read(open.page, "Typed!D2")).toEqual([[5]]);
  });

  it("asks before it starts over with the demo", async () => {
    await open.page.getByRole("button", { name: "Start over with the demo" }).click();
    await open.page.getByRole("button", { name: "Keep my workbook" }).click();
    expect(await open.page.evaluate(() => woodlotPage.sheets())).toContain("Typed");
    await open.page.getByRole("button", { name: "Start over with the demo" }).click();
    await open.page.getByRole("button", { name: "Start over", exact: true }).click();
    await expect.poll(() => open.page.evaluate(() => woodlotPage.sheets()), { timeout: 20_000 }).not.toContain("Typed");
    await expect
      .poll(() => open.page.evaluate(() => woodlotPage.tables().length), { timeout: 20_000 })
      .toBeGreaterThan(4);
  });

  it("keeps a saved workbook that it cannot open, and offers it", async () => {
    await open.page.evaluate(() => woodlotPage.saved());
    await open.page.evaluate(
      () =>
        new Promise((resolve) => {
          const opening = indexedDB.open("woodlot-reckoner");
          opening.onsuccess = () => {
            const change = opening.result.transaction("workbooks", "readwrite");
            change.objectStore("workbooks").put({ format: "woodlot-workbook", version: 99, precious: true }, "current");
            change.oncomplete = () => resolve(opening.result.close());
          };
        }),
    );
    await open.page.reload();
    await untilReady(open.page);
    expect(await open.page.locator("#notice").textContent()).toContain("another version of this page (99)");
    const [download] = await Promise.all([
      open.page.waitForEvent("download"),
      open.page.getByRole("button", { name: "Save the old one as a file" }).click(),
    ]);
    expect(await readFile(await download.path(), "utf8")).toContain("precious");
  });

  it("sets the pane's width by keyboard and mouse, within its limits", async () => {
    const separator = open.page.getByRole("separator", { name: "Width of the task pane" });
    const width = async () => (await open.page.locator("#pane").boundingBox())?.width;
    expect(await width()).toBe(350);
    await separator.press("ArrowLeft");
    expect(await width()).toBe(366);
    await separator.press("End");
    expect(await width()).toBe(500);
    await separator.press("Home");
    expect(await separator.getAttribute("aria-valuenow")).toBe("270");
    const box = await separator.boundingBox();
    await open.page.mouse.move((box?.x ?? 0) + 3, 400);
    await open.page.mouse.down();
    await open.page.mouse.move((box?.x ?? 0) - 97, 400, { steps: 4 });
    await open.page.mouse.up();
    expect(await width()).toBe(370);
  });

  it("hands a copy over as a file", async () => {
    const [download] = await Promise.all([
      open.page.waitForEvent("download"),
      open.page.evaluate(() => Excel.createWorkbook(btoa("PK..."))),
    ]);
    expect(download.suggestedFilename()).toBe("Woodlot copy.xlsx");
    expect(await readFile(await download.path(), "utf8")).toBe("PK...");
  });

  it("left the page without complaint", () => {
    expect(open.complaints).toEqual([]);
  });
});
