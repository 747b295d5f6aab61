import { cubicFormulas } from "../../core/log/cubic";
import { menuRules } from "../../core/log/rules";
import { thisRow } from "../formula";
import { formats } from "../formats";
import type { ColumnPlan, EntryRule } from "../plan";
import { product, PRODUCTS } from "../tables";
import { asked, quoted } from "./sheetParts";
import { cubicWord } from "./unitWords";

const CORDS = "Cords";
const CUBIC = "Cubic";

/** The products, as a formula reads them: name, smallest small end, shortest, longest, step, how it is sold, price. */
export const productList = `${PRODUCTS}[[${product.product}]:[${product.price}]]`;

const waysOfSelling = [...menuRules.map(({ title }) => title), CORDS, CUBIC];
const soldByRule: EntryRule = {
  kind: "list",
  choices: waysOfSelling,
  strict: false,
  message: "A log rule, Cords or Cubic.",
};

const here = (heading: string) => thisRow(PRODUCTS, heading);
const soldBy = (words: readonly string[]) =>
  `OR(${words.map((word) => `${here(product.soldBy)}=${quoted(word)}`).join(",")})`;
const lengths = asked(1, 100, "Feet, from 1 to 100.");

/** What a tree may be cut into, a line for each product. */
export const productColumns: readonly ColumnPlan[] = [
  { heading: product.product, width: 20 },
  {
    heading: product.smallestEnd,
    width: 13,
    format: formats.tenth,
    rule: asked(1, 80, "Inches inside bark at the thin end, from 1 to 80."),
  },
  {
    heading: product.shortest,
    width: 12,
    format: formats.tenth,
    rule: lengths,
  },
  { heading: product.longest, width: 12, format: formats.tenth, rule: lengths },
  {
    heading: product.step,
    width: 10,
    format: formats.tenth,
    rule: asked(0.1, 100, "Feet: 2 for every second foot."),
  },
  { heading: product.soldBy, width: 20, rule: soldByRule },
  {
    heading: product.price,
    width: 10,
    format: formats.cents,
    rule: asked(0, 100_000, "Dollars, 0 or more."),
  },
  {
    heading: product.unit,
    width: 13,
    formula: `=IF(${here(product.soldBy)}="","",IF(${soldBy([CORDS])},"$ per cord",IF(${soldBy([CUBIC, ...cubicFormulas.map(({ title }) => title)])},"$ per "&${cubicWord},"$ per MBF")))`,
  },
];
