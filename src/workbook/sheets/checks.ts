import { call, column } from "../formula";
import type { SheetPlan } from "../plan";
import { BOARDS, log, LOGS, named, out, plot, PLOTS, price, PRICES, sawn, tree, TREES } from "../tables";
import { LAST_ROW } from "../zones";
import { across, down, sheetPlan, title } from "./sheetParts";

export const CHECKS = "Checks";
const LIST_AT = "A7";
const ROWS = LAST_ROW - 7;

/** All that the Check columns ask, and what was kept with its reason: whoever gets a copy reads both. */
export function checksSheet(): SheetPlan {
  return sheetPlan({
    name: CHECKS,
    sheetClass: "control",
    frozenRows: 7,
    landscape: true,
    printTitleRow: 7,
    widths: [12, 28, 90, 44],
    blocks: [
      title("Checks"),
      down("A2", "Note", [
        "One line for each thing that looks odd. Mend it in its row, or say there under Accepted because why it is right: then it stands here with that reason.",
        "Rows are counted from the first one below the headings of their table.",
      ]),
      across("A5", "Computed", [
        { formula: `=IF(${named.checksOpen}=0,"Nothing is open.",${named.checksOpen}&" to look at.")` },
      ]),
    ],
    spills: [
      {
        name: out.checks,
        at: LIST_AT,
        formula: `=${call("CHECKLIST", ...columns)}`,
        rows: ROWS,
        columns: 4,
      },
    ],
  });
}

const columns: readonly string[] = [
  ...[plot.plot, plot.check, plot.accepted].map((heading) => column(PLOTS, heading)),
  ...[tree.plot, tree.check, tree.accepted].map((heading) => column(TREES, heading)),
  ...[log.log, log.check].map((heading) => column(LOGS, heading)),
  ...[sawn.log, sawn.check].map((heading) => column(BOARDS, heading)),
  ...[price.product, price.check].map((heading) => column(PRICES, heading)),
];
