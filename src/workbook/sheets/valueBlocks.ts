import type { BlockPlan, CellValue } from "../plan";
import { beside } from "../address";
import { across, heading } from "./sheetParts";

/** A column of a list that is written as values. */
export interface ValueColumn {
  readonly heading: string;
  readonly format: string;
  /** True where its numbers are names, such as those of logs. */
  readonly names?: boolean;
}

/**
 * A list as values under its title and headings, each column in its own format.
 *
 * @param columns how many the title runs over, where that is more than the list has
 */
export function valueBlocks(
  at: string,
  title: string,
  list: readonly ValueColumn[],
  rows: readonly (readonly CellValue[])[],
  columns = list.length,
): readonly BlockPlan[] {
  return [
    heading(at, title, columns),
    across(
      beside(at, 1, 0),
      "Heading",
      list.map((column) => column.heading),
    ),
    ...list.map(({ format, names = false }, i): BlockPlan => ({
      at: beside(at, 2, i),
      cells: rows.map((row) => [row[i] ?? null]),
      style: "Computed",
      format,
      names,
    })),
  ];
}
