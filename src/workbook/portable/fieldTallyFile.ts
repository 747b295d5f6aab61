import { fieldTallySheet, type FieldTallyContent } from "../sheets/fieldTally";
import { base64Of } from "./base64";
import { planFile } from "./planFile";

/** A workbook of one sheet that calculates by itself, wherever there is a spreadsheet. */
export interface FieldTallyFile {
  readonly base64: string;
  readonly fileName: string;
}

export async function fieldTallyFile(
  content: FieldTallyContent & Required<Pick<FieldTallyContent, "alone">>,
): Promise<FieldTallyFile> {
  const plain = content.alone.stand.replace(/[^\p{L}\p{N} ._-]/gu, "").trim() || "Woodlot";
  return {
    base64: base64Of(await planFile(fieldTallySheet(content))),
    fileName: `${plain} - field tally.xlsx`,
  };
}
