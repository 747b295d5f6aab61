import { describe, expect, it } from "vitest";
import { alignmentOf } from "../../src/workbook/alignment";
import { formats } from "../../src/workbook/formats";
import { valueBlocks } from "../../src/workbook/sheets/valueBlocks";
import { across, down, heading, sheetPlan } from "../../src/workbook/sheets/sheetParts";

const sheet = (parts: Partial<Parameters<typeof sheetPlan>[0]>) =>
  alignmentOf(sheetPlan({ name: "S", sheetClass: "presentation", widths: [20, 12, 12, 12], ...parts }));

describe("how a sheet's cells stand", () => {
  it("ends a heading where the numbers under it end, and begins its unit a little further in", () => {
    const blocks = [
      across("A1", "Heading", ["Costs", "Amount", "Unit"]),
      down("A2", "Computed", ["Felling"]),
      down("B2", "Linked", [{ formula: "=X" }], formats.dollars),
      down("C2", "Unit", ["$ per MBF"]),
    ];
    expect(sheet({ blocks })).toEqual({ right: ["B1"], left: [], indented: ["C1"] });
  });

  it("leaves a heading that runs over other columns, and one above plain texts", () => {
    const number = (at: string) => down(at, "Linked", [{ formula: "=X" }], formats.whole);
    expect(sheet({ blocks: [heading("A1", "Of all the trees on the tract", 3), number("A2")] }).right).toEqual([]);
    expect(sheet({ blocks: [heading("A1", { formula: "=Title" }, 3), number("A2")] }).right).toEqual([]);
    expect(sheet({ blocks: [across("A1", "Heading", ["A", "B"]), down("A2", "Note", ["x"])] }).right).toEqual([]);
  });

  it("begins the numbers of logs where their heading begins, however wide their column is", () => {
    const columns = [
      { heading: "Log", format: formats.general, names: true },
      { heading: "Board feet", format: formats.tenth },
    ];
    const list = (rows: readonly (readonly number[])[]) => valueBlocks("A3", "Log by log", columns, rows);
    expect(
      sheet({
        blocks: list([
          [1, 64.5],
          [2, 38],
        ]),
      }),
    ).toEqual({ right: ["B4"], left: ["A5:A6"], indented: [] });
    expect(sheet({ blocks: list([]) }).left).toEqual([]);
  });

  it("does the same for the columns of an answer, headings and all", () => {
    const spill = { name: "Answer", at: "A4", formula: "=F()", rows: 9, columns: 4 };
    const formatted = [formats.whole, formats.text, formats.general, formats.tenth];
    expect(sheet({ spills: [{ ...spill, formats: formatted }] })).toEqual({
      right: ["A4", "D4"],
      left: [],
      indented: ["B4:B12"],
    });
    const below = {
      blocks: [across("A3", "Heading", ["Step", "Turn"])],
      spills: [{ ...spill, headings: 0, formats: formatted }],
    };
    expect(sheet(below)).toEqual({ right: ["A3"], left: [], indented: ["B3", "B4:B12"] });
  });
});
