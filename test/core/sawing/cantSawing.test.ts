import { describe, expect, it } from "vitest";
import { cant } from "../../../src/core/sawing/patterns/cant";
import { cantOnGrid } from "../../support/cantOnGrid";
import { expectAsPrinted } from "../../support/expectAsPrinted";
import { numberIn, published, type PublishedRow } from "../../support/published";
import { boardsOf, cantVolume, inchBoards, planned, sawLog } from "../../support/sawing";

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

describe("cant sawing of inch boards alone from a cylinder", () => {
  const cylinders = published("sawing/liveSawing.csv");
  const widthsOf = (row: PublishedRow) => {
    const diameter = numberIn(row, "diameter");
    const log = sawLog(diameter, diameter, numberIn(row, "length"));
    const sizes = inchBoards(numberIn(row, "least width"), diameter);
    const plan = planned(log, sizes, numberIn(row, "kerf"), { pattern: cant, shortBoards: false });
    return boardsOf(plan).reduce((sum, { piece }) => sum + piece.width, 0);
  };

  it.each(cylinders.rows)("$diameter in, kerf $kerf, from $least width in: $cant widths on a finer grid in", (row) => {
    expect(widthsOf(row)).toBe(numberIn(row, "cant widths on a finer grid"));
  });

  it("has printed figures that a plain grid programme comes to as well, on the grid of each row", () => {
    expect(cylinders.rows).toHaveLength(76);
    for (const row of cylinders.rows) {
      const [diameter, leastWidth] = [numberIn(row, "diameter"), numberIn(row, "least width")];
      const cants = Array.from({ length: diameter - leastWidth }, (_, i) => leastWidth + i);
      const onGrid = (step: number) =>
        Math.round((cantOnGrid(diameter, numberIn(row, "kerf"), cants, step, { leastWidth, planks: [] }) * 12) / 8);
      expect(onGrid(1 / 16)).toBe(numberIn(row, "cant widths on 1/16 in"));
      // Finer ones than 1/64 in take minutes; they were run once.
      if (row["finer grid"] === "64") expect(onGrid(1 / 64)).toBe(numberIn(row, "cant widths on a finer grid"));
    }
  }, 120_000);
});
