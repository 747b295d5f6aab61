import type { CopiedSheet } from "../host";
import { zoneAt } from "../address";

const NARROWEST = 8;
/** Longer texts are notes that run over their neighbours, as far as those are blank. */
const WIDEST = 36;
/** No column is wider, however long its texts. */
const MOST = 64;
/** Characters that the button in a table's heading covers. */
const FILTER_BUTTON = 4;

/** Widths in characters that show what the columns hold. */
export function columnWidths({ cells, tables }: CopiedSheet): readonly number[] {
  const headingRows = new Set(tables.map(({ address }) => zoneAt(address).row));
  const columns = Math.max(0, ...cells.map((row) => row.length));
  return Array.from({ length: columns }, (_, column) =>
    cells.reduce((widest, line, row) => {
      const value = line[column]?.value ?? "";
      const shown = typeof value === "number" ? Math.min(String(value).length, 11) : String(value).length;
      const wide = shown + (headingRows.has(row) ? FILTER_BUTTON : 1);
      const next = line[column + 1]?.value ?? "";
      if (wide > WIDEST && next === "") return widest;
      return Math.max(widest, Math.min(wide, MOST));
    }, NARROWEST),
  );
}
