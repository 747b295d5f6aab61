import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { describe, expect, it } from "vitest";
import { viewTitles, type ViewName } from "../../src/pane/views/viewNames";
import { open, openInSystemColors, servePane, show } from "./pane/openPane";

const views = Object.keys(viewTitles) as ViewName[];
const axe = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");

servePane();

describe.each(["light", "dark"] as const)("in the %s theme", (theme) => {
  it.each(["demo", "practice", "none"] as const)(
    "no view of the book %s breaks a rule of accessibility",
    async (book) => {
      const { page, complaints, close } = await open({ book, theme });
      await page.evaluate(axe);
      for (const view of views) {
        await show(page, view);
        const { violations } = await page.evaluate(() => window.axe.run({ resultTypes: ["violations"] }));
        const told = violations.map(({ id, nodes }) => `${view}: ${id} at ${nodes.map(({ html }) => html).join(" ")}`);
        expect(told).toEqual([]);
      }
      expect(complaints).toEqual([]);
      await close();
    },
  );
});

describe.each([270, 320, 500])("at %d pixels", (width) => {
  it("no view needs sideways scrolling, and every target is at least 24 by 24, buttons 40 high", async () => {
    const { page, close } = await open({ width });
    for (const view of views) {
      await show(page, view);
      await page.evaluate(() => document.querySelectorAll("details").forEach((one) => (one.open = true)));
      const { over, small } = await page.evaluate(() => ({
        over: document.documentElement.scrollWidth - window.innerWidth,
        small: [
          ...document.querySelectorAll("fluent-button, button, summary, select, input[type=text], textarea, .radio"),
        ]
          .filter((one) => one.getBoundingClientRect().height < 40 || one.getBoundingClientRect().width < 24)
          .map((one) => one.outerHTML.slice(0, 120)),
      }));
      expect({ view, over, small }).toEqual({ view, over: 0, small: [] });
    }
    await close();
  });
});

describe("the theme", () => {
  it("follows the system when the host does not ask for one, also when it changes", async () => {
    const { page, close } = await openInSystemColors("dark");
    const ground = () =>
      page.evaluate(() => getComputedStyle(document.getElementById("pane") as Element).backgroundColor);
    expect(await ground()).toBe("rgb(41, 41, 41)");
    await page.emulateMedia({ colorScheme: "light" });
    await expect.poll(ground).toBe("rgb(255, 255, 255)");
    await page.evaluate(() => window.harness.pane.setTheme("dark"));
    expect(await ground()).toBe("rgb(41, 41, 41)");
    await close();
  });
});

describe("the first words", () => {
  it("are skipped with a button, and come again from the menu", async () => {
    const { page, close } = await open({ book: "none" });
    await page.getByText("Skip").click();
    await page.getByText("Next: plan how many points to take").waitFor();
    await page.click("#pane-menu");
    await page.getByText("First words again").click();
    await page.getByText("Turn a tally into a stand estimate").waitFor();
    await close();
  });
});
