import type { IWorkbookData } from "@univerjs/core";

const FORMAT = "woodlot-workbook";
const VERSION = 1;

/** A workbook as this page keeps it, in the browser or in a file. */
export interface SavedWorkbook {
  readonly format: typeof FORMAT;
  readonly version: typeof VERSION;
  readonly savedAt: string;
  readonly workbook: IWorkbookData;
}

/** Why something saved cannot be opened, in a sentence for a person. */
export class CannotOpen extends Error {}

export const saved = (workbook: IWorkbookData, savedAt: string): SavedWorkbook => ({
  format: FORMAT,
  version: VERSION,
  savedAt,
  workbook,
});

/** Reads what was saved, whoever saved it, and says what is wrong with what cannot be read. */
export function opened(given: unknown): SavedWorkbook {
  const one = given as Partial<SavedWorkbook> | null | undefined;
  if (typeof one !== "object" || one === null || one.format !== FORMAT) {
    throw new CannotOpen("This is not a workbook saved from this page.");
  }
  if (one.version !== VERSION) {
    throw new CannotOpen(`This workbook was saved by another version of this page (${String(one.version)}).`);
  }
  const { sheets, sheetOrder } = one.workbook ?? {};
  const whole =
    Array.isArray(sheetOrder) &&
    sheetOrder.length > 0 &&
    sheets &&
    sheetOrder.every((id) => typeof sheets[id] === "object");
  if (!whole) throw new CannotOpen("This saved workbook is damaged: sheets are missing.");
  return one as SavedWorkbook;
}

export function openedFile(text: string): SavedWorkbook {
  let given: unknown;
  try {
    given = JSON.parse(text);
  } catch {
    throw new CannotOpen("This file is damaged or is not a workbook saved from this page.");
  }
  return opened(given);
}
