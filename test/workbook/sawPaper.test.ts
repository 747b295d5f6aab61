import { readXlsx } from "hucre/xlsx";
import { describe, expect, it } from "vitest";
import { zoneAt } from "../../src/workbook/address";
import { planFile } from "../../src/workbook/portable/planFile";
import { cautionLine } from "../../src/workbook/sheets/sheetParts";
import { DRAWING_OVER, sawPaperSheet } from "../../src/workbook/sheets/sawPaper";

/** A picture of one white dot. */
const DOT = Uint8Array.from(
  atob("iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mP8z8BQDwAEhQGAhKmMIQAAAABJRU5ErkJggg=="),
  (letter) => letter.charCodeAt(0),
);
const FACTS = ["Small end 12 in, large end 13.5 in", "Live sawing, kerf 0.09 in"];
const HEADINGS = ["Step", "Turn", "Set the head to, in", "Frees, in x in x ft", "Board", "Board feet"];
const paper = sawPaperSheet({
  title: "Plan of log 7",
  facts: FACTS,
  headings: HEADINGS,
  cuts: [
    ["1", "none, laid with longer diameter level, small end raised 1 in", "15 3/8", "slab", "", ""],
    ["2", "", "14 5/16", "1 x 4 x 6", "1", "2.0"],
  ],
  stamp: "Values from the sheet Sawing.",
});

describe("a plan on paper", () => {
  const pixels = paper.widths.map((width) => 7 * width + 5);

  it("prints all it holds and repeats the heads of its columns, as wide as one page", () => {
    const last = Math.max(...paper.blocks.map(({ at, cells }) => zoneAt(at).row + cells.length));
    expect(paper.print?.area).toBe(`A1:F${last}`);
    expect(paper.print?.scale).toBeUndefined();
    const [row = 0] = paper.print?.titleRows ?? [];
    expect(paper.blocks.find(({ at }) => at === `A${row}`)?.cells[0]).toEqual(HEADINGS);
    // Not made much smaller: 8.5 in of letter paper less its margins.
    expect(pixels.reduce((sum, one) => sum + one, 0) / 96).toBeLessThan(7.5 * 1.1);
  });

  it("keeps a square free for the drawing, beside the facts", () => {
    const { column, columns, row, rows } = zoneAt(DRAWING_OVER);
    const width = pixels.slice(column, column + columns).reduce((sum, one) => sum + one, 0);
    const facts = paper.blocks.find(({ at }) => at === "A3");
    const heights = facts?.lines?.map((lines) => (lines * 16 * 96) / 72) ?? [];
    expect(heights).toHaveLength(rows);
    expect(zoneAt("A3").row).toBe(row);
    const height = heights.reduce((sum, one) => sum + one, 0);
    expect(Math.abs(width - height) / width).toBeLessThan(0.02);
  });

  it("breaks a long turn into lines, and says the cautions", () => {
    expect(paper.blocks.filter(({ lines }) => lines?.length === 1).map(({ lines }) => lines)).toEqual([[2], [2], [1]]);
    const texts = paper.blocks.flatMap(({ cells }) => cells.flat());
    for (const topic of ["Sawing", "Log weight", "Ungraded lumber"]) expect(texts).toContain(cautionLine(topic));
  });

  it("becomes a file with its picture and its page", async () => {
    const file = await planFile(paper, [{ over: DRAWING_OVER, png: DOT, says: "End view: 1 board." }]);
    const { sheets } = await readXlsx(file);
    expect(sheets[0]?.name).toBe("Plan of log 7");
    expect(sheets[0]?.images?.map(({ altText, anchor }) => [altText, anchor])).toEqual([
      ["End view: 1 board.", { from: { row: 2, col: 3 }, to: { row: 20, col: 6 } }],
    ]);
    expect(sheets[0]?.pageSetup).toMatchObject({ fitToPage: true, fitToWidth: 1, printTitlesRow: "$22:$22" });
    expect(sheets[0]?.rows[2]?.[0]).toBe(FACTS[0]);
  });
});
