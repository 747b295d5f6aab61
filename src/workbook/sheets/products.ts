import { byLogs, byTotalHeight } from "../../core/cruise/checkHeight";
import type { SheetPlan } from "../plan";
import { named, PRODUCTS } from "../tables";
import type { WorkbookContent } from "../workbookContent";
import { productColumns } from "./productColumns";
import { productAnswers } from "./productAnswers";
import { cautionLine, down, quoted, sheetPlan, title } from "./sheetParts";
import { cubicWord } from "./unitWords";

export const PRODUCTS_SHEET = "Products";
const TABLE_AT = "A9";
const ANSWERS_AT = "J9";

/** What trees are cut into, and beside it what the tally holds of each. */
export function productsSheet({ products, settings }: WorkbookContent): SheetPlan {
  const { headings, spills } = productAnswers(ANSWERS_AT);
  return sheetPlan({
    name: PRODUCTS_SHEET,
    sheetClass: "foundation",
    landscape: true,
    frozenRows: 9,
    widths: [...productColumns.map(({ width }) => width), 3, 38, 8, 14, 16, 14, 16, 14, 16, 3, 14, 14, 14, 14],
    blocks: [
      title(PRODUCTS_SHEET),
      down("A2", "Note", [
        cautionLine("Estimate"),
        "A line for each product that you can sell: the thinnest small end inside bark, the lengths that are bought (trim left out), and how it is sold.",
        {
          formula: `="Sold by takes a log rule, Cords or Cubic. A cord is 128 ft3 stacked, taken as 62 percent wood. The price is for 1,000 bf, one cord or one "&${cubicWord}&"."`,
        },
        "Every stem is cut into what pays best. Without prices nothing pays: then give at least a guess, the better product the higher one.",
      ]),
      down("A6", "Computed", ["Stems drawn by"]),
      down("B6", "Input", [
        settings.productsBy ?? {
          formula: `=IF(${named.heightMeasured}=${quoted(byLogs.title)},${named.heightMeasured},${quoted(byTotalHeight.title)})`,
        },
      ]),
      down("C6", "Note", ["Total height draws the whole stem; Logs only up to the last log. The two are never mixed."]),
      ...headings,
    ],
    names: [{ name: named.productsBy, at: "B6" }],
    entryRules: [
      {
        at: "B6",
        rule: {
          kind: "list",
          choices: [byTotalHeight.title, byLogs.title],
          strict: true,
          message: "Total height or Logs.",
        },
      },
    ],
    spills,
    tables: [{ name: PRODUCTS, at: TABLE_AT, columns: productColumns, rows: products }],
  });
}
