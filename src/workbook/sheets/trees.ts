import type { SheetPlan } from "../plan";
import { TREES } from "../tables";
import type { WorkbookContent } from "../workbookContent";
import { down, sheetPlan, title } from "./sheetParts";
import { treeColumns } from "./treeColumns";

export const TREES_SHEET = "Trees";

/** The tally: one row for a tree, or for several alike with their count. */
export function treesSheet(content: WorkbookContent): SheetPlan {
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
        "Check asks about a row that looks odd. Say under Accepted because why it is right, and it no longer counts as open.",
      ]),
    ],
    tables: [
      {
        name: TREES,
        at: "A7",
        columns: treeColumns(content),
        rows: content.trees,
      },
    ],
  });
}
