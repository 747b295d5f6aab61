import { describe, expect, it } from "vitest";
import { firstTrial, readTrial } from "../../../src/pane/sawing/trial";
import { board } from "../../../src/workbook/tables";

const typed = { ...firstTrial, thickness: "1.5", width: "8", price: "950" };

describe("a product that is to be tried", () => {
  it("is a line of boards, by the thickness that was measured", () => {
    expect(readTrial(typed, true).row).toMatchObject({ [board.sawn]: 1.5, [board.finished]: null, [board.width]: 8 });
    expect(readTrial({ ...typed, way: "finished" }, true).row).toMatchObject({
      [board.sawn]: null,
      [board.finished]: 1.5,
      [board.price]: 950,
    });
    expect(readTrial({ ...typed, product: "Bevel siding" }, true).row).toMatchObject({
      [board.product]: "Bevel siding",
    });
  });

  it("has a price where the boards have prices, and none where they have none", () => {
    expect(readTrial({ ...typed, price: "" }, true).problems).toHaveProperty("price");
    expect(readTrial(typed, false).row).toMatchObject({ [board.price]: null });
  });

  it("may have several widths, and says so where they cannot be read", () => {
    expect(readTrial({ ...typed, width: "4 to 12 by 2" }, true).row).toMatchObject({ [board.width]: "4 to 12 by 2" });
    for (const width of ["", "wide", "0", "12 to 4", "1 to 24 by 0.01"])
      expect(readTrial({ ...typed, width }, true).problems, width).toHaveProperty("width");
  });

  it.each(["", "5/4", "0", "-1", "25", "1,5"])("asks for a thickness where it reads %j", (thickness) => {
    expect(readTrial({ ...typed, thickness }, true).problems).toHaveProperty("thickness");
  });
});
