import { column, thisRow } from "../formula";
import { formats } from "../formats";
import type { ColumnPlan, SheetPlan } from "../plan";
import { cost, COSTS, named, price, PRICES } from "../tables";
import type { WorkbookContent } from "../workbookContent";
import { cautionLine, asked, down, heading, INVENTED, quoted, sheetPlan, title } from "./sheetParts";

export const PRICES_SHEET = "Prices";

/** What the timber brings and what the work costs, each with where the figure comes from. */
export function pricesSheet({ prices, costs }: WorkbookContent): SheetPlan {
  return sheetPlan({
    name: PRICES_SHEET,
    sheetClass: "foundation",
    landscape: true,
    frozenRows: 9,
    printTitleRow: 9,
    widths: [...priceColumns.map(({ width }) => width), 3],
    blocks: [
      title("Prices"),
      down("A2", "Attention", [{ formula: notice() }]),
      down("A3", "Note", [
        cautionLine("Prices"),
        "The sheet Compare finds a row by its words in Product or Item: keep those words. A cost left blank counts as nothing.",
        "A price per MBF belongs to one log rule: standing timber and logs to the log rule on Setup, lumber to its own tally. RULEPRICE turns an offer by another rule.",
      ]),
      heading("A7", "Prices in $", priceColumns.length),
      heading("J7", "Costs and hours", 4),
    ],
    names: [{ name: named.priceNotice, at: "A2" }],
    tables: [
      { name: PRICES, at: "A9", columns: priceColumns, rows: prices },
      {
        name: COSTS,
        at: "J9",
        columns: [
          { heading: cost.item, width: 28 },
          { heading: cost.amount, width: 11, format: formats.volume, rule: asked(0, 1e6, "A number, 0 or more.") },
          { heading: cost.unit, width: 24 },
          { heading: cost.comment, width: 40 },
        ],
        rows: costs,
      },
    ],
  });
}

const here = (heading: string) => thisRow(PRICES, heading);
const asked$ = asked(0, 100_000, "Dollars per MBF, 0 or more.");

const priceColumns: readonly ColumnPlan[] = [
  { heading: price.product, width: 24 },
  { heading: price.low, width: 10, format: formats.dollars, rule: asked$ },
  { heading: price.likely, width: 10, format: formats.dollars, rule: asked$ },
  { heading: price.high, width: 10, format: formats.dollars, rule: asked$ },
  { heading: price.unit, width: 22 },
  { heading: price.source, width: 26 },
  { heading: price.date, width: 12, format: formats.date },
  {
    heading: price.check,
    width: 40,
    formula: `=IF(${here(price.likely)}="","",IF(OR(${here(price.low)}>${here(price.likely)},AND(${here(price.high)}<>"",${here(price.likely)}>${here(price.high)})),"Low, likely and high should rise.",IF(OR(${here(price.source)}="",${here(price.date)}=""),"Say where this price is from and of what date.","")))`,
  },
];

/** Words while a price in use has no source or no date; blank once all have. */
function notice(): string {
  const lacking = (heading: string) => `(LEN(${column(PRICES, heading)})=0)`;
  const unsourced = `SUMPRODUCT((LEN(${column(PRICES, price.likely)})>0)*(${lacking(price.source)}+${lacking(price.date)}))`;
  return `=IF(${unsourced}=0,"",IF(${named.invented}="Yes",${quoted(INVENTED)},"Prices without source or date - replace"))`;
}
