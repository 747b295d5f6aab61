import { beside } from "../address";
import { formats } from "../formats";
import type { BlockPlan } from "../plan";
import { named } from "../tables";
import { across, down, heading } from "./sheetParts";

/** Where a PRODUCTTABLE has an amount on an acre, its margin in the column behind. */
const VOLUME = 2;
const VALUE = 6;

/**
 * Totals of the tract for the lines of a PRODUCTTABLE, as TRACTTOTAL makes them: amount times acres, and a margin in
 * which that of the amount and that of the acres go in together. Blank until the acres are known.
 *
 * @param table where the table begins
 * @param at where the totals begin, in the same row
 * @param rows of the table, its heading with them
 */
export function productTotals(table: string, at: string, rows: number): readonly BlockPlan[] {
  const lines = Array.from({ length: rows - 1 }, (_, i) => i + 1);
  const amount = (line: number, column: number) => beside(table, line, column);
  const total = (column: number) =>
    lines.map((line) => ({
      formula: `=IF(AND(ISNUMBER(${amount(line, column)}),ISNUMBER(${named.acres})),${amount(line, column)}*${named.acres},"")`,
    }));
  const margin = (column: number) =>
    lines.map((line) => {
      const [value, its] = [amount(line, column), amount(line, column + 1)];
      const both = `SQRT((${its}*${named.acres})^2+(${value}*N(${named.acresMargin}))^2)`;
      return { formula: `=IF(AND(ISNUMBER(${value}),ISNUMBER(${its}),ISNUMBER(${named.acres})),${both},"")` };
    });
  const first = (columns: number) => beside(at, 1, columns);
  return [
    heading(beside(at, -1, 0), "Whole tract; volume in the unit of the product", 4),
    across(at, "Heading", ["Volume", "Margin +/-", "Value $", "Margin +/-"]),
    down(first(0), "Computed", total(VOLUME), formats.mbf),
    down(first(1), "Computed", margin(VOLUME), formats.mbf),
    down(first(2), "Computed", total(VALUE), formats.dollars),
    down(first(3), "Computed", margin(VALUE), formats.dollars),
  ];
}
