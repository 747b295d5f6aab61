import { NAMESPACE, type FunctionName } from "../functions/names";

/** A call of one of our functions, as text inside a formula: call("LOGSCALE", "A1", "16") gives WOODLOT.LOGSCALE(A1,16). */
export function call(name: FunctionName, ...args: readonly string[]): string {
  return `${NAMESPACE}.${name}(${args.join(",")})`;
}

/** A table's whole column, such as Trees[DBH in]. */
export const column = (table: string, heading: string): string => `${table}[${heading}]`;

/** The cell of a table's column in the row where the formula stands. Never the short @ form, which not every engine reads. */
export const thisRow = (table: string, heading: string): string => `${table}[[#This Row],[${heading}]]`;

/**
 * What a table has in one column where another column says a word; "" when it has no such row or a blank there.
 * XLOOKUP, because INDEX over a table of another sheet is read wrongly by one engine.
 */
export function lookedUp(table: string, wanted: string, key: string, word: string): string {
  const found = `XLOOKUP(${word},${column(table, key)},${column(table, wanted)},"")`;
  return `IF(${found}="","",${found})`;
}
