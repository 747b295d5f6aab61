import { describe, expect, it } from "vitest";
import { sizesFrom } from "../../../src/pane/solver/readSizes";
import { board } from "../../../src/workbook/tables";

const good = { [board.sawn]: 1, [board.thickness]: 1, [board.width]: 6 };

describe("the boards that are wanted", () => {
  it("go by the thickness that the sheet has worked out, else by the sawn one", () => {
    const finished = { [board.finished]: 0.8125, [board.sawn]: 1, [board.thickness]: 1.0493, [board.width]: 6 };
    const planned = { [board.sawn]: 2, [board.width]: "4 to 8 by 2" };
    expect(sizesFrom([finished, planned])).toEqual(
      [
        [1.0493, 6],
        [2, 4],
        [2, 6],
        [2, 8],
      ].map(([thickness, width]) => ({ thickness, width, product: "Board" })),
    );
  });

  it("may have blank lines between them, and zeros for blanks", () => {
    const blank = { [board.sawn]: null, [board.thickness]: "", [board.width]: null };
    expect(sizesFrom([blank, good, {}])).toHaveLength(1);
  });

  it.each([
    [{ [board.width]: 6 }, "Line 2 of the boards on the sheet Mill has no thickness that can be read."],
    [{ ...good, [board.width]: null }, "Line 2 of the boards on the sheet Mill has no width that can be read."],
    [{ ...good, [board.width]: "wide" }, "Line 2 of the boards on the sheet Mill has no width that can be read."],
    [{ ...good, [board.thickness]: "5/4", [board.sawn]: "5/4" }, "Line 2 of the boards on the sheet Mill has no thick"],
    [
      { [board.finished]: 0.8125, [board.sawn]: 1, [board.thickness]: "#VALUE!", [board.width]: 6 },
      "Line 2 of the boards on the sheet Mill has no thickness that can be read.",
    ],
  ])("are not planned without the line %j, which is told", (row, told) => {
    const said = sizesFrom([good, row, good]);
    expect(typeof said).toBe("string");
    expect(said).toContain(told);
  });

  it("are asked for where there are none", () => {
    expect(sizesFrom([{}])).toMatch(/^There are no boards to saw: type them on the sheet Mill/);
  });
});
