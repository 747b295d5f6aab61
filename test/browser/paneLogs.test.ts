import type { Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import { open, servePane, show } from "./pane/openPane";

servePane();

describe("a scale sheet", () => {
  const logRows = (page: Page) => page.evaluate(() => window.harness.host.book.tables.get("Logs")?.rows ?? []);

  it("goes from a typed line to a saved log by keyboard alone, with its scale by the buyer's rule before it is saved", async () => {
    const { page, complaints, close } = await open({ book: "demo" });
    await page.evaluate(() => window.harness.pane.show("logs"));
    await page.waitForFunction(() => document.activeElement?.id === "logs-line");
    const before = (await logRows(page)).length;
    await page.keyboard.type("wo 14 16.4 s1.5 d15");
    // Doyle by hand: (14 - 4)^2 = 100 bf for 16 ft, 85 after 15 percent.
    expect(await page.textContent("#logs-echo")).toContain(
      "= log 11, white oak, 14 in, 16.4 ft, 1.5 in of sweep, 15 % off",
    );
    expect(await page.textContent("#logs-echo")).toContain("14 in, 16 ft: 100 bf, net 85 by Doyle");
    await page.keyboard.press("Enter");
    await expect.poll(async () => (await logRows(page)).length).toBe(before + 1);
    expect((await logRows(page)).at(-1)).toMatchObject({
      Log: 11,
      Species: "wo",
      "Sweep in": 1.5,
      "Deduction pct": 15,
    });
    expect(await page.evaluate(() => document.activeElement?.id)).toBe("logs-line");
    await page.keyboard.press("Alt+u");
    expect(await page.inputValue("#logs-line")).toBe("wo 14 16.4 s1.5 d15");
    await expect.poll(async () => (await logRows(page)).length).toBe(before);
    expect(complaints).toEqual([]);
    await close();
  });

  it("asks about 0.15 typed for 15 percent, and takes it all the same", async () => {
    const { page, close } = await open({ book: "demo" });
    await show(page, "logs");
    expect(await page.textContent("#logs-echo")).toContain("Deduction 0.15 %, or 15 %?");
    await page.keyboard.press("Enter");
    await page.getByText("A deduction under 1 percent: type 15 for 15 percent.").waitFor();
    await close();
  });

  it("changes the rule of the whole sheet, and its total with it", async () => {
    const { page, close } = await open({ book: "demo" });
    await show(page, "logs");
    const total = () => page.textContent(".answer");
    const byDoyle = await total();
    expect(byDoyle).toContain("by Doyle");
    await page.selectOption("#logs-rule", "International 1/4");
    await expect.poll(total).toContain("by International 1/4");
    expect(await page.evaluate(() => window.harness.host.book.names.get("Scale_Rule"))).toBe("International 1/4");
    expect(await page.textContent(".totals .chosen")).toContain("International 1/4 (this sheet)");
    await close();
  });
});

describe("the log rules", () => {
  it("are drawn when they are ticked, and have the same figures in a table", async () => {
    const { page, complaints, close } = await open({ book: "none" });
    await show(page, "rules");
    const lines = () => page.locator(".drawing svg g[aria-label=line]").count();
    const drawn = await lines();
    await page.uncheck("#rule-doyle");
    await expect.poll(lines).toBe(drawn - 1);
    await page.check("#rule-doyle");
    await page.fill("#rules-length", "8");
    await page.getByText("Read as a table").click();
    // Doyle by hand: (16 - 4)^2 x 8 / 16 = 72 bf.
    expect(await page.textContent("table tbody tr:nth-child(9) td")).toBe("72");
    await page.fill("#rules-length", "100");
    await page.getByText("Type a length from 4 to 40 ft.").waitFor();
    expect(complaints).toEqual([]);
    await close();
  });
});

describe("a tally of boards", () => {
  it("goes from a typed line to a saved row, five quarters and all", async () => {
    const { page, complaints, close } = await open({ book: "demo" });
    await page.evaluate(() => window.harness.pane.show("boards"));
    await page.waitForFunction(() => document.activeElement?.id === "boards-line");
    await page.selectOption("#boards-log", "3");
    await page.waitForFunction(() => document.activeElement?.id === "boards-line");
    await page.keyboard.type("5/4 6 12 x4");
    // By hand: 1.25 x 6 x 12 / 12 x 4 = 30 bf.
    expect(await page.textContent("#boards-echo")).toContain("= 4 boards 1.25 x 6 in, 12 ft, from log 3");
    expect(await page.textContent("#boards-echo")).toContain("30.0 bf as given");
    await page.keyboard.press("Enter");
    await expect
      .poll(() => page.evaluate(() => window.harness.host.book.tables.get("Boards")?.rows.at(-1)))
      .toMatchObject({
        Log: 3,
        Species: "wo",
        "Thickness in": 1.25,
        "Width in": 6,
        "Length ft": 12,
        Pieces: 4,
      });
    expect(complaints).toEqual([]);
    await close();
  });
});

describe("sawing a log", () => {
  it("goes through the cuts by keyboard, marks the boards they free, and has them in a list", async () => {
    const { page, complaints, close } = await open({ book: "demo" });
    await show(page, "saw");
    await page.waitForSelector(".end-view");
    const said = async () => (await page.textContent(".cut-said"))?.replace(/\s+/g, " ").trim() ?? "";
    const marked = () => page.locator(".end-view .marked text").allTextContents();
    // The first cut of any pattern opens the log: it frees a slab and no board.
    expect(await said()).toMatch(/^1 of \d+\. .*Head reading [\d.]+ in\. Frees slab\.$/);
    expect(await marked()).toEqual([]);

    await page.focus("#saw-cuts");
    await page.keyboard.press("ArrowRight");
    expect(await said()).toMatch(/^2 of \d+\./);
    while ((await marked()).length === 0) await page.keyboard.press("ArrowDown");
    expect(await marked()).toContain("1");
    expect(await said()).toMatch(/Frees .*\(boards? 1/);
    await page.keyboard.press("Home");
    expect(await said()).toMatch(/^1 of/);
    await page.keyboard.press("ArrowLeft");
    expect(await said()).toMatch(/^1 of/);
    await page.getByRole("button", { name: "Next cut" }).click();
    expect(await said()).toMatch(/^2 of/);

    await page.getByText("Read as a list").focus();
    await page.keyboard.press("ArrowRight"); // outside the cuts a key is not theirs
    expect(await said()).toMatch(/^2 of/);

    await page.getByText("Read as a list").click();
    const listed = await page.locator(".cut-list li").count();
    expect(await said()).toContain(` of ${listed}.`);
    expect(await page.locator(".end-view .board").count()).toBeGreaterThan(0);
    expect(complaints).toEqual([]);
    await close();
  });

  it("writes the log that is chosen to its cell, and starts from its first cut", async () => {
    const { page, close } = await open({ book: "demo" });
    await show(page, "saw");
    await page.focus("#saw-cuts");
    await page.keyboard.press("End");
    await page.selectOption("#saw-log", "3");
    await expect.poll(() => page.evaluate(() => window.harness.host.book.names.get("Picked_Log"))).toBe(3);
    await expect.poll(() => page.getAttribute(".end-view", "aria-label")).toContain("End view of log 3");
    expect(await page.textContent(".cut-said")).toMatch(/^\s*1 of/);
    await close();
  });

  it("tells the sheet's error instead of a plan when there is none", async () => {
    const { page, close } = await open({ book: "demo" });
    await page.evaluate(() => window.harness.host.writeNames({ Kerf: -1 }));
    await page.evaluate(() => window.harness.pane.refresh());
    await show(page, "saw");
    await page.getByText("The sheet Sawing shows #VALUE!").waitFor();
    expect(await page.locator("#saw-cuts").count()).toBe(0);
    await close();
  });
});

describe("a copy to share", () => {
  it("is made and handed over, and names the cells that would show an error for ever", async () => {
    const { page, close } = await open({ book: "demo" });
    await show(page, "share");
    await page.getByText("Make the copy").click();
    await page.getByText("sheets,").waitFor();
    expect(await page.evaluate(() => window.harness.host.opened.map(({ fileName }) => fileName))).toEqual([
      expect.stringMatching(/ - values only\.xlsx$/),
    ]);

    await page.evaluate(() =>
      Object.assign(window.harness.host.book.tables.get("Logs")?.rows[0] ?? {}, { Note: "#REF!" }),
    );
    await page.getByText("Make the copy").click();
    await page.getByText("shows #REF!").waitFor();
    expect(await page.evaluate(() => window.harness.host.opened.length)).toBe(1);
    await page.getByText("Make it all the same").click();
    await expect.poll(() => page.evaluate(() => window.harness.host.opened.length)).toBe(2);
    await close();
  });
});
