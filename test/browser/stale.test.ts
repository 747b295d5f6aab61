import { afterEach, beforeEach, expect, it } from "vitest";
import { openPage, type OpenPage } from "./support/page";
import { put } from "./support/sheet";

let opened: OpenPage;

beforeEach(async () => {
  opened = await openPage();
});
afterEach(async () => {
  await opened.close();
});

const SHOWN = ["Stand!A1:F30", "Stand!H7:L24", "Compare!A1:F50", "Logs!A1:S20", "Rules!A1:J20", "Start!A1:C34"];

const everything = (): Promise<unknown[]> =>
  opened.page.evaluate(async (addresses) => {
    const shown: unknown[] = [];
    for (const address of addresses) shown.push(await woodlotPage.read(address));
    return shown;
  }, SHOWN);

/** The same workbook with every formula calculated anew, as it is when the page is loaded again. */
async function afterReload(): Promise<unknown[]> {
  await opened.page.evaluate(() => woodlotPage.saved());
  await opened.page.reload();
  await opened.page.waitForFunction(() => typeof woodlotPage === "object");
  await opened.page.evaluate(() => woodlotPage.settled());
  return everything();
}

it.each([
  ["another gauge", "Setup!B9", 20],
  ["another log rule", "Setup!B12", "Doyle"],
  ["a tree that no table covers", "Trees!C10", 8],
])("leaves no old figure standing after %s", async (_, address, value) => {
  const before = await everything();
  await put(opened.page, address, [[value]]);
  const followed = await everything();
  expect(followed).not.toEqual(before);
  expect(followed).toEqual(await afterReload());
  opened.expectQuiet();
});

it("comes back to the demo when asked to start over", async () => {
  const { page } = opened;
  const demo = await everything();
  await put(page, "Setup!B9", [[20]]);
  page.on("dialog", (dialog) => void dialog.accept());
  await page.locator("#start-over").click();
  const yes = page.getByRole("button", { name: /start over|replace|yes/i }).last();
  if (await yes.isVisible()) await yes.click();
  await expect.poll(() => everything().catch(() => []), { timeout: 60_000, interval: 1000 }).toEqual(demo);
  opened.expectQuiet();
});
