import type { WorkbookHost } from "../../workbook/host";
import type { TableRow } from "../../workbook/plan";
import { FLAW_ROWS } from "../../workbook/sheets/buckingCells";
import { flaw, named, STEM_FLAWS } from "../../workbook/tables";
import type { TypedStem } from "./stemForm";

/** Puts a stem on the sheet Bucking: one height, never both, and its flaws row by row. */
export async function putStem(host: WorkbookHost, { species, dbh, height, logs, flaws }: TypedStem): Promise<void> {
  await host.writeNames({
    [named.stemSpecies]: species === "" ? null : species,
    [named.stemDbh]: dbh,
    [named.stemHeight]: height,
    [named.stemLogs]: logs,
  });
  const rows = flaws.map(({ what, from, to }): TableRow => ({
    [flaw.from]: from === 0 ? null : from,
    [flaw.to]: to,
    [flaw.what]: what === "" ? null : what.charAt(0).toUpperCase() + what.slice(1),
  }));
  const there = (await host.readTable(STEM_FLAWS)).rows.length;
  const kept = Math.max(FLAW_ROWS, there);
  for (let row = 0; row < Math.max(there, Math.min(rows.length, kept)); row += 1)
    await host.updateRow(STEM_FLAWS, row, rows[row] ?? blank);
  if (rows.length > kept) await host.appendRows(STEM_FLAWS, rows.slice(kept));
}

const blank: TableRow = { [flaw.from]: null, [flaw.to]: null, [flaw.what]: null };
