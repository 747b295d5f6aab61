import { blank as nothingIn } from "./readings";

/** In a list of sizes and limits, a 0 is a cell left blank. */
export const blank = (cell: unknown) => cell === 0 || nothingIn(cell);
export const isWord = (cell: unknown) => typeof cell === "string" && /^[^\d]*[a-z]{3}/i.test(cell.trim());

/** Rows of a range that say something, without a heading row. */
export function rowsSaying(
  cells: readonly (readonly unknown[])[],
  isHeading: (row: readonly unknown[]) => boolean,
): readonly (readonly unknown[])[] {
  return cells.filter((row, i) => !(i === 0 && isHeading(row)) && row.some((cell) => !blank(cell)));
}
