import type { CellValue } from "../../workbook/plan";

/** What a cell holds, as a text, a number or a yes; a blank is "", null and no. */
export const text = (value: CellValue | undefined) =>
  value === null || value === undefined ? "" : String(value).trim();

export const number = (value: CellValue | undefined) =>
  typeof value === "number" && Number.isFinite(value) ? value : null;

/** Above 0, since a blank may arrive as 0. */
export const positive = (value: CellValue | undefined) => {
  const found = number(value);
  return found !== null && found > 0 ? found : null;
};

export const yes = (value: CellValue | undefined) => value === true || /^(yes|y|true|1)$/i.test(text(value));
