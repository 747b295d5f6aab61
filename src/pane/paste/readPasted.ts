import Papa from "papaparse";
import { pastedFields, type PastedColumns } from "../../workbook/pastedColumns";
import type { LineNote } from "../../workbook/lineNote";
import { pastedCells, pastedTally, type PastedTally } from "../../workbook/pastedTally";

/**
 * Reads a pasted tally, with its columns as the user matched them where he did. A matched text is put into the order
 * that is taken without headings, and line numbers are told as in the text that was pasted.
 */
export function readPasted(text: string, columns: PastedColumns | undefined): PastedTally {
  const found = pastedTally(text);
  if (!columns || found.kind === "points") return found;
  const heading = found.match.headingRows;
  const rows = pastedRows(text).slice(heading);
  const arranged = [
    [...pastedFields],
    ...rows.map((cells) => pastedFields.map((field) => cells[columns[field] ?? -1] ?? "")),
  ];
  const read = pastedTally(Papa.unparse(arranged, { delimiter: "\t", newline: "\n" }));
  const asPasted = (note: LineNote): LineNote => {
    const line = note.line === 0 ? 0 : note.line - 1 + heading;
    return { ...note, line, text: line === 0 ? note.text : (pastedRows(text)[line - 1] ?? []).join(", ") };
  };
  return {
    ...read,
    match: { ...found.match, columns },
    rejects: read.rejects.map(asPasted),
    warnings: read.warnings.map(asPasted),
  };
}

/** The cells of the pasted text, line by line. */
export const pastedRows = (text: string): readonly (readonly string[])[] => pastedCells(text).data;
