import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { readXlsx } from "hucre/xlsx";
import type { Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import { open as openPane, servePane } from "./pane/openPane";

const axe = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");

servePane();

/** The view Saw a log over the demo, in a pane of 320 px. */
async function open(theme: "light" | "dark" = "light"): Promise<Page> {
  const { page } = await openPane({ book: "demo", theme });
  await page.evaluate(() => window.harness.pane.show("saw"));
  await page.waitForSelector(".end-view");
  return page;
}

describe.each(["light", "dark"] as const)("a plan on paper, from the %s pane", (theme) => {
  it("prints the settings and the drawing, and nothing of the pane, black on white", async () => {
    const page = await open(theme);
    const paper = page.locator(".paper");
    expect(await paper.isVisible()).toBe(false);
    expect(await page.innerText(".view")).toMatch(
      /^No other .*Settings tried: every 1\/16 in\. By area and kerf no plan/m,
    );
    const cuts = await page.locator(".cut-list li").count();
    await page.emulateMedia({ media: "print" });
    expect(await paper.isVisible()).toBe(true);
    const seen = page.locator(".frame, #saw-log, #saw-cuts, .action, .caution");
    expect(await seen.evaluateAll((all) => all.filter((one) => one.checkVisibility()).length)).toBe(0);
    expect(await paper.locator("tbody tr").count()).toBe(cuts);
    expect(await paper.locator(".end-view .board").count()).toBeGreaterThan(5);
    expect(await paper.innerText()).toMatch(/[0-9.]+ % of what area and kerf allow/);
    const colors = await page.evaluate(() => {
      const { backgroundColor, color } = getComputedStyle(document.getElementById("pane") as Element);
      return [backgroundColor, color];
    });
    expect(colors).toEqual(["rgb(255, 255, 255)", "rgb(0, 0, 0)"]);
    expect(await paper.innerText()).toContain("House framing usually needs graded, stamped lumber");
    await page.close();
  });
});

it("a plan as its own workbook holds the same settings and the drawing", async () => {
  const page = await open();
  await page.getByRole("button", { name: /^As its own workbook/ }).click();
  await page.waitForFunction(() => window.harness.host.opened.length > 0);
  const [made] = await page.evaluate(() => window.harness.host.opened);
  expect(made?.fileName).toBe("Plan of log 1.xlsx");
  const { sheets } = await readXlsx(Uint8Array.from(Buffer.from(made?.base64 ?? "", "base64")));
  const rows = sheets[0]?.rows ?? [];
  const cuts = await page
    .locator(".paper tbody tr")
    .evaluateAll((all) => all.map((row) => [...row.querySelectorAll("td")].map((cell) => cell.textContent ?? "")));
  expect(cuts.length).toBeGreaterThan(10);
  expect(rows.slice(22, 22 + cuts.length).map((row) => row.slice(0, 6).map((cell) => String(cell ?? "")))).toEqual(
    cuts,
  );
  const [picture] = sheets[0]?.images ?? [];
  expect(picture?.type).toBe("png");
  expect(picture?.data.length).toBeGreaterThan(10_000); // a drawing, no blank square
  await page.close();
});

describe.each(["light", "dark"] as const)("one product more, in the %s pane", (theme) => {
  const trials = (page: Page) => page.evaluate(() => window.harness.host.book.tables.get("MoreProducts")?.rows ?? []);

  it("asks beside each box for what is missing", async () => {
    const page = await open(theme);
    await page.getByText("Try one product more").click();
    await page.fill("#trial-thickness", "5/4");
    await page.getByRole("button", { name: "Try it" }).click();
    expect(await page.locator(".problem").allTextContents()).toEqual([
      "Type a thickness from 0.25 to 24 in; 1.25, not 5/4.",
      "Type a width from 1 to 60 in, such as 6, or 4 to 12 by 2.",
      "Your boards have prices, so this one needs one: $ per MBF.",
    ]);
    expect(await page.evaluate(() => document.activeElement?.id)).toBe("trial-thickness");
    for (const opens of ["Read as a list", "Other kerfs, one product more", "Boards it may saw"])
      await page.getByText(opens, { exact: true }).click();
    await page.evaluate(axe);
    const { violations } = await page.evaluate(() => window.axe.run({ resultTypes: ["violations"] }));
    expect(violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join(" ")}`)).toEqual([]);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(320);
    await page.close();
  });

  it("is put on the sheet by the Enter key, told what it would bring, and cleared again", async () => {
    const page = await open(theme);
    await page.getByText("Try one product more").click();
    await page.fill("#trial-thickness", "1.5");
    await page.fill("#trial-width", "8");
    await page.fill("#trial-price", "950");
    await page.press("#trial-price", "Enter");
    await page.getByText(/^With 1\.5 x 8 in too: [\d.]+ bf, [+-][\d.]+ bf, [+-]\$[\d.]+\. The plan itself/).waitFor();
    expect(await trials(page)).toEqual([
      expect.objectContaining({ "Sawn thickness in": 1.5, "Width in": 8, "Price per MBF": 950 }),
    ]);
    expect(await page.inputValue("#trial-thickness")).toBe("");
    await page.getByRole("button", { name: "Clear the products that are tried" }).click();
    await expect.poll(async () => (await trials(page))[0]?.["Width in"]).toBe(null);
    await expect.poll(() => page.getByRole("button", { name: /^Clear the products/ }).count()).toBe(0);
    await page.close();
  });
});

describe.each(["light", "dark"] as const)("a stack of equal boards, in the %s pane", (theme) => {
  it("is set by the marks of the mill's scale while it is typed, and says what is wrong", async () => {
    const page = await open(theme);
    await page.evaluate(() => {
      window.harness.host.book.tables.get("Mill")?.rows.push({ Limit: "Scale step", Value: 0.0625, Unit: "in" });
      return window.harness.pane.refresh();
    });
    await page.getByText("Saw a stack of equal boards").click();
    const said = page.locator("details", { hasText: "Saw a stack of equal boards" }).getByRole("status");
    expect(await said.textContent()).toContain("Fill in the boxes above.");
    await page.fill("#equal-start", "12 7/16");
    await page.fill("#equal-thickness", "1 1/8");
    await page.fill("#equal-boards", "3");
    await expect.poll(() => said.textContent()).toContain("3 boards, 1.16 in thick; left on the bed: 8 11/16 in.");
    const cuts = page.getByRole("list", { name: "Head reading of each cut" }).locator("li");
    expect(await cuts.allTextContents()).toEqual(["11 3/16 in", "9 15/16 in", "8 11/16 in"]);
    await page.evaluate(axe);
    const { violations } = await page.evaluate(() => window.axe.run({ resultTypes: ["violations"] }));
    expect(violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join(" ")}`)).toEqual([]);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(320);
    await page.fill("#equal-boards", "10");
    await expect.poll(() => said.textContent()).toContain("The last cut would hit the bed.");
    expect(await cuts.count()).toBe(0);
    await page.close();
  });
});
