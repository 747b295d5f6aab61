import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { openPage, type OpenPage } from "./support/page";
import { PaneOnPage } from "./support/pane";
import { put, read } from "./support/sheet";

describe("the cut list and all logs, on the page", () => {
  let opened: OpenPage;
  let pane: PaneOnPage;
  beforeAll(async () => {
    opened = await openPage();
    pane = new PaneOnPage(opened.page);
  });
  afterAll(async () => {
    await opened.close();
  });
  const axe = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");
  const barriers = async (): Promise<readonly string[]> => [
    ...(await barriersIn("light")),
    ...(await barriersIn("dark")),
  ];
  const barriersIn = async (colorScheme: "light" | "dark"): Promise<readonly string[]> => {
    const frame = opened.page.frames().find((one) => one.url().includes("pane.html"));
    await frame?.evaluate(axe);
    await opened.page.emulateMedia({ colorScheme });
    await opened.page.waitForTimeout(1000); // a button that comes into use again changes its colour by and by
    const ground = await frame?.evaluate(
      () => getComputedStyle(document.getElementById("pane") as Element).backgroundColor,
    );
    expect(ground).toBe(colorScheme === "dark" ? "rgb(41, 41, 41)" : "rgb(255, 255, 255)");
    const found = await frame?.evaluate(() => window.axe.run({ resultTypes: ["violations"] }));
    return found?.violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join(" ")}`) ?? ["no pane"];
  };
  const shown = async (sheet: string): Promise<string> =>
    (await read(opened.page, `${sheet}!A1:I60`))
      .flat()
      .filter((value) => value !== "")
      .join(" | ");

  it("finds in a worker which logs give the shed, what is missing and what logs would give it", async () => {
    await pane.go("Cut list");
    await pane.untilItSays(/97 pieces on 8 lines, 933 bf, and 10 % to spare/);
    await pane.button("Find the logs").click();
    const words = await pane.untilItSays(/From the logs in the yard .* Still missing/);
    expect(words).toMatch(/[\d,]+ of 1,0\d\d bf, from 7 logs/);
    expect(words).toMatch(/No choice of these logs gives more than [\d,]+ bf of it: within [\d.]+ % of the best/);
    expect(words).toMatch(/Still missing: .*of Ridge beam/);
    expect(words).toMatch(
      /of Ridge beam: 1 log of 10 in at the small end, 30 ft long\. Your mill cannot take such a log: too long by 14 ft/,
    );
    opened.expectQuiet();
  });

  it("tells how many standing trees it takes, with the margin", async () => {
    await pane.button("How many trees?").click();
    const words = await pane.untilItSays(/From the standing trees About/);
    expect(words).toMatch(/About \d[\d.]* ± [\d.]+ \(\d+ %\) trees, taken as they stand/);
    expect(words).toMatch(/No tree that may be felled gives: Ridge beam/);
    expect(await barriers()).toEqual([]);
    opened.expectQuiet();
  });

  it("writes the plan to a sheet as values, and the sheet says when the list has changed since", async () => {
    await pane.button("Write to the sheet Cut plan").click();
    await pane.untilItSays(/The plan stands on the sheet Cut plan/);
    const before = await shown("Cut plan");
    expect(before).toMatch(/Values, not formulas: worked out in the pane from 7 logs and 8 lines/);
    expect(before).toMatch(/Which log gives which pieces \| .* of Rafter/);
    expect(before).toMatch(/Still missing \| Piece \| Count \|/);
    expect(before).toMatch(/graded, stamped lumber/);
    expect(before).not.toMatch(/changed since|#/);
    await put(opened.page, "Cut list!C14", [[4.5]]);
    await expect.poll(() => shown("Cut plan"), { timeout: 60_000 }).toMatch(/have changed since/);
    await pane.untilItSays(/The workbook has changed since/);
    opened.expectQuiet();
  });

  it("plans all logs in a worker and sets what they yield beside the scale of each rule", async () => {
    await pane.go("All my logs");
    await pane.button("Plan all logs").click();
    const words = await pane.untilItSays(/bf of boards, \d+ % of the wood, \d+ % over the scale by Doyle/);
    expect(words).toMatch(/10 logs with both ends/);
    expect(await barriers()).toEqual([]);
    await pane.button("Write to the sheet All logs").click();
    await pane.untilItSays(/The plans stand on the sheet All logs/);
    const sheet = await shown("All logs");
    expect(sheet).toMatch(/What becomes of the wood, and the scale of each rule \| .*Overrun pct \| Boards/);
    expect(sheet).toMatch(/International 1\/4/);
    expect(sheet).not.toMatch(/changed since|#/);
    await put(opened.page, "Mill!B13", [[1.125]]);
    await expect
      .poll(() => shown("All logs"), { timeout: 60_000 })
      .toMatch(/the boards or the kerf have changed since/);
    await put(opened.page, "Mill!B13", [[1]]);
    await expect.poll(() => shown("All logs"), { timeout: 60_000 }).not.toMatch(/changed since/);
    opened.expectQuiet();
  });

  it("stops when it is told to, and keeps the best so far", async () => {
    await pane.go("Cut list");
    await pane.button("Find the logs").click();
    await pane.untilItSays(/kinds of logs tried: \d+ of 7 So far: [\d,]+ of/);
    await pane.button("Stop and keep the best so far").click();
    const words = await pane.untilItSays(/Stopped\. The best so far is kept/);
    expect(words).toMatch(/of [\d,]+ bf, from \d logs.* The search was stopped before its end\./);
    opened.expectQuiet();
  });
});
