import { readFileSync } from "node:fs";
import { readXlsx } from "hucre/xlsx";
import { afterAll, beforeAll, expect, it } from "vitest";
import { openPage, type OpenPage } from "./support/page";
import { PaneOnPage } from "./support/pane";
import { put, read } from "./support/sheet";

const REASON = "Taped over a ditch, measured twice";

let opened: OpenPage;
let pane: PaneOnPage;

beforeAll(async () => {
  opened = await openPage();
  pane = new PaneOnPage(opened.page);
});
afterAll(async () => {
  await opened.close();
});

it("hands a forester what was kept with its reason, once the other mistakes are mended", async () => {
  const { page } = opened;
  const headings = (await read(page, "Trees!A7:Z7"))[0] ?? [];
  const cell = (heading: string, row: number) =>
    `Trees!${String.fromCharCode(65 + headings.indexOf(heading))}${row + 7}`;
  await put(page, cell("DBH in", 3), [[143]]);
  await put(page, cell("Distance ft", 25), [[75]]);
  await pane.go("Check");
  await pane.untilItSays(/Taped at 75 ft/);

  await pane.button(/^Keep as is - why\?/).click();
  await pane.field("Why is it right as it is?").fill(REASON);
  await pane.button("Keep it").click();
  await pane.untilItSays(/Show accepted \(1\)/);
  await pane.button("Use 14.3: Point 1, tree in row 3").click();
  await expect.poll(async () => /143 in/.test(await pane.words()), { timeout: 60_000 }).toBe(false);

  await pane.go("Share");
  await pane.untilItSays(/1 accepted and the reasons why/);
  const download = page.waitForEvent("download").catch(async (problem: unknown) => {
    throw new Error(`No copy came, and the pane says: ${await pane.words()}`, { cause: problem });
  });
  await pane.button("Make the copy").click();
  const { sheets } = await readXlsx(readFileSync(await (await download).path()));
  const rows = sheets.find(({ name }) => name === "Checks")?.rows ?? [];
  const kept = rows.filter((row) => row[3] === REASON);
  expect(kept).toHaveLength(1);
  expect(kept[0]?.[0]).toBe("Trees");
  expect(kept[0]?.[2]).toMatch(/^Taped at 75 ft/);
});

it("says in words which cell stops a copy, and makes it all the same when that is wanted", async () => {
  const { page } = opened;
  await put(page, "Start!H40", [["=1/0"]]);
  await pane.button("Make the copy").click();
  await pane.untilItSays(
    /The copy was not made yet: one cell shows an error, and would for ever\..*Start H40 shows #DIV\/0!/,
  );
  const download = page.waitForEvent("download");
  await pane.button("Make it all the same").click();
  expect((await download).suggestedFilename()).toMatch(/\.xlsx$/);
});
