import { readXlsx } from "hucre/xlsx";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { startPaneServer, type PaneServer } from "./pane/paneServer";
import { launchBrowser } from "./support/page";

let server: PaneServer;
let browser: Browser;
beforeAll(async () => {
  [server, browser] = await Promise.all([startPaneServer(), launchBrowser()]);
});
afterAll(async () => {
  await browser.close();
  server.stop();
});

/** The view Saw a log over the demo, in a pane of 320 px. */
async function open(theme: "light" | "dark" = "light"): Promise<Page> {
  const page = await (await browser.newContext({ viewport: { width: 320, height: 640 } })).newPage();
  await page.goto(`${server.address}?book=demo&theme=${theme}`);
  await page.waitForSelector("html[data-ready]");
  await page.evaluate(() => window.harness.pane.show("saw"));
  await page.waitForSelector(".end-view");
  return page;
}

describe.each(["light", "dark"] as const)("a plan on paper, from the %s pane", (theme) => {
  it("prints the settings and the drawing, and nothing of the pane, black on white", async () => {
    const page = await open(theme);
    const paper = page.locator(".paper");
    expect(await paper.isVisible()).toBe(false);
    const cuts = await page.locator(".figures").first().locator("tbody tr").count();
    await page.emulateMedia({ media: "print" });
    expect(await paper.isVisible()).toBe(true);
    const seen = page.locator(".frame, #saw-log, #saw-cuts, .action, .caution");
    expect(await seen.evaluateAll((all) => all.filter((one) => one.checkVisibility()).length)).toBe(0);
    expect(await paper.locator("tbody tr").count()).toBe(cuts);
    expect(await paper.locator(".end-view .board").count()).toBeGreaterThan(5);
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
