import { column, filledRows, isNothing, sharedRows } from "./columns";
import { answered } from "./answers";
import type { Cells } from "./readings";

/** A table whose rows have been checked. */
export interface CheckedTable {
  readonly sheet: string;
  readonly names: unknown;
  readonly says: unknown;
  readonly reasons?: unknown;
  /** Where a row is, in words. @param row counted from 1, the heading left out */
  readonly where: (name: string, row: number) => string;
}

const HEADINGS = ["Sheet", "Where", "What to look at", "Kept because"];

/** One list of all that is open and of all that was kept with a reason. */
export function checkList(tables: readonly CheckedTable[]): Cells {
  return answered(() => {
    const found = tables.flatMap(rowsOf);
    const kept = (row: readonly string[]) => row[3] !== "";
    const rows = [...found.filter((row) => !kept(row)), ...found.filter(kept)];
    return [HEADINGS, ...(rows.length > 0 ? rows : [["Nothing to look at", "", "", ""]])];
  });
}

function rowsOf({ sheet, names, says, reasons, where }: CheckedTable): string[][] {
  const lists = {
    names: column(names, "Name"),
    says: column(says, "Check"),
    reasons: column(reasons, "Reason"),
  };
  if (lists.says.single && isNothing(lists.says.at(0))) return [];
  sharedRows(Object.values(lists));
  const text = (cell: unknown) => (isNothing(cell) ? "" : String(cell).trim().slice(0, 1000));
  return Array.from({ length: filledRows(lists.says) }, (_, row) => row).flatMap((row) => {
    const said = text(lists.says.at(row));
    if (said === "") return [];
    return [[sheet, where(text(lists.names.at(row)), row + 1), said, text(lists.reasons.at(row))]];
  });
}
