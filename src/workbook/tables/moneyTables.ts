/** Tables of prices and costs. Names and headings are typed once, here. */
export const PRICES = "Prices";
export const COSTS = "Costs";

export const price = {
  product: "Product",
  low: "Low",
  likely: "Likely",
  high: "High",
  unit: "Unit",
  source: "Source",
  date: "Date",
  check: "Check",
} as const;

export const cost = {
  item: "Item",
  amount: "Amount",
  unit: "Unit",
  comment: "Comment",
} as const;

/** Products and costs that the sheet Compare looks up by these words. */
export const products = {
  standing: "Standing timber",
  logs: "Logs, delivered",
  lumber: "Rough lumber, green",
} as const;

export const costItems = {
  logging: "Felling and skidding",
  hauling: "Hauling logs to the buyer",
  milling: "Mill, blades and fuel",
  hours: "Own hours at the mill",
  pay: "Pay for an own hour",
  drying: "Stickers, yard and selling",
} as const;
