import type { TableRow } from "../../workbook/plan";
import { tree as heading } from "../../workbook/tables";
import type { TallyTree } from "./tallyTree";

/** A tallied tree as a row of the Trees table; the computed columns are the workbook's own. */
export const treeRow = (plot: string | number, { species, dbh, logs, count, cull, note }: TallyTree): TableRow => ({
  [heading.plot]: plot,
  [heading.species]: species,
  [heading.dbh]: dbh,
  [heading.logs]: logs,
  [heading.count]: count,
  [heading.cull]: cull,
  [heading.note]: note === "" ? null : note,
});
