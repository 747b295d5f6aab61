import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { openPage, type OpenPage } from "./support/page";
import { PaneOnPage } from "./support/pane";
import { demoTrees } from "../../src/demo/demoTally";

/** The demo's trees as an owner would paste them: tab separated, with his own headings. */
const tally = [
  "Point\tSpecies\tDBH\tLogs\tCount",
  ...demoTrees.map((tree) => [tree.Plot, tree.Species, tree["DBH in"], tree["Logs 16 ft"], 1].join("\t")),
].join("\n");

describe("the main job, on the page", () => {
  let opened: OpenPage;
  let pane: PaneOnPage;

  beforeAll(async () => {
    opened = await openPage();
    pane = new PaneOnPage(opened.page);
  });
  afterAll(async () => {
    await opened.close();
  });

  const cell = async (address: string): Promise<unknown> =>
    (await opened.page.evaluate((at) => woodlotPage.read(at), address))[0]?.[0];

  /** Clicks into the grid with the mouse, goes to a cell and types over it. */
  const typeInto = async (address: string, typed: string): Promise<void> => {
    const { page } = opened;
    const { x, y } = await page.evaluate(() => woodlotPage.middleOf("B9"));
    await page.mouse.click(x, y);
    await page.waitForTimeout(200);
    await page.evaluate((at) => woodlotPage.select(at), address);
    await page.waitForTimeout(300);
    await page.keyboard.type(typed);
    await page.keyboard.press("Enter");
    await page.waitForTimeout(500);
    await page.evaluate(() => woodlotPage.settled());
  };

  it("computes a function typed on the keyboard", async () => {
    await typeInto("Start!E12", '=WOODLOT.LOGSCALE(16,16,"Doyle")');
    expect(await cell("Start!E12")).toBe(144);
  });

  it("takes a pasted tally of 132 trees and tells the stand with its margin", async () => {
    await pane.go("Paste a tally");
    await pane.field(/Paste rows/).fill(tally);
    await pane.untilItSays(/132 lines of trees on 14 points/);
    await pane.text("Start a new cruise with them").click();
    await pane.field("Stand").fill("Pasted stand");
    await pane.field(/^Acres/).fill("32");
    await pane.field(/^Gauge/).fill("10");
    await pane.button("Start a cruise with it").click();
    await pane.answer("Replace them");
    await pane.untilItSays(/132 lines of trees on 14 points taken in/);

    const [mean, margin] = (await opened.page.evaluate(() => woodlotPage.read("Stand!B10:C10")))[0] ?? [];
    // 132 trees on 14 points at BAF 10; the margin by t(13) = 2.160369 is 14.4504, which prints as 14.5 or, by a t
    // rounded to 2.16, as 14.4.
    expect(mean).toBeCloseTo(94.2857, 3);
    expect(margin).toBeCloseTo(14.4504, 3);

    await pane.go("Stand");
    await pane.untilItSays(/Basal area 94\.3 ± 14\.5 ft² per acre/);
  });

  it("says what is wrong with one tree in the pane and in its row, and leaves every other cell as it was", async () => {
    const { page } = opened;
    const before = await page.evaluate(() => woodlotPage.read("Trees!A8:Z139"));
    await typeInto("Trees!C12", "143");
    const after = await page.evaluate(() => woodlotPage.read("Trees!A8:Z139"));

    const changed = after.flatMap((row, i) =>
      JSON.stringify(row) === JSON.stringify(before[i]) ? [] : [{ row: i, cells: row }],
    );
    expect(before).toHaveLength(132);
    expect(changed.map(({ row }) => row)).toEqual([4]);
    expect(JSON.stringify(changed[0]?.cells)).toContain("DBH 143 in is over your 60 in limit.");

    await pane.go("Check");
    await pane.untilItSays(/DBH 143 in is over your 60 in limit\./);
    await typeInto("Trees!C12", String(before[4]?.[2]));
    expect(await page.evaluate(() => woodlotPage.read("Trees!A8:Z139"))).toEqual(before);
  });

  it("loses nothing when the page is loaded again", async () => {
    const { page } = opened;
    const before = await page.evaluate(() => woodlotPage.read("Trees!A7:Z139"));
    const stand = await page.evaluate(() => woodlotPage.read("Stand!A7:F26"));
    await page.evaluate(() => woodlotPage.saved());
    await page.reload();
    await page.waitForFunction(() => typeof woodlotPage === "object");
    await page.evaluate(() => woodlotPage.settled());
    await pane.untilItSays(/Pasted stand/);
    expect(await page.evaluate(() => woodlotPage.read("Trees!A7:Z139"))).toEqual(before);
    expect(await page.evaluate(() => woodlotPage.read("Stand!A7:F26"))).toEqual(stand);
  });

  it("asks no other machine for anything and complains of nothing", () => {
    expect(opened.requests.filter((url) => !url.startsWith("http://127.0.0.1:"))).toEqual([]);
    opened.expectQuiet();
  });
});
