import quantile from "@stdlib/stats-base-dists-t-quantile";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { openPage, type OpenPage } from "./support/page";
import { PaneOnPage } from "./support/pane";
import { put, read } from "./support/sheet";

/** Margin of so many points in percent of their mean, and the points that a wanted margin takes, by another library. */
function worked(volumes: readonly number[]) {
  const mean = volumes.reduce((sum, one) => sum + one, 0) / volumes.length;
  const variance = volumes.reduce((sum, one) => sum + (one - mean) ** 2, 0) / (volumes.length - 1);
  const variation = (100 * Math.sqrt(variance)) / mean;
  const t = (points: number) => quantile(0.975, points - 1);
  const isEnough = (points: number, wanted: number) => points >= ((t(points) * variation) / wanted) ** 2;
  return {
    margin: (t(volumes.length) * variation) / Math.sqrt(volumes.length),
    needed: (wanted: number) => Array.from({ length: 500 }, (_, at) => at + 2).find((n) => isEnough(n, wanted)) ?? NaN,
  };
}

describe("whether the points taken so far are enough, on the page", () => {
  let opened: OpenPage;
  let pane: PaneOnPage;
  let volumes: readonly number[];
  beforeAll(async () => {
    opened = await openPage();
    pane = new PaneOnPage(opened.page);
    await pane.go("Stand");
    volumes = (await read(opened.page, "Points!L8:L21")).map(([one]) => Number(one));
  });
  afterAll(() => opened.close());

  /** The cell of the margin that the owner can live with, wherever Setup has it. */
  const want = async (margin: number) => {
    const rows = await read(opened.page, "Setup!A1:A40");
    const row = rows.findIndex(([label]) => /^Margin/.test(String(label))) + 1;
    expect(row).toBeGreaterThan(0);
    await put(opened.page, `Setup!B${row}`, [[margin]]);
  };

  it("tells how many more points the margin that is wanted takes", async () => {
    await want(10);
    const more = worked(volumes).needed(10) - volumes.length;
    await pane.untilItSays(new RegExp(`To reach 10 %: about ${more} more points`));
  });

  it("shows the margin after each point, down to the one that stands above", async () => {
    const words = await pane.words();
    const table = await opened.page
      .frameLocator("iframe")
      .locator("table", { hasText: "Margin as points came in" })
      .locator("tr")
      .evaluateAll((rows) => rows.map((row) => [...row.children].map((cell) => Number(cell.textContent))));
    const path = table.filter(([points]) => (points ?? NaN) > 0);
    expect(path.length).toBeGreaterThan(5);
    for (const [points = NaN, margin = NaN] of path)
      expect(margin).toBeCloseTo(worked(volumes.slice(0, points)).margin, 1);
    expect(path.at(-1)?.[0]).toBe(14);
    expect(words).toMatch(/give or take 14 %/);
  });

  it("warns of stopping as soon as it looks good, with the figure of the simulation", async () => {
    await want(20);
    await pane.untilItSays(/The volume is within the 20 % you said you can live with/);
    // As test/bench/stopping.ts prints it for a wanted margin of 20 %
    await pane.untilItSays(/the margin at which one stopped for 20 % was 6 % smaller than the true one/);
    await want(30);
    await pane.untilItSays(/stopped for 30 % was 14 % smaller than the true one/);
    opened.expectQuiet();
  });
});
