import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { openPage, type OpenPage } from "./support/page";
import { PaneOnPage } from "./support/pane";
import { put, read } from "./support/sheet";

/** Sheets that hold logs and boards, and cells enough to see all of them. */
const SHEETS = ["Logs", "Rules", "Working", "Boards", "Sawing", "Sources and cautions"];

describe("the scale sheet and the boards, on the page", () => {
  let opened: OpenPage;
  beforeAll(async () => {
    opened = await openPage();
  });
  afterAll(async () => {
    await opened.close();
  });

  const cell = async (address: string): Promise<unknown> => (await read(opened.page, address))[0]?.[0];
  const errors = async (): Promise<string[]> => {
    const found: string[] = [];
    for (const sheet of SHEETS) {
      (await read(opened.page, `${sheet}!A1:AB220`)).forEach((row, r) =>
        row.forEach((value, c) => {
          if (String(value).startsWith("#")) found.push(`${sheet} row ${r + 1}, column ${c + 1}: ${value}`);
        }),
      );
    }
    return found;
  };

  it("have no error cell in the demo", async () => {
    expect(await errors()).toEqual([]);
  });

  // Doyle by hand: 100 for 14 in by 16 ft; log 3 is the mean of 15.6 and 16.8 in, 16.2, so 16 in: 144, less 5 percent 137.
  it("scale the demo's logs by the buyer's rule, after his rounding and trim", async () => {
    expect((await read(opened.page, "Logs!J10:M10"))[0]).toEqual([14, 16, 100, 100]);
    expect((await read(opened.page, "Logs!J12:M12"))[0]).toEqual([16, 16, 144, 137]);
    expect(await cell("Logs!A2")).toBe("10 logs, 871 bf net by Doyle");
  });

  it("follow the conventions on top: the rule, then the rounding of diameters", async () => {
    const { page } = opened;
    await put(page, "Logs!C10", [[14.9]]);
    await put(page, "Logs!D10", [[""]]);
    expect(await cell("Logs!M10")).toBe(121); // 15 in
    await put(page, "Logs!D5", [["Always down"]]);
    expect(await cell("Logs!M10")).toBe(100);
    await put(page, "Logs!C5", [["International 1/4"]]);
    expect(await cell("Logs!M10")).toBe(135); // as the printed table has 14 in by 16 ft
    await put(page, "Logs!C5:D5", [["Doyle", "Half down"]]);
    await put(page, "Logs!C10:D10", [[14, 15]]);
    expect(await cell("Logs!A2")).toBe("10 logs, 871 bf net by Doyle");
  });

  it("say so where the summary knows fewer conventions than the table", async () => {
    const { page } = opened;
    expect(await cell("Logs!T3")).toBe("");
    await put(page, "Logs!F5", [[8]]);
    expect(await cell("Logs!T3")).toMatch(/^Check: this summary .* The table sums to \d+ bf net\.$/);
    await put(page, "Logs!F5", [[""]]);
    expect(await cell("Logs!T3")).toBe("");
  });

  it("ask about 0.15 typed for 15 percent, and about a thickness that became a date", async () => {
    const { page } = opened;
    await put(page, "Logs!G10", [[0.15]]);
    expect(await cell("Logs!R10")).toBe("A deduction under 1 percent: type 15 for 15 percent.");
    await put(page, "Logs!G10", [[""]]);
    await put(page, "Boards!D9", [[46_117]]);
    expect(await cell("Boards!K9")).toBe("This looks like a date or a slip: type 1.25, not 5/4.");
    await put(page, "Boards!D9", [[1]]);
    expect(await cell("Boards!K9")).toBe("");
  });

  it("tally the boards by the measure and the group that are named", async () => {
    const { page } = opened;
    expect((await read(page, "Boards!M8:O8"))[0]).toEqual(["Size in x in x ft", "Pieces", "Board feet, as given"]);
    await put(page, "Boards!A5", [["Hardwood"]]);
    await put(page, "Boards!D5", [["Stack"]]);
    expect((await read(page, "Boards!M8:M11")).flat()).toEqual(["Group", "A", "B", "All boards"]);
    expect(await cell("Boards!O8")).toBe("Board feet, hardwood");
    await put(page, "Boards!A5", [["As given"]]);
    await put(page, "Boards!D5", [["Size"]]);
  });

  it("have no error cell before there is a log or a board", async () => {
    const pane = new PaneOnPage(opened.page);
    await pane.go("Plan the cruise");
    await pane.field("Stand").fill("Own stand");
    await pane
      .field(/^Acres/)
      .first()
      .fill("20");
    await pane.button("Build workbook").click();
    await pane.answer("Replace them");
    await pane.untilItSays(/Tally trees/);
    expect(await cell("Logs!A2")).toBe("0 logs, 0 bf net by International 1/4");
    expect(await errors()).toEqual([]);
  });

  it("asks no other machine for anything and complains of nothing", () => {
    opened.expectQuiet();
  });
});
