import type { PlainValue } from "../engine/plainValue";
import { invalid } from "./apiError";

const NUMBER = /^[+-]?(?:\d+\.?\d*|\.\d+)(?:e[+-]?\d+)?$/i;
const DATE_LIKE = /^\d{1,4}[/-]\d{1,2}(?:[/-]\d{1,4})?$/;

/**
 * A text given to a cell is taken as if a person typed it: "12" becomes a number unless the cell is formatted as text
 * (https://learn.microsoft.com/office/dev/add-ins/excel/excel-add-ins-ranges-set-get-values). What Excel would turn into a
 * date is refused here, so that an add-in that means a text finds out.
 */
export function asTyped(value: unknown, format: string): PlainValue {
  if (typeof value === "number" && Number.isFinite(value)) return value;
  if (typeof value === "boolean") return value;
  if (typeof value !== "string") throw invalid(`A cell cannot hold ${String(value)}.`);
  if (format === "@" || value === "") return value;
  if (value.startsWith("'")) return value.slice(1);
  if (NUMBER.test(value.trim())) return Number(value);
  if (/^(?:true|false)$/i.test(value)) return value.toLowerCase() === "true";
  if (DATE_LIKE.test(value.trim()))
    throw invalid(`Excel would turn "${value}" into a date. Format the cell as text first.`);
  return value;
}
