import { describe, expect, it } from "vitest";
import { hardwoodThicknesses } from "../../../src/core/reference/hardwoodThicknesses";
import { softwoodSizes } from "../../../src/core/reference/softwoodSizes";
import { woodProperties } from "../../../src/core/reference/woodProperties";
import { woodSources } from "../../../src/core/lumber/wood";
import { numberIn, published } from "../../support/published";

const total = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0);

describe("softwood sizes", () => {
  const { boards, dimension, timbers } = softwoodSizes;
  const parts = [boards.thicknesses, boards.widths, dimension.thicknesses, dimension.widths];

  it("has as many rows as were copied, in rising order, dressed smaller than nominal and drier smaller than green", () => {
    expect(parts.map(({ length }) => length)).toEqual([7, 13, 6, 13]);
    for (const part of parts) {
      for (const [i, { nominal, dry, green }] of part.entries()) {
        expect(nominal).toBeGreaterThan(part[i - 1]?.nominal ?? 0);
        expect(green).toBeLessThan(nominal);
        expect(dry).toBeLessThan(green);
      }
    }
  });

  it("adds up to what was written down when it was copied", () => {
    const { rows } = published("lumber/softwoodSizes.csv");
    for (const column of ["nominal", "dry", "green"] as const) {
      expect(total(parts.flat().map((row) => row[column]))).toBeCloseTo(
        total(rows.map((row) => numberIn(row, column))),
        9,
      );
    }
    expect(total(parts.flat().map(({ dry }) => dry))).toBeCloseTo(202.9375, 9);
  });

  it("leaves no timber of 5 in or more without a class", () => {
    expect(timbers.map(({ from, to }) => [from, to])).toEqual([
      [5, 6],
      [7, 15],
      [16, Infinity],
    ]);
  });
});

it("hardwood thicknesses: 13 rows, one of them from memory, adding up to what was copied", () => {
  const { rows } = hardwoodThicknesses;
  expect(rows.filter(({ standing }) => standing === "from memory").map(({ rough }) => rough)).toEqual([2.5]);
  expect([rows.length, total(rows.map(({ rough }) => rough)), total(rows.map(({ surfaced }) => surfaced))]).toEqual([
    13, 22.75, 19.9375,
  ]);
});

describe("wood properties", () => {
  const { rows } = woodProperties;
  const column = (at: 0 | 3 | 4 | 5 | 6) => rows.map((row) => row[at]);

  it("has 70 species, each once", () => {
    expect(rows).toHaveLength(70);
    for (const at of [0, 1, 2] as const) expect(new Set(rows.map((row) => row[at])).size).toBe(70);
  });

  it("adds up by columns to what was written down when it was copied", () => {
    expect(total(column(0))).toBe(29_663);
    expect(total(column(3))).toBeCloseTo(31.94, 9);
    expect(total(column(4))).toBeCloseTo(5395.9, 9);
    expect(total(column(5))).toBeCloseTo(310.4, 9);
    expect(total(column(6))).toBeCloseTo(562.9, 9);
  });

  it("shrinks more along the rings than across them, in every species", () => {
    for (const [, name, , , , radial, tangential] of rows) expect(tangential, name).toBeGreaterThan(radial);
  });

  it.each(["lumber/shrinkage.csv", "lumber/shrinkage.copies.csv"])(
    "has every shrinkage of %s, and marks it read",
    (file) => {
      for (const printed of published(file).rows) {
        const row = rows.find(([, name]) => name === printed.name);
        expect(row?.slice(5), printed.name).toEqual([
          numberIn(printed, "radial"),
          numberIn(printed, "tangential"),
          "read",
        ]);
      }
    },
  );

  it("marks as read no shrinkage but those", () => {
    const read = ["lumber/shrinkage.csv", "lumber/shrinkage.copies.csv"].flatMap((file) =>
      published(file).rows.map(({ name }) => name),
    );
    const marked = rows.filter((row) => row[7] === "read").map(([, name]) => name);
    expect(marked.filter((name) => !read.includes(name))).toEqual([]);
    expect(rows.filter((row) => row[7] === "from memory")).toHaveLength(22);
  });

  it("names in its sources every species whose shrinkage is from memory", () => {
    const recalled = woodSources.find(({ standing }) => standing === "from memory")?.where ?? "";
    for (const [, name, , , , , , standing] of rows)
      expect(recalled.includes(name), name).toBe(standing === "from memory");
  });
});
