import { beside } from "../address";
import type { SheetPlan } from "../plan";
import { out, TREES } from "../tables";
import type { WorkbookContent } from "../workbookContent";
import { rowChecks } from "./rowChecks";
import { down, heading, sheetPlan, title } from "./sheetParts";
import { treeCheckArguments } from "./treeChecks";
import { treeColumns } from "./treeColumns";

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
        "Logs lead to Volume bf, gross, by log rule and form class; total height to Wood ft3 and Green lb by the national equations (Wood ft3 by your local table where it is used). Volume by tells which height a tree has. Harvest and Lumber bf have the cull off.",
        "Check asks about a row that looks odd: say under Accepted because why it is right. A taped tree has its level distance under Distance ft. Lumber bf is what the logs should saw out to, times Realized lumber.",
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
