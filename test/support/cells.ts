/** A list as the spreadsheet hands it over: a column of one cell each. */
export const column = (values: readonly unknown[]): unknown[][] => values.map((value) => [value]);

/** The error a function raised, as the cell would show it; undefined when it answered. */
export function errorOf(call: () => unknown): { readonly code: string; readonly message: string } | undefined {
  try {
    call();
  } catch (error) {
    return error as { code: string; message: string };
  }
  return undefined;
}

/** The numbers of one column of a spilled table, below its header. */
export const numbersBelow = (table: readonly (readonly unknown[])[], place: number): number[] =>
  table.slice(1).map((row) => row[place] as number);
