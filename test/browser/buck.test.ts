import { describe, expect, it } from "vitest";
import { open as openPane, servePane } from "./pane/openPane";

servePane();

async function open() {
  const { page, complaints, close } = await openPane({ book: "demo" });
  await page.evaluate(() => window.harness.pane.show("buck"));
  await page.waitForSelector(".stem-side");
  const said = async () => (await page.textContent(".cut-said"))?.replace(/\s+/g, " ").trim() ?? "";
  const marked = () => page.locator(".stem-side .marked text").allTextContents();
  return { page, complaints, said, marked, close };
}

describe("bucking a stem", () => {
  it("goes through the logs by keyboard, marks each in the side view, and has them in a list", async () => {
    const { page, complaints, said, marked, close } = await open();
    expect(await said()).toMatch(/^1 of \d+\. .* above the butt cut\. Small end [\d.]+ in.*\$[\d.]+\.$/);
    expect(await marked()).toEqual(["1"]);
    await page.focus("#stem-cuts");
    await page.keyboard.press("ArrowRight");
    expect(await said()).toMatch(/^2 of/);
    expect(await marked()).toEqual(["2"]);
    await page.keyboard.press("End");
    const last = await said();
    expect(last).toMatch(/^(\d+) of \1\./);
    await page.keyboard.press("ArrowDown");
    expect(await said()).toBe(last);
    await page.keyboard.press("Home");
    await page.getByRole("button", { name: "Next log" }).click();
    expect(await said()).toMatch(/^2 of/);

    await page.getByText("Read as a list").click();
    const logs = page.locator("table", { hasText: "Logs of the stem" }).locator("tbody tr");
    expect(await said()).toContain(` of ${await logs.count()}.`);
    await page.getByText("Compare with habits").click();
    expect(await page.locator("table", { hasText: "Ways to cut" }).locator("tbody tr").first().textContent()).toMatch(
      /^\s*Best plan/,
    );
    expect(await page.textContent(".answer")).toMatch(/\d+ logs, \$[\d.]+\./);
    expect(complaints).toEqual([]);
    await close();
  });

  it("takes a stem typed by keyboard alone, by logs too, and says what is wrong beside its box", async () => {
    const { page, said, close } = await open();
    await page.fill("#stem-dbh", "143");
    await page.press("#stem-dbh", "Enter");
    await page.getByText("Type a DBH from 1 to 80 in.").waitFor();
    expect(await page.evaluate(() => document.activeElement?.id)).toBe("stem-dbh");
    await page.fill("#stem-dbh", "18");
    await page.getByLabel("16-ft logs").focus();
    await page.keyboard.press("Space");
    await page.fill("#stem-measure", "2.5");
    await page.fill("#stem-flaws", "crook 20");
    expect(await page.textContent("#stem-flaws-hint")).toBe("Logs keep clear of the crook at 20 ft.");
    await page.press("#stem-flaws", "Enter");
    await expect.poll(() => page.evaluate(() => window.harness.host.book.names.get("Stem_Logs"))).toBe(2.5);
    expect(await page.evaluate(() => window.harness.host.book.names.get("Stem_Height"))).toBeNull();
    await expect.poll(said).toMatch(/^1 of/);
    await expect.poll(() => page.locator(".stem-side .flaw").count()).toBe(1);
    await close();
  });
});
