/** Tables of logs, of the boards sawn from them, and of stems that are bucked. Names and headings are typed once, here. */
export const LOGS = "Logs";
export const BOARDS = "Boards";
export const STEM_FLAWS = "StemFlaws";
export const PRODUCTS = "Products";

export const log = {
  log: "Log",
  species: "Species",
  smallEnd: "Small end inside bark in",
  second: "Second reading in",
  largeEnd: "Large end in",
  length: "Length ft",
  /** Out of the straight line between the ends; blank for a straight log. */
  sweep: "Sweep in",
  deduction: "Deduction pct",
  use: "Use",
  note: "Note",
  scalingDiameter: "Scaling diameter in",
  scalingLength: "Scaling length ft",
  gross: "Gross bf",
  net: "Net bf",
  lumber: "Lumber bf",
  overrun: "Overrun pct",
  sawn: "Sawn bf",
  weight: "Weight lb",
  check: "Check",
} as const;

/** Boards that were sawn, a line for each size and log. */
export const sawn = {
  date: "Date",
  log: "Log",
  species: "Species",
  thickness: "Thickness in",
  width: "Width in",
  length: "Length ft",
  pieces: "Pieces",
  grade: "Grade note",
  stack: "Stack",
  boardFeet: "Board feet",
  check: "Check",
} as const;

/** What trees are cut into, in the order of columns in which the functions read a product. */
export const product = {
  product: "Product",
  smallestEnd: "Small end in",
  shortest: "Shortest ft",
  longest: "Longest ft",
  step: "Step ft",
  soldBy: "Sold by",
  price: "Price",
  unit: "Price unit",
} as const;

/** Parts of the stem on the sheet Bucking that no log may hold. */
export const flaw = { from: "From ft", to: "To ft", what: "What" } as const;
