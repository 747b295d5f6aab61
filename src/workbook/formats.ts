/** Number formats of the workbook. A margin decides how much is shown; the full value stays underneath. */
export const formats = {
  text: "@",
  general: "General",
  whole: "0",
  tenth: "0.0",
  hundredth: "0.00",
  /** Coefficients of a fit, which may be small. */
  fitted: "0.0000######",
  thickness: "0.000",
  /** Limits of a mill, whose scale may step by sixteenths or by less. */
  limit: "0.0####",
  volume: "#,##0",
  mbf: "#,##0.0",
  dollars: "$#,##0",
  cents: "$#,##0.00",
  date: "yyyy-mm-dd",
} as const;
