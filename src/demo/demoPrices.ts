import type { TableRow } from "../workbook/plan";
import { cost, costItems, price, products } from "../workbook/tables";

const line = (product: string, low: number, likely: number, high: number, unit: string): TableRow => ({
  [price.product]: product,
  [price.low]: low,
  [price.likely]: likely,
  [price.high]: high,
  [price.unit]: unit,
});

const BY_RULE = "$ per MBF by the log rule";
const BY_LUMBER = "$ per MBF of lumber";

/** Round, invented prices. Source and date stay blank, so that every sheet keeps saying that they are invented. */
export const demoPrices: readonly TableRow[] = [
  line(products.standing, 250, 300, 350, BY_RULE),
  line(products.logs, 400, 450, 500, BY_RULE),
  line(products.lumber, 700, 900, 1000, BY_LUMBER),
];

const invented = "INVENTED - replace";
const item = (name: string, amount: number, unit: string): TableRow => ({
  [cost.item]: name,
  [cost.amount]: amount,
  [cost.unit]: unit,
  [cost.comment]: invented,
});

export const demoCosts: readonly TableRow[] = [
  item(costItems.logging, 120, BY_RULE),
  item(costItems.hauling, 60, BY_RULE),
  item(costItems.milling, 80, BY_LUMBER),
  item(costItems.hours, 20, "h per MBF of lumber"),
  item(costItems.pay, 15, "$ per h"),
  item(costItems.drying, 40, BY_LUMBER),
];
