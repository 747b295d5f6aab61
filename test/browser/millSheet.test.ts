import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { demoContent } from "../../src/demo/demoWorkbook";
import { sawYield } from "../../src/functions/sawing";
import { board, mill } from "../../src/workbook/tables";
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

  /** The demo's log 1, 14 and 15 in at the small end, 16 in at the large end, 16 ft; its boards of 1 in at a thickness of their own. */
  const plannedFor = (thickness: number) => {
    const boards = demoContent.boards.map((row) => [
      row[board.sawn] === 1 ? thickness : row[board.sawn],
      row[board.width],
      row[board.price],
    ]);
    const limits = demoContent.mill.map((row) => [row[mill.limit], row[mill.value] ?? ""]);
    const kerf = demoContent.settings.kerf;
    return sawYield([[14], [15]], [[16]], [[16]], boards, kerf, "Live" as never, limits)[1];
  };
  const expectPlannedFor = async (thickness: number) => {
    const { page } = opened;
    expect((await read(page, "Mill!C13"))[0]?.[0]).toBeCloseTo(thickness, 10);
    const [found] = await read(page, "Sawing!A17:F17");
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
    const before = (await read(page, "Logs!N11"))[0]?.[0];

    await put(page, "Mill!B5:B6", [[8], [0.1875]]);
    await expectPlannedFor(1 / 0.92 + 0.0625);
    expect((await read(page, "Logs!N11"))[0]?.[0]).not.toBe(before);

    await put(page, INCH_BOARDS, five(""));
    await expectPlannedFor(1);
    opened.expectQuiet();
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
