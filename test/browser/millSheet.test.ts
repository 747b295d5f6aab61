import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { demoContent } from "../../src/demo/demoWorkbook";
import { sawYield } from "../../src/functions/sawing";
import { board, log, mill } from "../../src/workbook/tables";
import { openPage, type OpenPage } from "./support/page";
import { put, read } from "./support/sheet";

/** Rows of the boards of 1 in on the sheet Mill. */
const INCH_BOARDS = "Mill!A13:A17";
const five = (value: number | string) => Array.from({ length: 5 }, () => [value]);

describe("the sheet Mill, on the page", () => {
  let opened: OpenPage;
  beforeAll(async () => {
    opened = await openPage();
  });
  afterAll(async () => {
    await opened.close();
  });

  const limits = demoContent.mill.map((row) => [row[mill.limit], row[mill.value] ?? ""]);
  const { kerf, realized } = demoContent.settings;

  /** The demo's log 1, 14 and 15 in at the small end, 16 in at the large end, 16 ft; its boards of 1 in at a thickness of their own. */
  const plannedFor = (thickness: number) => {
    const boards = demoContent.boards.map((row) => [
      row[board.sawn] === 1 ? thickness : row[board.sawn],
      row[board.width],
      row[board.price],
    ]);
    return sawYield([[14], [15]], [[16]], [[16]], boards, kerf, "Live" as never, limits)[1];
  };
  const expectPlannedFor = async (thickness: number) => {
    const { page } = opened;
    expect((await read(page, "Mill!C13"))[0]?.[0]).toBeCloseTo(thickness, 10);
    const [found] = await read(page, "Sawing!A22:F22");
    plannedFor(thickness)?.forEach((value, i) => expect(found?.[i], `column ${i + 1}`).toBeCloseTo(value as number, 8));
  };

  it("plans at the sawn thickness where no finished one is given", async () => {
    await expectPlannedFor(1);
  });

  // By hand: (F + P) / (1 - S/100) + V, as the comment of TARGETTHICKNESS has it from print.
  it("works the thickness at the saw out of the finished one, and every plan follows", async () => {
    const { page } = opened;
    await put(page, INCH_BOARDS, five(0.8125));
    await put(page, "Mill!B5:B7", [[5], [0.125], [0.0625]]);
    await expectPlannedFor(0.9375 / 0.95 + 0.0625);
    const before = (await read(page, "Logs!O11"))[0]?.[0];

    await put(page, "Mill!B5:B6", [[8], [0.1875]]);
    await expectPlannedFor(1 / 0.92 + 0.0625);
    expect((await read(page, "Logs!O11"))[0]?.[0]).not.toBe(before);

    await put(page, INCH_BOARDS, five(""));
    await expectPlannedFor(1);
    opened.expectQuiet();
  });

  // The sheet's own cells hand over both readings, a blank one where there is none, and the sweep.
  it("gives every log on the sheet Logs the board feet of its own plan, round, oval or bent", async () => {
    const boards = demoContent.boards.map((row) => [row[board.sawn], row[board.width], row[board.price]]);
    const lumber = await read(opened.page, "Logs!O10:O19");
    const lengths = await read(opened.page, "Logs!L10:L19");
    const kinds = new Set<string>();
    demoContent.logs.forEach((row, i) => {
      const [small, second, large, sweep] = [log.smallEnd, log.second, log.largeEnd, log.sweep].map(
        (heading) => (row[heading] as number | null) ?? undefined,
      );
      kinds.add(sweep ? "bent" : second ? "oval" : "round");
      const ends = [[small], ...(second === undefined ? [] : [[second]])];
      const length = [[lengths[i]?.[0]]];
      const [, plan] = sawYield(
        ends,
        [[large]],
        length,
        boards,
        kerf,
        "Live" as never,
        limits,
        sweep ?? 0,
      ) as number[][];
      expect(lumber[i]?.[0], `log ${i + 1}`).toBeCloseTo(((plan?.[1] ?? NaN) * realized) / 100, 8);
    });
    expect(kinds).toEqual(new Set(["round", "oval", "bent"]));
  });

  it("takes the sweep of the picked log along to the sheet Sawing", async () => {
    const { page } = opened;
    await put(page, "Sawing!B5", [[6]]);
    expect((await read(page, "Sawing!B11"))[0]?.[0]).toBe(1.5);
    expect(String((await read(page, "Sawing!B26"))[0]?.[0])).toMatch(/belly/);
    await put(page, "Sawing!B5", [[1]]);
    expect((await read(page, "Sawing!B13"))[0]?.[0]).toBe("Fits");
    expect((await read(page, "Sawing!B14"))[0]?.[0]).toBeCloseTo(14 / Math.SQRT2, 6); // the square in a circle
    const [most, share, settings, bestOf] = (await read(page, "Sawing!B15:B18")).map(([cell]) => cell);
    const [[, dollars] = []] = await read(page, "Sawing!AO6:AP6");
    const [[, , value] = []] = await read(page, "Sawing!A22:C22");
    expect((Number(dollars) * Number(share)) / 100).toBeCloseTo(Number(value), 6);
    expect([settings, bestOf]).toEqual([0.0625, expect.stringMatching(/^No other .* gives more value/)]);
    const [[, tally] = []] = await read(page, "Sawing!A22:B22");
    expect(Number(most)).toBeGreaterThan(Number(tally));
    await put(page, "Mill!K8", [[15]]);
    expect((await read(page, "Sawing!B13"))[0]?.[0]).toBe("Too thick by 2.14 in"); // 16 x 15 / 14 in across
    await put(page, "Mill!K8", [[26]]);
    expect((await read(page, "Sawing!B11"))[0]?.[0]).toBe("");
  });

  // By hand: boards of 1 in and kerfs of 0.09 in below 12 in; on sixteenths 1.09 in is 17.44 marks, so 18 of them.
  it("sets the head for a stack of equal boards, on the marks of the mill's scale where it has one", async () => {
    const { page } = opened;
    const settings = async () => (await read(page, "Sawing!I12:L22")).map((row) => row.filter((cell) => cell !== ""));
    const readings = (count: number, by: number) =>
      Array.from({ length: count }, (_, i) => expect.closeTo(12 - (i + 1) * by, 9) as number);
    const [, ...onMarks] = await settings();
    expect(onMarks.slice(0, 9).map(([, reading]) => reading)).toEqual(readings(9, 1.125));
    expect(onMarks.slice(0, 3).map(([, , scale, board]) => [scale, board])).toEqual([
      ["10 7/8", expect.closeTo(1.035, 9)],
      ["9 3/4", expect.closeTo(1.035, 9)],
      ["8 5/8", expect.closeTo(1.035, 9)],
    ]);
    expect((await read(page, "Sawing!J8"))[0]?.[0]).toBe(1.875);
    await put(page, "Sawing!J7", [[10]]);
    expect((await read(page, "Sawing!I12"))[0]?.[0]).toBe("#VALUE!"); // 0.75 in is below the blade's 1 in
    expect((await read(page, "Sawing!J8"))[0]?.[0]).toBe("");

    await put(page, "Mill!K13", [[""]]);
    const [headings, ...plain] = await settings();
    expect(headings).toEqual(["Cut", "Head reading in"]);
    expect(plain).toEqual(readings(10, 1.09).map((reading, i) => [i + 1, reading]));
    expect((await read(page, "Sawing!J8"))[0]?.[0]).toBeCloseTo(1.1, 9);
    await put(page, "Sawing!J5", [[""]]);
    expect((await read(page, "Sawing!I12"))[0]?.[0]).toBe("");
    await put(page, "Sawing!J5:J7", [[12], [1], [9]]);
    await put(page, "Mill!K13", [[0.0625]]);
  });

  it("says in the cell what is wrong with an allowance", async () => {
    const { page } = opened;
    await put(page, "Mill!A13", [[0.8125]]);
    await put(page, "Mill!B5", [[0.05]]);
    expect((await read(page, "Mill!C13"))[0]?.[0]).toBe("#VALUE!");
    await put(page, "Mill!B5", [[5]]);
    await put(page, "Mill!A13", [[""]]);
    await expectPlannedFor(1);
  });
});
