import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { demoTrees } from "../../src/demo/demoTally";
import { openPage, type OpenPage } from "./support/page";
import { PaneOnPage } from "./support/pane";
import { put, read } from "./support/sheet";

let opened: OpenPage;
let pane: PaneOnPage;
let columns: readonly string[];

/** The address of a cell of the table Trees: its row counted from 1, its column by the heading. */
const tree = (row: number, heading: string) => `Trees!${letters(columns.indexOf(heading))}${row + 7}`;
const letters = (place: number): string =>
  (place < 26 ? "" : letters(Math.floor(place / 26) - 1)) + String.fromCharCode(65 + (place % 26));
const rowsOf = (plot: number) => demoTrees.flatMap((row, place) => (row.Plot === plot ? [place + 1] : []));

/** Mistakes as they are made in the evening, each in its own place. */
async function makeMistakes(): Promise<void> {
  const { page } = opened;
  const set = (row: number, heading: string, value: string | number) => put(page, tree(row, heading), [[value]]);
  await set(3, "DBH in", 143);
  await set(12, "Species", "rp");
  for (const row of rowsOf(12)) await set(row, "Plot", 11);
  await put(page, "Points!F19", [[""]]);
  await set(25, "Distance ft", 75);
  await set(30, "Logs 16 ft", 40);
  await put(page, "Boards!D10", [[46_117]]);
  await put(page, "Logs!H11", [[0.15]]);
}

/** Gives point 6 the trees of point 8, which has as many at the least. */
async function enterTwice(): Promise<void> {
  const [six, eight] = [rowsOf(6), rowsOf(8)];
  for (const [place, row] of six.entries()) {
    const like = demoTrees[(eight[place % eight.length] ?? 1) - 1];
    if (place >= eight.length) await put(opened.page, tree(row, "Plot"), [[9]]);
    for (const heading of ["Species", "DBH in", "Logs 16 ft"] as const)
      if (place < eight.length) await put(opened.page, tree(row, heading), [[like?.[heading] ?? ""]]);
  }
}

/** Where the page's selection is. */
const selected = () =>
  Excel.run(async (context) => {
    const range = context.workbook.getSelectedRange();
    range.load("address");
    await context.sync();
    return range.address;
  });

beforeAll(async () => {
  opened = await openPage();
  pane = new PaneOnPage(opened.page);
  columns = ((await read(opened.page, "Trees!A7:AZ7"))[0] ?? []).map(String);
});
afterAll(async () => {
  await opened.close();
});

describe("what the evening's mistakes are called", () => {
  it("is nothing in the demo but that its invented prices have no source", async () => {
    await pane.go("Check");
    expect(await pane.untilItSays(/3 to look at/)).toMatch(/Price of Standing timber !Say where this price is from/);
  });

  it("is told by name in the pane, each with its place", async () => {
    await makeMistakes();
    await enterTwice();
    const said = await pane.untilItSays(/the same as those of plot/);
    for (const sentence of [
      /Point 1, tree in row 3 !DBH 143 in is over your 60 in limit\. Missing a decimal point\? .*Use 14\.3/,
      /"rp" is not in your species list\. Fix the code or add it on Setup\. Did you mean ro or yp\? .*Use ro Use yp Add rp/,
      /Point 12 !No trees and not marked: is it empty, or not visited yet\?/,
      /Taped at 75 ft, but a tree of [\d.]+ in is out beyond [\d.]+ ft\./,
      /40 logs look like feet: 40 ft make 2\.5 logs\. .*Use 2\.5/,
      /Point 8 !Its \d+ trees are the same as those of plot 6\. Was one plot entered under two numbers\?/,
      /This looks like a date or a slip: type 1\.25, not 5\/4\./,
      /Log 2 !A deduction under 1 percent: type 15 for 15 percent\./,
      /Price of Standing timber !Say where this price is from and of what date\./,
    ])
      expect(said).toMatch(sentence);
    // What follows from a slip is not told beside it at length.
    expect(said).not.toMatch(/Neither the national|The tables have no volume/);
    expect(said).toMatch(/Until it is mended, the stand has no volume\./);
  });

  it("stands on the sheet Checks, too", async () => {
    const list = await read(opened.page, "Checks!A7:D30");
    expect(list[0]).toEqual(["Sheet", "Where", "What to look at", "Kept because"]);
    expect(list.map(([sheet, where]) => `${sheet}: ${where}`)).toEqual(
      expect.arrayContaining([
        "Trees: Point 1, tree in row 3",
        "Points: Point 12",
        "Logs: Log 2",
        "Prices: Standing timber",
      ]),
    );
  });

  it("leads to its cell", async () => {
    await pane.button("Go to Point 1, tree in row 3").click();
    await expect.poll(() => opened.page.evaluate(selected), { timeout: 60_000 }).toBe(tree(3, "DBH in"));
  });

  it("is kept with its reason, in the list", async () => {
    const { page } = opened;
    await pane.button(/^Keep as is - why\? Point 8/).click();
    await pane.field("Why is it right as it is?").fill("Two men took both, I checked");
    await pane.button("Keep it").click();
    await pane.untilItSays(/Show accepted \(1\)/);
    const kept = (await read(page, "Checks!A7:D40")).filter(
      ([, , , reason]) => reason === "Two men took both, I checked",
    );
    expect(kept.map(([sheet, where]) => [sheet, where])).toEqual([["Points", "Point 8"]]);
  });

  it("goes when it is mended by the button beside it", async () => {
    await pane.go("Check");
    await pane.button("Use 14.3: Point 1, tree in row 3").click();
    await pane.button(/^Use ro: /).click();
    await pane.button(/^It is empty: Point 12/).click();
    await pane.button(/^Use 2.5: /).click();
    await expect
      .poll(async () => /143 in|"rp"|Point 12 !|40 logs/.test(await pane.words()), { timeout: 60_000 })
      .toBe(false);
    opened.expectQuiet();
  });
});
