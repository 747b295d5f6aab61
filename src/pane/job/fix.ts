import type { TableRow } from "../../workbook/plan";

/** A change that would settle a finding. */
export interface Fix {
  readonly label: string;
  readonly table: string;
  /** Row to change; undefined adds a row. */
  readonly row: number | undefined;
  readonly changes: TableRow;
}
