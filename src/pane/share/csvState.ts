/** A table as text, ready to be copied. */
export interface CsvState {
  readonly what: "trees" | "points";
  /** "" until it is asked for. */
  readonly text: string;
  readonly rows: number;
}

export const firstCsv: CsvState = { what: "trees", text: "", rows: 0 };
