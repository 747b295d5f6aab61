import { expect, it } from "vitest";
import { scribnerDecimalCTable } from "../../../src/core/reference/scribnerDecimalCTable";
import { numberIn, published } from "../../support/published";

const { rows, lengths, smallestDiameter, largestDiameter, cellsRead } = scribnerDecimalCTable;

it("has a row for each inch from 6 to 40 and a column for each even foot from 6 to 20", () => {
  expect([smallestDiameter, largestDiameter, rows.length]).toEqual([6, 40, 35]);
  expect(lengths).toEqual([6, 8, 10, 12, 14, 16, 18, 20]);
  for (const row of rows) expect(row).toHaveLength(lengths.length);
});

it("adds up by columns to what was written down when it was copied", () => {
  const sums = lengths.map((_, column) => rows.reduce((sum, row) => sum + (row[column] ?? NaN), 0));
  expect(sums).toEqual([593, 789.5, 983, 1179, 1374, 1577, 1772, 1966]);
});

it("never falls along a row or down a column", () => {
  for (const [i, row] of rows.entries()) {
    for (const [j, tens] of row.entries()) {
      expect(tens).toBeGreaterThanOrEqual(row[j - 1] ?? 0);
      expect(tens).toBeGreaterThanOrEqual(rows[i - 1]?.[j] ?? 0);
    }
  }
});

it("marks as read the cells that the tables read hold, and no other", () => {
  const cells = (file: string) =>
    published(`log/${file}`).rows.map((row) => `${numberIn(row, "diameter")}x${numberIn(row, "length")}`);
  const read = new Set([...cells("scribnerDecimalC.csv"), ...cells("scribnerDecimalC.bailey.csv")]);
  const recalled = cells("scribnerDecimalC.recalled.csv");

  const marked = new Set<string>();
  for (const { diameters, lengths: feet } of cellsRead) {
    for (let diameter = diameters[0]; diameter <= diameters[1]; diameter += 1) {
      for (let length = feet[0]; length <= feet[1]; length += 2) marked.add(`${diameter}x${length}`);
    }
  }
  expect(marked).toEqual(read);
  expect([read.size, recalled.length]).toEqual([91, 189]);
  expect(recalled.filter((cell) => read.has(cell))).toEqual([]);
});
