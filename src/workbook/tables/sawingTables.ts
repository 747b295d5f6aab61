/** Tables of what is wanted from a log, and of the mill. Names and headings are typed once, here. */
export const BOARD_SIZES = "BoardSizes";
export const MILL = "Mill";
export const CUT_LIST = "CutList";

/** Products that are tried beside the boards wanted. */
export const MORE_PRODUCTS = "MoreProducts";

/** Grades that the owner expects of his lumber, and what else he knows of a plan's worth. */
export const GRADE_SHARES = "GradeShares";
export const SAW_RATES = "SawRates";

/** Boards that are wanted from a log. */
export const board = {
  /** Dry and planed; where it is given, the thickness at the saw is worked out from it. */
  finished: "Finished thickness in",
  /** Typed as it comes off the saw, where nothing is to be worked out. */
  sawn: "Sawn thickness in",
  /** What the plans go by. */
  thickness: "Thickness in",
  width: "Width in",
  length: "Length ft",
  product: "Product",
  each: "Price per piece",
  price: "Price per MBF",
} as const;

/** Pieces of a building that are wanted. */
export const wanted = {
  piece: "Piece",
  thickness: "Thickness in",
  width: "Width in",
  length: "Length ft",
  count: "Count",
  boardFeet: "Board feet",
  check: "Check",
} as const;

export const gradeShare = { grade: "Grade", share: "Share pct", price: "Price per MBF" } as const;

export const sawRate = { rate: "Rate", value: "Value", unit: "Unit" } as const;

export const mill = {
  limit: "Limit",
  value: "Value",
  unit: "Unit",
  comment: "Comment",
} as const;
