import { afterAll, beforeAll, expect, it } from "vitest";
import { CUTS_AT } from "../../src/workbook/sheets/sawingSpills";
import { openPage, type OpenPage } from "./support/page";
import { put, read } from "./support/sheet";

let opened: OpenPage;
beforeAll(async () => {
  opened = await openPage();
});
afterAll(async () => {
  await opened.close();
});

const printed = () =>
  opened.page.evaluate(() =>
    Excel.run(async (context) => {
      const area = context.workbook.worksheets.getItem("Sawing").pageLayout.getPrintAreaOrNullObject().load("address");
      await context.sync();
      return area.address;
    }),
  );

/** Row of the last line of the cut list. */
async function lastCut(): Promise<number> {
  const rows = await read(opened.page, `Sawing!A${CUTS_AT}:G${CUTS_AT + 100}`);
  return CUTS_AT - 1 + rows.filter((row) => row.some((cell) => cell !== "")).length;
}

it(
  "prints the sheet Sawing down to the end of the cut list, whichever log is picked",
  { timeout: 240_000 },
  async () => {
    const lengths = new Set<number>();
    for (const log of [1, 7, 4]) {
      await put(opened.page, "Sawing!B5", [[log]]);
      const last = await lastCut();
      lengths.add(last);
      await expect.poll(printed, { timeout: 60_000 }).toBe(`Sawing!A1:G${last}`);
    }
    expect(lengths.size).toBe(3);
    opened.expectQuiet();
  },
);

it("leaves an area that the user chose", { timeout: 240_000 }, async () => {
  const { page } = opened;
  await page.evaluate(() =>
    Excel.run(async (context) => {
      context.workbook.worksheets.getItem("Sawing").pageLayout.setPrintArea("A1:D30");
      await context.sync();
    }),
  );
  await put(page, "Sawing!B5", [[1]]);
  const syncs = await page.evaluate(() => woodlotPage.syncs());
  await expect.poll(() => page.evaluate(() => woodlotPage.syncs()), { timeout: 60_000 }).toBeGreaterThan(syncs + 20);
  await page.waitForTimeout(2000);
  expect(await printed()).toBe("Sawing!A1:D30");
});
