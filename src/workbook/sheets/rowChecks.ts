import { beside, fixed } from "../address";
import type { FunctionName } from "../../functions/names";
import { call } from "../formula";
import type { SpillPlan } from "../plan";
import { LAST_ROW } from "../zones";

const ROOM = LAST_ROW - 8;

/**
 * Sentences for the rows of a table, found by one call that sees the whole of it, since many a slip shows only beside
 * the other rows. They spill right of the table, row by row.
 *
 * @param at the cell beside the table's headings, from which on the column is free
 */
export const rowChecks = (name: string, at: string, check: FunctionName, args: readonly string[]): SpillPlan => ({
  name,
  at: beside(at, 1, 0),
  formula: `=${call(check, ...args)}`,
  rows: ROOM,
  columns: 1,
  headings: 0,
});

/**
 * The sentence for the row in which the formula stands, however the table is sorted or cut.
 *
 * @param beyond what a row is checked by that lies beyond the room of the sentences; left out, nothing
 */
export function rowCheck(at: string, beyond = '""'): string {
  const sentences = `${fixed(beside(at, 1, 0))}:${fixed(beside(at, ROOM, 0))}`;
  const row = `ROW()-ROW(${fixed(at)})`;
  return `IF(${row}>ROWS(${sentences}),${beyond},INDEX(${sentences},${row}))`;
}
