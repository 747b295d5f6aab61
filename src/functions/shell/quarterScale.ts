import { asCells } from "./readings";
import type { UnitSystem } from "./unitSystem";

/** Rough hardwood is sold by the quarter of an inch: 4/4, 5/4, 8/4. */
const QUARTERS = /^\s*(\d{1,2})\s*\/\s*4\s*$/;

const inInches = (cell: unknown): unknown => {
  const quarters = typeof cell === "string" ? QUARTERS.exec(cell)?.[1] : undefined;
  return quarters === undefined ? cell : Number(quarters) / 4;
};

/**
 * Thicknesses of which some may be texts in quarters of an inch, such as "5/4"; each of them as a number of inches.
 * A cell that a spreadsheet has made a date of is no text and is left as it is, to be asked about.
 */
export function quarterScale(given: unknown, { metric }: UnitSystem): unknown {
  if (metric) return given;
  const cells = asCells(given);
  if (!cells.some((row) => row.some((cell) => typeof cell === "string"))) return given;
  return cells.map((row) => row.map(inInches));
}
