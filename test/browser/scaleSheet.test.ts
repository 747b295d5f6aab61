import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { openPage, type OpenPage } from "./support/page";
import { PaneOnPage } from "./support/pane";
import { put, read } from "./support/sheet";

/** Sheets that hold logs and boards, and cells enough to see all of them. */
const SHEETS = ["Logs", "Card", "Rules", "Working", "Boards", "Mill", "Sawing", "Sources and cautions"];

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
    expect((await read(opened.page, "Logs!K10:N10"))[0]).toEqual([14, 16, 100, 100]);
    expect((await read(opened.page, "Logs!K12:N12"))[0]).toEqual([16, 16, 144, 137]);
    expect(await cell("Logs!A2")).toBe("10 logs, 871 bf net by Doyle");
  });

  it("follow the conventions on top: the rule, then the rounding of diameters", async () => {
    const { page } = opened;
    await put(page, "Logs!C10", [[14.9]]);
    await put(page, "Logs!D10", [[""]]);
    expect(await cell("Logs!N10")).toBe(121); // 15 in
    await put(page, "Logs!D5", [["Always down"]]);
    expect(await cell("Logs!N10")).toBe(100);
    await put(page, "Logs!C5", [["International 1/4"]]);
    expect(await cell("Logs!N10")).toBe(135); // as the printed table has 14 in by 16 ft
    await put(page, "Logs!C5:D5", [["Doyle", "Half down"]]);
    await put(page, "Logs!C10:D10", [[14, 15]]);
    expect(await cell("Logs!A2")).toBe("10 logs, 871 bf net by Doyle");
  });

  const sumOf = (cells: readonly (readonly unknown[])[]) =>
    cells.flat().reduce<number>((sum, one) => sum + (typeof one === "number" ? one : 0), 0);

  it("add up by species, and side by side with other rules, to what the rows say, whatever the conventions", async () => {
    const { page } = opened;
    // rule, whole inches, rounding, longest length
    const practices = [
      ["Doyle", "Half down", "As the rule does", 8],
      ["Doyle", "None", "None", 8],
      ["International 1/4", "Always down", "As the rule does", 8],
      ["Vermont", "Half up", "As the rule does", ""],
      ["Vermont", "None", "None", 10],
    ];
    for (const practice of practices) {
      await put(page, "Logs!C5:F5", [practice]);
      const sum = sumOf(await read(page, "Logs!N10:N19"));
      const summary = await read(page, "Logs!U6:Y14");
      expect(summary.find(([species]) => species === "All species")?.[3], practice.join()).toBeCloseTo(sum, 6);
      const [heads, ...rows] = await read(page, "Rules!B41:O51");
      const column = heads?.indexOf(`${practice[0]} bf`) ?? -1;
      expect(sumOf(rows.map((row) => [row[column]])), practice.join()).toBeCloseTo(sum, 6);
    }
    await put(page, "Logs!C5:F5", [["Doyle", "Half down", "As the rule does", ""]]);
  });

  it("scale by the buyer's own card, once it is pasted on its sheet and named as the rule", async () => {
    const { page } = opened;
    expect(await cell("Card!A2")).toMatch(/^No card yet/);
    await put(page, "Card!B7:D7", [[8, 12, 16]]);
    await put(page, "Card!A8:D11", [
      [10, 20, 30, 40],
      [12, 30, 45, 60],
      [14, 50, 75, 100],
      [18, 90, 135, 180],
    ]);
    await put(page, "Logs!C5", [["Buyer's card"]]);
    expect(await cell("Card!A2")).toMatch(/12 figures.*The sheet Logs scales by this card/);
    expect(await cell("Logs!N10")).toBe(100); // 14 in by 16 ft
    expect(await cell("Logs!N12")).toBe(95); // 16 in lies half way to 18, so the lower row: 100, less 5 percent
    const sum = sumOf(await read(page, "Logs!N10:N19"));
    expect(await cell("Logs!A2")).toBe(`10 logs, ${sum} bf net by Buyer's card`);
    const summary = await read(page, "Logs!U6:Y14");
    expect(summary.find(([species]) => species === "All species")?.[3]).toBe(sum);
    expect(await errors()).toEqual([]);
    expect((await read(page, "Working!A7:A9")).flat().join()).toContain("card at");
    const pane = new PaneOnPage(page);
    await pane.go("Scale logs");
    await pane.untilItSays(new RegExp(`Sheet: ${sum} bf net by Buyer's card, 10 logs`));
    await put(page, "Logs!C5", [["Doyle"]]);
    await put(page, "Card!A7:D11", [
      ["Diameter in, by length in ft", "", "", ""],
      ["", "", "", ""],
      ["", "", "", ""],
      ["", "", "", ""],
      ["", "", "", ""],
    ]);
    expect(await cell("Logs!A2")).toBe("10 logs, 871 bf net by Doyle");
  });

  it("set down whichever function is chosen, step by step", async () => {
    const { page } = opened;
    const last = async () => {
      const steps = (await read(page, "Working!A7:D60")).filter(([step]) => step !== "" && step !== null);
      return steps.at(-1);
    };
    expect((await last())?.[2]).toBe(await cell("Logs!N10"));
    await put(page, "Working!B4", [["LOGCUBIC"]]);
    expect((await last())?.[3]).toBe("ft3");
    await put(page, "Working!B4", [["BOARDFEET"]]);
    expect((await last())?.slice(2)).toEqual([8, "bf"]); // 1 x 8 in x 12 ft
    await put(page, "Working!B4", [["TARGETTHICKNESS"]]);
    // (0.75 + 0.125) / (1 - 0.045) + 0.03
    expect((await last())?.[2]).toBeCloseTo(0.94623, 5);
    await put(page, "Working!B4", [["LUMBERWEIGHT"]]);
    expect((await last())?.[3]).toBe("lb");
    expect(await errors()).toEqual([]);
    await put(page, "Working!B4", [["LOGSCALE"]]);
  });

  it("ask about 0.15 typed for 15 percent, and about a thickness that became a date", async () => {
    const { page } = opened;
    await put(page, "Logs!H10", [[0.15]]);
    expect(await cell("Logs!S10")).toBe("A deduction under 1 percent: type 15 for 15 percent.");
    await put(page, "Logs!H10", [[""]]);
    await put(page, "Boards!D9", [[46_117]]);
    expect(await cell("Boards!K9")).toBe("This looks like a date or a slip: type 1.25, not 5/4.");
    await put(page, "Boards!D9", [[1]]);
    expect(await cell("Boards!K9")).toBe("");
  });

  it.each([
    ["a deduction of 150", "H11", 150, "The deduction is a percent from 0 to 100: type 15 for 15 percent."],
    ["a deduction in words", "H11", "some", "The deduction is a percent from 0 to 100: type 15 for 15 percent."],
    ["a small end in words", "C11", "thick", "The small end cannot be used: the cell Scaling diameter in says why."],
  ])("leave a log with %s out of the sums, and say so", async (_, at, bad, sentence) => {
    const { page } = opened;
    const before = await cell(`Logs!${at}`);
    const others = (await read(page, "Logs!N10:N19")).filter((_, row) => row !== 1);
    const byOtherRule = async () => {
      const column = (await read(page, "Rules!C42:C51")).map(([one]) => one);
      return { of: column.filter((_, row) => row !== 1), all: await cell("Rules!C39"), logs: await cell("Rules!C40") };
    };
    const untouched = await byOtherRule();

    await put(page, `Logs!${at}`, [[bad]]);
    const without = "without 1 log that cannot be scaled: see Check";
    expect(await cell("Logs!A2")).toBe(`9 logs, ${sumOf(others)} bf net by Doyle, ${without}`);
    expect(await cell("Logs!U5")).toBe(`By species, ${without}`);
    expect(await cell("Logs!S11")).toBe(sentence);
    const summary = await read(page, "Logs!U6:Y14");
    expect(summary.find(([species]) => species === "All species")?.slice(1, 4)).toEqual([
      9,
      expect.anything(),
      sumOf(others),
    ]);
    const now = await byOtherRule();
    expect(now).toEqual({ of: untouched.of, all: sumOf(untouched.of.map((one) => [one])), logs: 9 });
    const elsewhere = (await errors()).filter((one) => !one.startsWith("Logs row 11,"));
    expect(elsewhere.filter((one) => !one.startsWith("Rules row 43, column 2:"))).toEqual([]);

    await put(page, `Logs!${at}`, [[before]]);
    expect(await cell("Logs!A2")).toBe("10 logs, 871 bf net by Doyle");
    expect(await errors()).toEqual([]);
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
