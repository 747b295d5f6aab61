import { expect, it } from "vitest";
import { columnWidths } from "../../../src/workbook/portable/columnWidths";

const row = (...values: (string | null)[]) => values.map((value) => ({ value, format: "General" }));
const LONG = "none, laid with longer diameter level, small end raised 1 in"; // 60 letters

it("a column is as wide as a long text that its neighbour would cut off, and no note widens it", () => {
  const widths = (...cells: ReturnType<typeof row>[]) => columnWidths({ name: "Sheet", cells, tables: [] });
  expect(LONG).toHaveLength(60);
  expect(widths(row(LONG, "15.391"))[0]).toBe(61);
  expect(widths(row(LONG, null), row("short", "1"))[0]).toBe(8);
  expect(widths(row(LONG))[0]).toBe(8);
  expect(widths(row(LONG + LONG, "1"))[0]).toBe(64);
});
