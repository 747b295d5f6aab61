import type { Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import { open as openPane, servePane } from "./pane/openPane";

servePane();
const open = (book: "demo" | "practice" | "none" = "practice") => openPane({ book });

const show = (page: Page, view: string) => page.evaluate((name) => window.harness.pane.show(name as never), view);
const rows = (page: Page, table: string) =>
  page.evaluate((name) => window.harness.host.book.tables.get(name)?.rows ?? [], table);
const options = (page: Page) => page.locator('[role="option"]').allInnerTexts();

describe("the tally box", () => {
  it("suggests species as one types, and takes one by the keys alone", async () => {
    const { page, complaints, close } = await open();
    await show(page, "tally");
    await page.waitForFunction(() => document.activeElement?.id === "tally-line");
    await page.keyboard.type("sug");
    await expect.poll(() => options(page)).toContain("sm: sugar maple, Acer saccharum");
    expect(await page.getAttribute("#tally-line", "aria-expanded")).toBe("true");
    await page.keyboard.press("ArrowDown");
    expect(await page.getAttribute("#tally-line", "aria-activedescendant")).toBe("tally-line-suggestions-0");
    await page.keyboard.press("Enter");
    expect(await page.inputValue("#tally-line")).toBe("sm ");
    expect(await page.getAttribute("#tally-line", "aria-expanded")).toBe("false");
    await page.keyboard.type("14.3 h68");
    expect(await page.textContent("#tally-echo")).toContain("= sugar maple, 14.3 in, total height 68 ft");
    await page.keyboard.press("Enter");
    await expect
      .poll(async () => (await rows(page, "Trees")).at(-1))
      .toMatchObject({
        Species: "sm",
        "DBH in": 14.3,
        "Logs 16 ft": null,
        "Height ft": 68,
      });
    expect(complaints).toEqual([]);
    await close();
  });

  it("adds a species of the national list under a short code, by name, scientific name or inventory code", async () => {
    const { page, close } = await open();
    await show(page, "tally");
    await page.fill("#tally-line", "acer rub");
    await page.getByText("Add rm: red maple, Acer rubrum, 316").click();
    await expect
      .poll(async () => (await rows(page, "Species")).at(-1))
      .toMatchObject({
        Code: "rm",
        Name: "red maple",
        "FIA code": 316,
        "Scientific name": "Acer rubrum",
      });
    expect(await page.inputValue("#tally-line")).toBe("rm ");
    expect(await page.evaluate(() => document.activeElement?.id)).toBe("tally-line");
    await page.keyboard.type("12 1");
    await expect.poll(() => page.textContent("#tally-echo")).toContain("= red maple, 12 in, 1 log");
    await close();
  });

  it("closes its list with Escape before anything else, and proposes the nearest name for a slip", async () => {
    const { page, close } = await open();
    await show(page, "tally");
    await page.fill("#tally-line", "sugar mapel");
    await page.locator('[role="option"]').first().waitFor();
    await page.keyboard.press("Escape");
    await expect.poll(() => options(page)).toEqual([]);
    expect(await page.inputValue("#tally-line")).toBe("sugar mapel");
    expect(await page.textContent("#tally-echo")).toContain("Did you mean sm (sugar maple)?");
    await page.keyboard.press("Escape");
    expect(await page.inputValue("#tally-line")).toBe("");
    await close();
  });

  it("asks for a total height where Setup says that is measured", async () => {
    const { page, close } = await open();
    await page.evaluate(() => window.harness.host.writeNames({ Height_Measured: "Total height" }));
    await page.evaluate(() => window.harness.pane.refresh());
    await show(page, "tally");
    await page.fill("#tally-line", "ro 14.3 85");
    expect(await page.textContent("#tally-echo")).toContain("= red oak, 14.3 in, total height 85 ft");
    await page.fill("#tally-line", "ro 14.3 2.5");
    expect(await page.textContent("#tally-echo")).toContain("For logs type 2.5logs.");
    await close();
  });

  it("measures a height with Alt+H and puts it behind the line", async () => {
    const { page, complaints, close } = await open();
    await show(page, "tally");
    await page.fill("#tally-line", "ro 14.3");
    await page.keyboard.press("Alt+h");
    await page.waitForSelector("#measure-top");
    await page.fill("#measure-top", "85");
    await page.fill("#measure-base", "-7");
    // By hand: 66 ft x (85 + 7) / 100 = 60.72 ft.
    expect(await page.textContent(".answer")).toContain("Height 60.7 ft");
    await page.getByText("Put h61 in the tally").click();
    await expect.poll(() => page.inputValue("#tally-line")).toBe("ro 14.3 h61");
    expect(await page.textContent("#tally-echo")).toContain("total height 61 ft");
    expect(complaints).toEqual([]);
    await close();
  });
});

describe("the species codes", () => {
  it("are found and added by keyboard, and one that means no national species is settled", async () => {
    const { page, complaints, close } = await open();
    await page.evaluate(() => window.harness.host.appendRows("Species", [{ Code: "so", Name: "scarlet oaks" }]));
    await page.evaluate(() => window.harness.pane.refresh());
    await show(page, "species");
    await page.waitForSelector("#species-find");
    expect(await page.textContent(".lines")).toContain('"scarlet oaks" is not in the national list');
    await page.getByText("Find it").click();
    await page.fill("#species-find", "quercus cocc");
    await expect.poll(() => options(page)).toEqual(["scarlet oak, Quercus coccinea, 806"]);
    await page.keyboard.press("ArrowDown");
    await page.keyboard.press("Enter");
    await expect
      .poll(async () => (await rows(page, "Species")).at(-1))
      .toMatchObject({ Code: "so", Name: "scarlet oak", "FIA code": 806, "Scientific name": "Quercus coccinea" });
    const before = (await rows(page, "Species")).length;
    await page.getByText("Add a species to your list").waitFor();
    await page.fill("#species-find", "316");
    await page.getByText("red maple, Acer rubrum, 316").click();
    await expect.poll(async () => (await rows(page, "Species")).length).toBe(before + 1);
    expect(complaints).toEqual([]);
    await close();
  });

  it("of a plan are found as one types", async () => {
    const { page, close } = await open("none");
    await show(page, "plan");
    await page.getByText("Species codes").click();
    await page.fill("#plan-find", "scarlet");
    await page.getByText("scarlet oak, Quercus coccinea, 806").click();
    expect(await page.inputValue("#plan-species")).toContain("so scarlet oak 806");
    await close();
  });
});

describe("the stand by product", () => {
  it("shows each product with its margin, and wood that adds up", async () => {
    const { page, close } = await open("demo");
    await show(page, "stand");
    await page.getByText("By product").waitFor();
    const words = ((await page.textContent("body")) ?? "").replace(/\s+/g, " ");
    expect(words).toMatch(/Sawlogs, \$[\d,]+ per acre [\d,]+ ± [\d,]+ bf per acre/);
    expect(words).toMatch(/Pulpwood, \$\d+ per acre [\d.]+ ± [\d.]+ cords per acre/);
    const [, sum = "", whole = ""] = /Wood, ft³ per acre: (.+) = whole stems ([\d,]+)\./.exec(words) ?? [];
    const parts = sum.split(" + ").map((part) => Number(/([\d,]+)$/.exec(part)?.[1]?.replace(",", "")));
    const total = parts.reduce((all, one) => all + one, 0);
    expect(Math.abs(total - Number(whole.replace(",", "")))).toBeLessThanOrEqual(parts.length / 2); // each is rounded
    await close();
  });
});
