import { CellValueType, type ICellData } from "@univerjs/core";
import type { PlainValue } from "./plainValue";

/** What to store so that a cell holds this value or formula and nothing of what it held before. Its looks stay. */
export function cellData(value: PlainValue): ICellData {
  const bare: ICellData = { v: null, f: null, p: null, si: null, t: null };
  if (value === "") return bare;
  if (typeof value === "string" && value.startsWith("=")) return { ...bare, f: value };
  if (typeof value === "number") return { ...bare, v: value, t: CellValueType.NUMBER };
  if (typeof value === "boolean") return { ...bare, v: value ? 1 : 0, t: CellValueType.BOOLEAN };
  return { ...bare, v: value, t: CellValueType.STRING };
}
