import { call, column, lookedUp } from "../formula";
import { formats } from "../formats";
import type { Formula, PlannedCell } from "../plan";
import { cost, COSTS, price, PRICES } from "../tables";
import { quoted } from "./sheetParts";
import type { tractCells } from "./stand";

/** Columns of every block: likely, low, high. */
const LEVELS = ["B", "C", "D"] as const;
export const levels = (make: (column: string) => string): readonly Formula[] =>
  LEVELS.map((letter) => ({ formula: make(letter) }));
export const ifNumbers = (cells: readonly string[], then: string) =>
  `=IF(COUNT(${cells.join(",")})=${cells.length},${then},"")`;

export const priceOf = (product: string, level: string): PlannedCell => ({
  formula: `=${lookedUp(PRICES, level, price.product, quoted(product))}`,
});

export const costOf = (item: string): PlannedCell => ({
  formula: `=IFERROR(XLOOKUP(${quoted(item)},${column(COSTS, cost.item)},${column(COSTS, cost.amount)},0)+0,0)`,
});

export const volumes = ({
  total,
  low,
  high,
  margin,
}: (typeof tractCells)[keyof typeof tractCells]): readonly Formula[] =>
  [total, low, high, margin].map((cell) => ({ formula: ifNumbers([cell], `${cell}/1000`) }));

export const range = (
  name: string,
  at: string,
  [volume, margin, likely, low, high]: readonly [string, string, string, string, string],
) => ({
  name,
  at,
  formula: ifNumbers([volume, margin, likely], call("VALUERANGE", volume, margin, likely, low, high)),
  rows: 1,
  columns: 3,
  formats: [formats.dollars, formats.dollars, formats.dollars],
});

export const homeNet = (level: string, place: 1 | 2) =>
  ifNumbers(
    [`${level}34`, `${level}35`, `${level}36`],
    `INDEX(${call("HOMESAWNET", `${level}34`, `${level}36`, "$B$22", `${level}35`)},1,${place})`,
  );

/** Costs follow the volume, so the low end of a loss can be its likely one: the range is put in order. */
export function lowestAndHighest(row: number): readonly Formula[] {
  const cells = `B${row}:D${row}`;
  return [`B${row}`, `MIN(${cells})`, `MAX(${cells})`].map((cell) => ({
    formula: `=IF(COUNT(${cells})=3,${cell},"")`,
  }));
}

/** One sentence: the way ahead of all others, or that there is none. */
export function verdict(): string {
  return `=IF(COUNT(B41:D43)<9,"Give acres, prices and a tally to compare the three ways.",IF(COUNTIF(E47:E49,1)=1,INDEX(A47:A49,MATCH(1,E47:E49,0))&" comes out ahead of the others, ranges and all.","Too close to call: the ranges overlap."))`;
}
