import { afterAll, beforeAll, expect, it } from "vitest";
import { openPage, type OpenPage } from "./support/page";
import { PaneOnPage } from "./support/pane";
import { read } from "./support/sheet";

let opened: OpenPage;

beforeAll(async () => {
  opened = await openPage();
});
afterAll(async () => {
  await opened.close();
});

it("tallies trees and takes rows out again without a word on the console, and every figure follows", async () => {
  const { page } = opened;
  const pane = new PaneOnPage(page);
  const figures = () => read(page, "Stand!B8:F20");
  const before = await figures();
  await pane.go("Tally trees");
  const box = pane.field("Species, DBH, logs");
  const enter = async (line: string) => {
    await box.fill(line);
    await box.press("Enter");
  };
  const untilRows = (wanted: number) =>
    expect
      .poll(() => page.evaluate(() => woodlotPage.tables().find(({ name }) => name === "Trees")?.rows), {
        timeout: 60_000,
      })
      .toBe(wanted);

  // Faster than the sheet calculates, so that rows come and go while formulas are being worked out.
  for (let inches = 12; inches < 20; inches += 1) await enter(`ro ${inches} 2`);
  await untilRows(140);
  for (let tree = 0; tree < 4; tree += 1) {
    await box.press("Alt+u");
    await expect.poll(() => box.inputValue()).not.toBe("");
    await box.press("Escape");
    await expect.poll(() => box.inputValue()).toBe("");
  }
  await untilRows(136);
  await enter("sm 14 2");
  await untilRows(137);
  await pane.untilItSays(/sugar maple, 14 in/);
  for (let left = 4; left >= 0; left -= 1) {
    await pane
      .button(/^Remove /)
      .last()
      .click();
    await untilRows(132 + left);
  }

  await page.evaluate(() => woodlotPage.settled());
  expect(await figures()).toEqual(before);
  opened.expectQuiet();
});
