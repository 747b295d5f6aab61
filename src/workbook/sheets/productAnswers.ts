import { beside } from "../address";
import { call, column } from "../formula";
import { formats } from "../formats";
import type { BlockPlan, SpillPlan } from "../plan";
import { named, out, plot, PLOTS, tree, TREES } from "../tables";
import { counting, drawing, sizes } from "./designArguments";
import { productList } from "./productColumns";
import { boardList } from "./millTables";
import { productTotals } from "./productTotals";
import { heading, quoted } from "./sheetParts";
import { cubicWord, landWord } from "./unitWords";

/** Rows that the answers are kept free: products, what is left, the whole, lumber, and trees that are not in it. */
const ROWS = 24;
const COLUMNS = 8;
/** Where the totals of the tract stand beside them. */
const TOTALS_AT = COLUMNS + 1;

/** A local table knows the wood of a tree and not its form, which stays that of the national equations. */
const roadInWords = `IF(${named.productsBy}="Logs","by logs and form class","by total height"&IF(${named.localUse}="Yes",", the wood by your local table and the form by the national equations",""))`;
const woodInWords = `="All trees with a total height, per "&${landWord}&"; volume in "&${cubicWord}&" of wood"&IF(${named.localUse}="Yes",", by your local table where it holds","")`;

/** What the tally holds of each product, below one another from a cell: all trees, the harvest, and the wood by itself. */
export function productAnswers(at: string): {
  readonly headings: readonly BlockPlan[];
  readonly spills: readonly SpillPlan[];
} {
  const harvestAt = beside(at, ROWS + 2, 0);
  const woodAt = beside(harvestAt, ROWS + 2, 0);
  const title = (cell: string, words: string) =>
    heading(beside(cell, -1, 0), { formula: `=${quoted(`${words}, per `)}&${landWord}&", "&${roadInWords}` }, COLUMNS);
  return {
    headings: [
      title(at, "All trees by product"),
      title(harvestAt, "Harvest (Take is not No) by product"),
      heading(beside(woodAt, -1, 0), { formula: woodInWords }, COLUMNS),
      ...productTotals(at, beside(at, 0, TOTALS_AT), ROWS),
      ...productTotals(harvestAt, beside(harvestAt, 0, TOTALS_AT), ROWS),
    ],
    spills: [
      byProduct(out.products, at, tree.dbh),
      byProduct(out.harvestProducts, harvestAt, tree.harvestDbh),
      {
        name: out.wood,
        at: woodAt,
        formula: `=IF(COUNT(${column(TREES, tree.wood)})=0,"",${call(
          "STANDSUMMARY",
          column(TREES, tree.plot),
          counting(tree.dbh),
          column(PLOTS, plot.counted),
          named.method,
          sizes,
          column(TREES, tree.wood),
          column(TREES, tree.count),
          named.confidence,
          ...drawing,
          named.units,
        )})`,
        rows: 5,
        columns: 6,
        formats: [formats.general, formats.tenth, formats.tenth, formats.whole, formats.tenth, formats.tenth],
      },
    ],
  };
}

const byProduct = (name: string, at: string, dbh: string): SpillPlan => ({
  name,
  at,
  formula: `=${call(
    "PRODUCTTABLE",
    column(TREES, tree.plot),
    column(TREES, tree.key),
    counting(dbh),
    column(TREES, tree.height),
    column(TREES, tree.logs),
    productList,
    column(PLOTS, plot.counted),
    named.method,
    sizes,
    named.productsBy,
    column(TREES, tree.count),
    column(TREES, tree.cull),
    column(TREES, tree.formClass),
    boardList,
    named.kerf,
    named.pattern,
    named.realized,
    named.confidence,
    ...drawing,
    named.division,
    named.origin,
    `IF(${named.localUse}="Yes",${column(TREES, tree.wood)},"")`,
    named.units,
  )}`,
  rows: ROWS,
  columns: COLUMNS,
  headingLines: 2,
  formats: [
    formats.general,
    formats.general,
    formats.mbf,
    formats.mbf,
    formats.mbf,
    formats.mbf,
    formats.dollars,
    formats.dollars,
  ],
});
