import { beside } from "../address";
import type { SheetPlan } from "../plan";
import { out, TREES } from "../tables";
import type { WorkbookContent } from "../workbookContent";
import { rowChecks } from "./rowChecks";
import { down, heading, sheetPlan, title } from "./sheetParts";
import { treeCheckArguments, treeColumns } from "./treeColumns";

export const TREES_SHEET = "Trees";
const TABLE_AT = "A7";

/** The tally: one row for a tree, or for several alike with their count. */
export function treesSheet(content: WorkbookContent): SheetPlan {
  const checksAt = beside(TABLE_AT, 0, treeColumns(content, TABLE_AT).length + 1);
  const columns = treeColumns(content, checksAt);
  return sheetPlan({
    name: TREES_SHEET,
    sheetClass: "foundation",
    frozenRows: 7,
    landscape: true,
    printTitleRow: 7,
    blocks: [
      title("Trees"),
      down("A2", "Note", [
        "Type plot, species, DBH and the height: 16-ft logs to the half, or the total height in feet. A blank Count is one tree. A blank Take counts as part of the harvest; No leaves the tree standing.",
        "Logs lead to Volume bf, gross, by the log rule and the form class of the species. Total height leads to Wood ft3 and Green lb, by the national equations. Volume by tells which height a tree has. Harvest bf and Lumber bf take the cull off; Lumber bf is what the logs should saw out to, times Realized lumber.",
        "Check asks about a row that looks odd, by itself or beside the others; a tree that was taped has its level distance under Distance ft. Say under Accepted because why it is right, and it no longer counts as open.",
      ]),
      heading(beside(checksAt, -1, 0), "Checks of each row", 1),
    ],
    widths: [...columns.map(({ width }) => width), 3, 44],
    spills: [rowChecks(out.treeChecks, checksAt, "CHECKTREES", treeCheckArguments)],
    tables: [
      {
        name: TREES,
        at: TABLE_AT,
        columns,
        rows: content.trees,
      },
    ],
  });
}
