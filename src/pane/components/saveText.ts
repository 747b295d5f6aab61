/** A text that a browser may save as a file. */
export interface TextFile {
  readonly fileName: string;
  /** Its media type, such as "text/csv". */
  readonly type: string;
}

/** How long the browser may take to fetch the text after the press, before it is let go. [ms] */
const KEPT = 60_000;

/**
 * Hands a text to the browser as a file to be saved. Some spreadsheets let no pane save files and do not tell so, which
 * is why the text can always be copied as well.
 */
export function saveText(text: string, { fileName, type }: TextFile): void {
  const address = URL.createObjectURL(new Blob([text], { type: `${type};charset=utf-8` }));
  const link = document.createElement("a");
  link.href = address;
  link.download = fileName;
  document.body.append(link);
  link.click();
  link.remove();
  setTimeout(() => URL.revokeObjectURL(address), KEPT);
}

/** A file's name from that of a stand, without signs that no disk takes. */
export const fileNameOf = (stand: string, ending: string): string =>
  `${stand.replace(/[^\p{L}\p{N} ._-]/gu, "").trim() || "Woodlot"}${ending}`;
