import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import type { AxeResults } from "axe-core";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { viewTitles, type ViewName } from "../../src/pane/views/viewNames";

import type { Harness } from "./pane/harness";
import { startPaneServer, type PaneServer } from "./pane/paneServer";
import { launchBrowser } from "./support/page";

const views = Object.keys(viewTitles) as ViewName[];
const axe = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");

let server: PaneServer;
let browser: Browser;
beforeAll(async () => {
  [server, browser] = await Promise.all([startPaneServer(), launchBrowser()]);
});
afterAll(async () => {
  await browser.close();
  server.stop();
});

interface Looks {
  readonly book?: "demo" | "practice" | "none";
  readonly theme?: "light" | "dark";
  readonly width?: number;
}

/** Opens the pane in a window of its own; a complaint of the page fails the test that asks for none. */
async function open({ book = "practice", theme = "light", width = 320 }: Looks = {}) {
  const context = await browser.newContext({
    viewport: { width, height: 640 },
    reducedMotion: "reduce",
  });
  const page = await context.newPage();
  const complaints: string[] = [];
  page.on("pageerror", (error) => complaints.push(error.message));
  page.on("console", (line) => line.type() === "error" && complaints.push(line.text()));
  await page.goto(`${server.address}?book=${book}&theme=${theme}`);
  await page.waitForSelector("html[data-ready]");
  return { page, complaints, close: () => context.close() };
}

/** Shows a view, filled the way it is when someone works with it. */
async function show(page: Page, view: ViewName): Promise<void> {
  await page.evaluate((name) => window.harness.pane.show(name), view);
  await page.waitForFunction((title) => document.querySelector("h1")?.textContent === title, titleOf(view));
  await page.waitForFunction(() => !document.querySelector(".view .waiting"));
  if (view === "tally" && (await page.locator("#tally-line").count()) > 0)
    await page.fill("#tally-line", "ro 143 2.5 x2 /by the fence");
  if (view === "logs" && (await page.locator("#logs-line").count()) > 0)
    await page.fill("#logs-line", "wo 14.6 16.4 18 d0.15 /seam");
  if (view === "boards" && (await page.locator("#boards-line").count()) > 0)
    await page.fill("#boards-line", "5/4 6 12 x4 /clear");
  if (view === "rules") await page.waitForSelector(".drawing svg");
  if (view === "paste")
    await page.fill("#paste-text", "Point,Sp,DBH,Logs\n1,ro,14.3,2.5\n1,sm,twelve,1\n3,,,\n9,ro,143,1");
  if (view === "check" && (await page.getByText("Keep as is").count()) > 0)
    await page.getByText("Keep as is").first().click();
  if (view === "cut" && (await page.locator(".job").count()) > 0) await page.waitForSelector(".empty, .side-by-side");
  if (view === "cut" && (await page.locator(".drawing").count()) > 0) await page.waitForSelector(".drawing svg");
  if (view === "stand" && (await page.locator(".drawing").count()) > 0) await page.waitForSelector(".drawing svg");
}

const titleOf = (view: ViewName) => (view === "home" ? "Your cruise" : viewTitles[view]);

const treeRows = (page: Page) => page.evaluate(() => window.harness.host.book.tables.get("Trees")?.rows ?? []);

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

describe("by keyboard alone", () => {
  it("a tally goes from a typed line to a saved row, and back", async () => {
    const { page, complaints, close } = await open();
    await page.keyboard.press("Tab");
    await page.evaluate(() => window.harness.pane.show("tally"));
    await page.waitForFunction(() => document.activeElement?.id === "tally-line");
    const before = (await treeRows(page)).length;

    await page.keyboard.type("ro 14.3 2.5");
    expect(await page.textContent("#tally-echo")).toContain("= red oak, 14.3 in, 2.5 logs");
    await page.keyboard.press("Enter");
    await page.keyboard.type("16");
    await page.keyboard.press("Enter");
    await expect.poll(async () => (await treeRows(page)).length).toBe(before + 2);
    expect((await treeRows(page)).slice(-2)).toMatchObject([
      { Plot: 9, Species: "ro", "DBH in": 14.3, "Logs 16 ft": 2.5, Count: 1 },
      { Plot: 9, Species: "ro", "DBH in": 16, "Logs 16 ft": null, Count: 1 },
    ]);
    expect(await page.evaluate(() => document.activeElement?.id)).toBe("tally-line");

    await page.keyboard.press("Alt+u");
    expect(await page.inputValue("#tally-line")).toBe("ro 16");
    await expect.poll(async () => (await treeRows(page)).length).toBe(before + 1);
    await page.keyboard.press("Escape");
    expect(await page.inputValue("#tally-line")).toBe("");

    await page.keyboard.press("ArrowUp");
    expect(await page.inputValue("#tally-line")).toBe("ro 14.3 2.5");
    await page.keyboard.press("Escape");
    await page.keyboard.press("Alt+f");
    await expect.poll(() => page.inputValue("#tally-point")).toBe("10");
    await page.keyboard.press("Escape");
    await expect.poll(() => page.textContent("h1")).toBe("Your cruise");
    expect(complaints).toEqual([]);
    await close();
  });

  it("every view can be reached and left", async () => {
    const { page, close } = await open();
    for (const [place, view] of views.entries()) {
      await page.focus("#pane-menu");
      await page.keyboard.press("Enter");
      for (let step = 0; step <= place; step += 1) await page.keyboard.press("Tab");
      await page.keyboard.press("Enter");
      await expect.poll(() => page.textContent("h1")).toBe(titleOf(view));
    }
    await close();
  });

  it("what has the focus can be seen", async () => {
    const { page, close } = await open();
    await show(page, "check");
    for (let step = 0; step < 12; step += 1) {
      await page.keyboard.press("Tab");
      const unseen = await page.evaluate(() => {
        const focused = document.activeElement ?? document.body;
        const { outlineWidth, outlineStyle, boxShadow } = getComputedStyle(focused);
        const ringed = (outlineStyle !== "none" && Number.parseFloat(outlineWidth) >= 2) || boxShadow !== "none";
        return ringed || focused === document.body ? "" : focused.outerHTML;
      });
      expect(unseen).toBe("");
    }
    await close();
  });
});

describe("a scale sheet", () => {
  const logRows = (page: Page) => page.evaluate(() => window.harness.host.book.tables.get("Logs")?.rows ?? []);

  it("goes from a typed line to a saved log by keyboard alone, with its scale by the buyer's rule before it is saved", async () => {
    const { page, complaints, close } = await open({ book: "demo" });
    await page.evaluate(() => window.harness.pane.show("logs"));
    await page.waitForFunction(() => document.activeElement?.id === "logs-line");
    const before = (await logRows(page)).length;
    await page.keyboard.type("wo 14 16.4 d15");
    // Doyle by hand: (14 - 4)^2 = 100 bf for 16 ft, 85 after 15 percent.
    expect(await page.textContent("#logs-echo")).toContain("= log 11, white oak, 14 in, 16.4 ft, 15 % off");
    expect(await page.textContent("#logs-echo")).toContain("14 in, 16 ft: 100 bf, net 85 by Doyle");
    await page.keyboard.press("Enter");
    await expect.poll(async () => (await logRows(page)).length).toBe(before + 1);
    expect((await logRows(page)).at(-1)).toMatchObject({
      Log: 11,
      Species: "wo",
      "Deduction pct": 15,
    });
    expect(await page.evaluate(() => document.activeElement?.id)).toBe("logs-line");
    await page.keyboard.press("Alt+u");
    expect(await page.inputValue("#logs-line")).toBe("wo 14 16.4 d15");
    await expect.poll(async () => (await logRows(page)).length).toBe(before);
    expect(complaints).toEqual([]);
    await close();
  });

  it("asks about 0.15 typed for 15 percent, and takes it all the same", async () => {
    const { page, close } = await open({ book: "demo" });
    await show(page, "logs");
    expect(await page.textContent("#logs-echo")).toContain("Deduction 0.15 %, or 15 %?");
    await page.keyboard.press("Enter");
    await page.getByText("A deduction under 1 percent: type 15 for 15 percent.").waitFor();
    await close();
  });

  it("changes the rule of the whole sheet, and its total with it", async () => {
    const { page, close } = await open({ book: "demo" });
    await show(page, "logs");
    const total = () => page.textContent(".answer");
    const byDoyle = await total();
    expect(byDoyle).toContain("by Doyle");
    await page.selectOption("#logs-rule", "International 1/4");
    await expect.poll(total).toContain("by International 1/4");
    expect(await page.evaluate(() => window.harness.host.book.names.get("Scale_Rule"))).toBe("International 1/4");
    expect(await page.textContent(".totals .chosen")).toContain("International 1/4 (this sheet)");
    await close();
  });
});

describe("the log rules", () => {
  it("are drawn when they are ticked, and have the same figures in a table", async () => {
    const { page, complaints, close } = await open({ book: "none" });
    await show(page, "rules");
    const lines = () => page.locator(".drawing svg g[aria-label=line]").count();
    const drawn = await lines();
    await page.uncheck("#rule-doyle");
    await expect.poll(lines).toBe(drawn - 1);
    await page.check("#rule-doyle");
    await page.fill("#rules-length", "8");
    await page.getByText("Read as a table").click();
    // Doyle by hand: (16 - 4)^2 x 8 / 16 = 72 bf.
    expect(await page.textContent("table tbody tr:nth-child(9) td")).toBe("72");
    await page.fill("#rules-length", "100");
    await page.getByText("Type a length from 4 to 40 ft.").waitFor();
    expect(complaints).toEqual([]);
    await close();
  });
});

describe("a tally of boards", () => {
  it("goes from a typed line to a saved row, five quarters and all", async () => {
    const { page, complaints, close } = await open({ book: "demo" });
    await page.evaluate(() => window.harness.pane.show("boards"));
    await page.waitForFunction(() => document.activeElement?.id === "boards-line");
    await page.selectOption("#boards-log", "3");
    await page.waitForFunction(() => document.activeElement?.id === "boards-line");
    await page.keyboard.type("5/4 6 12 x4");
    // By hand: 1.25 x 6 x 12 / 12 x 4 = 30 bf.
    expect(await page.textContent("#boards-echo")).toContain("= 4 boards 1.25 x 6 in, 12 ft, from log 3");
    expect(await page.textContent("#boards-echo")).toContain("30.0 bf as given");
    await page.keyboard.press("Enter");
    await expect
      .poll(() => page.evaluate(() => window.harness.host.book.tables.get("Boards")?.rows.at(-1)))
      .toMatchObject({
        Log: 3,
        Species: "wo",
        "Thickness in": 1.25,
        "Width in": 6,
        "Length ft": 12,
        Pieces: 4,
      });
    expect(complaints).toEqual([]);
    await close();
  });
});

describe("sawing a log", () => {
  it("goes through the cuts by keyboard, marks the boards they free, and has them in a list", async () => {
    const { page, complaints, close } = await open({ book: "demo" });
    await show(page, "saw");
    await page.waitForSelector(".end-view");
    const said = async () => (await page.textContent(".cut-said"))?.replace(/\s+/g, " ").trim() ?? "";
    const marked = () => page.locator(".end-view .marked text").allTextContents();
    // The first cut of any pattern opens the log: it frees a slab and no board.
    expect(await said()).toMatch(/^1 of \d+\. .*Head reading [\d.]+ in\. Frees slab\.$/);
    expect(await marked()).toEqual([]);

    await page.focus("#saw-cuts");
    await page.keyboard.press("ArrowRight");
    expect(await said()).toMatch(/^2 of \d+\./);
    while ((await marked()).length === 0) await page.keyboard.press("ArrowDown");
    expect(await marked()).toContain("1");
    expect(await said()).toMatch(/Frees .*\(boards? 1/);
    await page.keyboard.press("Home");
    expect(await said()).toMatch(/^1 of/);
    await page.keyboard.press("ArrowLeft");
    expect(await said()).toMatch(/^1 of/);
    await page.getByRole("button", { name: "Next cut" }).click();
    expect(await said()).toMatch(/^2 of/);

    await page.getByText("Read as a list").focus();
    await page.keyboard.press("ArrowRight"); // outside the cuts a key is not theirs
    expect(await said()).toMatch(/^2 of/);

    await page.getByText("Read as a list").click();
    const listed = await page.locator(".cut-list li").count();
    expect(await said()).toContain(` of ${listed}.`);
    expect(await page.locator(".end-view .board").count()).toBeGreaterThan(0);
    expect(complaints).toEqual([]);
    await close();
  });

  it("writes the log that is chosen to its cell, and starts from its first cut", async () => {
    const { page, close } = await open({ book: "demo" });
    await show(page, "saw");
    await page.focus("#saw-cuts");
    await page.keyboard.press("End");
    await page.selectOption("#saw-log", "3");
    await expect.poll(() => page.evaluate(() => window.harness.host.book.names.get("Picked_Log"))).toBe(3);
    await expect.poll(() => page.getAttribute(".end-view", "aria-label")).toContain("End view of log 3");
    expect(await page.textContent(".cut-said")).toMatch(/^\s*1 of/);
    await close();
  });

  it("tells the sheet's error instead of a plan when there is none", async () => {
    const { page, close } = await open({ book: "demo" });
    await page.evaluate(() => window.harness.host.writeNames({ Kerf: -1 }));
    await page.evaluate(() => window.harness.pane.refresh());
    await show(page, "saw");
    await page.getByText("The sheet Sawing shows #VALUE!").waitFor();
    expect(await page.locator("#saw-cuts").count()).toBe(0);
    await close();
  });
});

describe("the theme", () => {
  it("follows the system when the host does not ask for one, also when it changes", async () => {
    const context = await browser.newContext({ colorScheme: "dark" });
    const page = await context.newPage();
    await page.goto(`${server.address}?book=none`);
    await page.waitForSelector("html[data-ready]");
    const ground = () =>
      page.evaluate(() => getComputedStyle(document.getElementById("pane") as Element).backgroundColor);
    expect(await ground()).toBe("rgb(41, 41, 41)");
    await page.emulateMedia({ colorScheme: "light" });
    await expect.poll(ground).toBe("rgb(255, 255, 255)");
    await page.evaluate(() => window.harness.pane.setTheme("dark"));
    expect(await ground()).toBe("rgb(41, 41, 41)");
    await context.close();
  });
});

describe("a copy to share", () => {
  it("is made and handed over, and names the cells that would show an error for ever", async () => {
    const { page, close } = await open({ book: "demo" });
    await show(page, "share");
    await page.getByText("Make the copy").click();
    await page.getByText("sheets,").waitFor();
    expect(await page.evaluate(() => window.harness.host.opened.map(({ fileName }) => fileName))).toEqual([
      expect.stringMatching(/ - values only\.xlsx$/),
    ]);

    await page.evaluate(() =>
      Object.assign(window.harness.host.book.tables.get("Logs")?.rows[0] ?? {}, { Note: "#REF!" }),
    );
    await page.getByText("Make the copy").click();
    await page.getByText("shows #REF!").waitFor();
    expect(await page.evaluate(() => window.harness.host.opened.length)).toBe(1);
    await page.getByText("Make it all the same").click();
    await expect.poll(() => page.evaluate(() => window.harness.host.opened.length)).toBe(2);
    await close();
  });
});

describe("when the workbook refuses", () => {
  it("a line stays, the reason is told, and it is written once one tries again", async () => {
    const { page, close } = await open();
    await show(page, "tally");
    const before = (await treeRows(page)).length;
    await page.evaluate(() =>
      window.harness.host.refuse("Excel is busy with a cell. Press Esc in the sheet, then try again."),
    );
    await page.fill("#tally-line", "ro 14.3 2.5");
    await page.keyboard.press("Enter");
    await page.getByText("Excel is busy with a cell.").first().waitFor();
    expect(await page.textContent(".lines li")).toContain("red oak, 14.3 in, 2.5 logs");
    await page.fill("#tally-line", "wo 1");

    await page.reload();
    await page.waitForSelector("html[data-ready]");
    await page.evaluate(() => window.harness.pane.show("tally"));
    await page.getByText("may not have reached the workbook").waitFor();
    expect(await page.inputValue("#tally-line")).toBe("wo 1");
    await page.getByText("Try again").click();
    await expect.poll(async () => (await treeRows(page)).length).toBe(before + 1);
    await close();
  });

  it("a missing table is told by name", async () => {
    const { page, close } = await open();
    await page.evaluate(() => window.harness.host.book.tables.delete("Trees"));
    await page.evaluate(() => window.harness.pane.refresh());
    expect(await page.textContent(".message-problem")).toContain("The table named Trees is missing.");
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

describe("the echo", () => {
  it("stands below the line within a tenth of a second, and is announced politely", async () => {
    const { page, close } = await open();
    await show(page, "tally");
    await page.fill("#tally-line", "");
    const took = await page.evaluate(async () => {
      const line = document.querySelector("#tally-line") as HTMLInputElement;
      const echo = document.querySelector("#tally-echo") as HTMLElement;
      const began = performance.now();
      line.value = "yp 22 3";
      line.dispatchEvent(new Event("input", { bubbles: true }));
      await new Promise((resolve) => requestAnimationFrame(resolve));
      return {
        after: performance.now() - began,
        said: echo.textContent,
        live: echo.getAttribute("aria-live"),
      };
    });
    expect(took.said).toContain("yellow-poplar, 22 in, 3 logs");
    expect(took.live).toBe("polite");
    expect(took.after).toBeLessThan(100);
    await close();
  });
});

describe("the checks", () => {
  it("are mended by their buttons", async () => {
    const { page, close } = await open();
    await show(page, "check");
    await page.getByText("Use 14.3").click();
    await page.getByText("Use 14.3: done.").waitFor();
    expect((await treeRows(page))[3]).toMatchObject({ "DBH in": 14.3 });
    await page.getByText("Not visited yet", { exact: true }).click();
    await expect.poll(() => page.getByText("Not visited yet", { exact: true }).count()).toBe(0);
    await page.getByRole("button", { name: "Go to Point 3" }).click();
    await expect.poll(() => page.evaluate(() => window.harness.host.selected.length)).toBe(1);
    await close();
  });

  it("are kept with a reason, which is written beside the row", async () => {
    const { page, close } = await open();
    await show(page, "check");
    await page.fill("#check-reason", "an old wolf tree");
    await page.getByText("Keep it", { exact: true }).click();
    await expect.poll(async () => (await treeRows(page))[3]?.["Accepted because"]).toBe("an old wolf tree");
    await close();
  });
});

describe("a pasted tally", () => {
  it("is added to the cruise, with its line of result", async () => {
    const { page, close } = await open();
    await show(page, "paste");
    const before = (await treeRows(page)).length;
    expect(await page.textContent(".notes")).toContain('"twelve"');
    await page.getByText("Add to this cruise").click();
    await page.getByText("2 lines of trees on 3 points taken in. 1 line was left out.").first().waitFor();
    expect(await treeRows(page)).toHaveLength(before + 2);
    await close();
  });

  it("asks before it replaces a workbook, by the names of its sheets, and keeps it when told to", async () => {
    const { page, close } = await open();
    await show(page, "paste");
    const before = (await treeRows(page)).length;
    await page.getByLabel("Start a new cruise with them").check();
    await page.fill("#paste-acres", "20");
    await page.getByText("Start a cruise with it").click();
    await page.getByText("This workbook already has the sheets").waitFor();
    expect(await page.textContent("#pane-question")).toContain("Trees");
    await page.getByText("Keep them").click();
    expect(await treeRows(page)).toHaveLength(before);
    await close();
  });
});

describe("an empty workbook", () => {
  it("gets a cruise from the plan", async () => {
    const { page, close } = await open({ book: "none" });
    await page.getByText("Start a cruise").click();
    await page.fill("#plan-stand", "North stand");
    await page.fill("#plan-acres", "32");
    await page.getByText("Build workbook").click();
    await expect.poll(() => page.textContent("h1")).toBe("Tally trees");
    expect(await page.inputValue("#tally-point")).toBe("1");
    expect(await page.evaluate(() => window.harness.host.book.tables.get("Plots")?.rows.length)).toBe(22);
    expect(await page.evaluate(() => window.harness.host.book.names.get("Acres"))).toBe(32);
    await close();
  });

  it("gets the demo, whose figures are called invented", async () => {
    const { page, close } = await open({ book: "none" });
    await page.getByText("Open the demo").click();
    await page.getByText("14 of 14 points").waitFor();
    expect(await page.textContent(".job")).toContain("invented");
    await close();
  });
});

declare global {
  interface Window {
    readonly harness: Harness;
    readonly axe: { run(options: object): Promise<AxeResults> };
  }
}
