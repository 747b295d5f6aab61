import { describe, expect, it } from "vitest";
import { viewTitles, type ViewName } from "../../src/pane/views/viewNames";
import { open, servePane, show, titleOf, treeRows } from "./pane/openPane";

const views = Object.keys(viewTitles) as ViewName[];

servePane();

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
