import { readFileSync } from "node:fs";
import { readXlsx } from "hucre/xlsx";
import { afterAll, beforeAll, expect, it } from "vitest";
import { openPage, type OpenPage } from "./support/page";
import { PaneOnPage } from "./support/pane";

let opened: OpenPage;

beforeAll(async () => {
  opened = await openPage();
});
afterAll(async () => {
  await opened.close();
});

it("hands a forester a file of the demo's values, with no add-in formula left and the margin as the page has it", async () => {
  const { page } = opened;
  const pane = new PaneOnPage(page);
  const live = await page.evaluate(() => woodlotPage.read("Stand!B9:F12"));

  await pane.go("Share");
  const download = page.waitForEvent("download");
  await pane.button("Make the copy").click();
  const path = await (await download).path();
  const file = readFileSync(path);

  const { sheets } = await readXlsx(file);
  const stand = sheets.find(({ name }) => name === "Stand");
  const copied = stand?.rows.slice(8, 12).map((row) => row.slice(1, 6));
  expect(copied).toEqual(live);
  expect(sheets.map(({ name }) => name)).toContain("Methods");
  const pageOf = (name: string) => sheets.find((sheet) => sheet.name === name)?.pageSetup;
  // Down to the end of the cut list, whose headings stand on every page.
  const sawing = sheets.find(({ name }) => name === "Sawing")?.rows ?? [];
  const rows = sawing.map((row) => row.slice(0, 7).some((cell) => cell != null && cell !== ""));
  const headings = sawing.findIndex(([first]) => first === "Step") + 1;
  expect(pageOf("Sawing")).toMatchObject({
    orientation: "landscape",
    fitToPage: true,
    fitToWidth: 1,
    printArea: `$A$1:$G$${rows.lastIndexOf(true) + 1}`,
    printTitlesRow: `$${headings}:$${headings}`,
  });
  expect(pageOf("Trees")).toMatchObject({ orientation: "landscape", printTitlesRow: "$7:$7" });
  expect(pageOf("Field tally")?.orientation).toBe("portrait");
  expect(pageOf("Field tally")?.scale).toBeGreaterThan(50);
  const formulas = sheets.flatMap((sheet) => [...(sheet.cells?.values() ?? [])].filter((cell) => cell.formula));
  expect(formulas).toEqual([]);
  opened.expectQuiet();
});
