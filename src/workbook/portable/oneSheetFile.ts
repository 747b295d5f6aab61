import { writeXlsx } from "hucre/xlsx";
import { plainNumber } from "../plainNumber";
import { base64Of } from "./base64";
import type { FieldTallyFile } from "./fieldTallyFile";

/** Columns that stay texts, whatever they look like. */
const TEXTS = ["stand", "species", "crew", "note", "date"];

/** Rows of text as a workbook of one sheet, numbers as numbers, so that a spreadsheet saves the same text again. */
export async function oneSheetFile(
  stand: string,
  what: string,
  rows: readonly (readonly string[])[],
): Promise<FieldTallyFile> {
  const [names = [], ...lines] = rows;
  const cells = lines.map((line) =>
    line.map((cell, at) => (cell === "" ? null : TEXTS.includes(names[at] ?? "") ? cell : (plainNumber(cell) ?? cell))),
  );
  const typed = cells.flatMap((line, r) =>
    line.flatMap((value, c) =>
      typeof value === "string"
        ? [[`${r + 1},${c}`, { value, type: "string" as const, style: { numFmt: "@" } }] as const]
        : [],
    ),
  );
  const file = await writeXlsx({ sheets: [{ name: what, rows: [[...names], ...cells], cells: new Map(typed) }] });
  const plain = stand.replace(/[^\p{L}\p{N} ._-]/gu, "").trim() || "Woodlot";
  return { base64: base64Of(file), fileName: `${plain} - ${what}.xlsx` };
}
