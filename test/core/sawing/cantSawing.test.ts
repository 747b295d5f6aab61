import { describe, expect, it } from "vitest";
import { cantOnGrid } from "../../support/cantOnGrid";
import { expectAsPrinted } from "../../support/expectAsPrinted";
import { numberIn, published, type PublishedRow } from "../../support/published";
import { cantVolume } from "../../support/sawing";

const table = published("sawing/cantSawing.csv");
const CANTS = [4, 6, 8, 10, 12];
const volumeOf = (row: PublishedRow) => cantVolume(numberIn(row, "diameter"), numberIn(row, "kerf"), CANTS);

describe("cant sawing of planks and inch boards from a cylinder", () => {
  it.each(table.rows)("$diameter in, kerf $kerf: $volume on 1/64 in bf", (row) => {
    expectAsPrinted(volumeOf(row), numberIn(row, "volume on 1/64 in"), table.printedTo);
  });

  it("is one inch of width better than the grid of 1/16 in where the best cant lies off that grid, else the same", () => {
    const better = table.rows.filter((row) => Math.abs(volumeOf(row) - numberIn(row, "volume")) > table.printedTo / 2);
    expect(better.map(({ diameter, kerf }) => `${diameter} in, kerf ${kerf}`)).toEqual([
      "10 in, kerf 0.125",
      "14 in, kerf 0.125",
      "18 in, kerf 0.125",
      "9 in, kerf 0.25",
      "10 in, kerf 0.25",
      "15 in, kerf 0.25",
      "16 in, kerf 0.25",
      "17 in, kerf 0.25",
      "18 in, kerf 0.25",
    ]);
    for (const row of better) expect(volumeOf(row) - numberIn(row, "volume")).toBeCloseTo(8 / 12, 2);
  });

  it("has printed figures that a plain grid programme comes to as well", () => {
    expect(table.rows).toHaveLength(26);
    for (const row of table.rows) {
      const onGrid = cantOnGrid(numberIn(row, "diameter"), numberIn(row, "kerf"), CANTS, 1 / 16);
      expectAsPrinted(onGrid, numberIn(row, "volume"), table.printedTo);
    }
  });
});
