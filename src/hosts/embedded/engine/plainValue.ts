import { CellValueType, type ICellData, type Nullable } from "@univerjs/core";

/** What a cell holds once it is calculated; a blank is an empty text, an error its own text. */
export type PlainValue = string | number | boolean;

export const holdsValue = (cell: Nullable<ICellData>): boolean => cell?.v != null || cell?.p != null;

/** The value behind a stored cell, at full precision. */
export function plainValue(cell: Nullable<ICellData>): PlainValue {
  if (cell?.p && cell.v == null) return (cell.p.body?.dataStream ?? "").replace(/\r\n$/, "");
  if (cell?.v == null) return "";
  if (cell.t === CellValueType.BOOLEAN) return Boolean(Number(cell.v));
  if (cell.t === CellValueType.NUMBER) return Number(cell.v);
  return cell.v;
}
