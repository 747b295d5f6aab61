import type { SheetPlan } from "../plan";
import { PRODUCTS } from "../tables";
import type { WorkbookContent } from "../workbookContent";
import { productColumns } from "./productColumns";
import { productAnswers } from "./productAnswers";
import { cautionLine, down, sheetPlan, title } from "./sheetParts";

export const PRODUCTS_SHEET = "Products";
const TABLE_AT = "A8";
const ANSWERS_AT = "J8";

/** What trees are cut into, and beside it what the tally holds of each. */
export function productsSheet({ products }: WorkbookContent): SheetPlan {
  const { headings, spills } = productAnswers(ANSWERS_AT);
  return sheetPlan({
    name: PRODUCTS_SHEET,
    sheetClass: "foundation",
    landscape: true,
    frozenRows: 8,
    widths: [...productColumns.map(({ width }) => width), 3, 38, 8, 14, 16, 14, 16, 14, 16],
    blocks: [
      title(PRODUCTS_SHEET),
      down("A2", "Note", [
        cautionLine("Estimate"),
        "A line for each product that you can sell: the thinnest small end inside bark, the lengths that are bought (trim left out), and how it is sold.",
        "Sold by takes a log rule, Cords or Cubic. A cord is 128 ft3 stacked, taken as 62 percent wood. The price is for 1,000 bf, one cord or one ft3.",
        "Every stem is cut into what pays best. Without prices nothing pays: then give at least a guess, the better product the higher one.",
      ]),
      ...headings,
    ],
    spills,
    tables: [{ name: PRODUCTS, at: TABLE_AT, columns: productColumns, rows: products }],
  });
}
