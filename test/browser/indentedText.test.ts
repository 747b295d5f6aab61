import { expect, it } from "vitest";
import { openPage } from "./support/page";
import { addSheet, put } from "./support/sheet";

it("shows a text whole that reaches over the edge of its column by its indent only", async () => {
  const opened = await openPage();
  const { page } = opened;
  await addSheet(page, "Words");
  // Seven letters of some 12 px in 100 px; four levels of indent push the last one over the edge.
  await put(page, "Words!A2:A3", [["mmmmmmm"], ["mmmmmmm"]]);
  await page.evaluate(() =>
    Excel.run(async (context) => {
      const sheet = context.workbook.worksheets.getItem("Words");
      sheet.getRange("A1:B1").format.columnWidth = 75;
      sheet.getRange("A3").format.indentLevel = 4;
      sheet.activate();
      await context.sync();
    }),
  );
  await page.evaluate(() => woodlotPage.select("Words!D9"));
  /** Dark pixels in the neighbouring cell. */
  const inkOver = (address: string) =>
    page.evaluate((at) => {
      const canvas = document.querySelector<HTMLCanvasElement>("#sheet canvas[id^=univer-sheet-main-canvas]");
      const { x, y } = woodlotPage.middleOf(at);
      const { left, top } = canvas?.getBoundingClientRect() ?? { left: 0, top: 0 };
      const half = 46; // px, from the middle of a cell nearly to its edges
      const drawn = canvas?.getContext("2d")?.getImageData(x - left - half, y - top - 8, 2 * half, 16).data ?? [];
      return Array.from(
        { length: drawn.length / 4 },
        (_, i) => (drawn[4 * i] ?? 255) < 100 && (drawn[4 * i + 3] ?? 0) > 100,
      ).filter(Boolean).length;
    }, address);
  await expect.poll(() => inkOver("Words!A2"), { timeout: 30_000 }).toBeGreaterThan(20);
  await expect.poll(() => inkOver("Words!B3"), { timeout: 30_000 }).toBeGreaterThan(5);
  expect(await inkOver("Words!B2")).toBe(0);
  opened.expectQuiet();
  await opened.close();
});
