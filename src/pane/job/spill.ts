import { HostProblem, type WorkbookHost } from "../../workbook/host";
import type { CellValue } from "../../workbook/plan";

/** An answer read from the sheet: its rows, or the reason why there are none. */
export type Spill =
  | { readonly kind: "rows"; readonly rows: readonly (readonly CellValue[])[] }
  | {
      readonly kind: "none";
      readonly because: string;
      /** What the cell shows, where that is an error. */ readonly error?: string;
    };

/**
 * Reads a spilled answer; an error cell and a missing name become a sentence, since one bad answer need not hide the rest.
 *
 * @param words what an error means here, where that differs from what it means on the sheet Stand
 */
export async function readAnswer(
  host: WorkbookHost,
  name: string,
  words: Readonly<Record<string, string>> = {},
): Promise<Spill> {
  try {
    const rows = await host.readSpill(name);
    const first = rows[0]?.[0];
    if (first === undefined || first === null || first === "")
      return { kind: "none", because: "The sheet has no answer yet." };
    if (typeof first === "string" && first.startsWith("#"))
      return { kind: "none", because: words[first] ?? sentenceFor(first), error: first };
    return { kind: "rows", rows };
  } catch (problem) {
    if (problem instanceof HostProblem && problem.kind === "missing name")
      return { kind: "none", because: problem.message };
    throw problem;
  }
}

/** What an error in a cell means, and what to do next. The cell's own flag tells the details. */
const sentenceFor = (error: string) =>
  meanings[error] ?? `The sheet shows ${error} here. Select the cell on its sheet and open its flag to read why.`;

const meanings: Readonly<Record<string, string>> = {
  "#NAME?":
    "The sheet shows #NAME?: the add-in's functions were not there when it was calculated. Press Ctrl+Alt+F9 to calculate again.",
  "#SPILL!": "Something stands in the way of this answer on its sheet. Clear the cells below and to the right of it.",
  "#N/A": "There is not enough data yet: a margin of error needs at least 2 points with their trees.",
  "#VALUE!": "Something that was typed cannot be used, so the sheet shows #VALUE!. Check names the rows to mend.",
  "#BUSY!": "The sheet is still calculating.",
  "#CALC!": "The sheet is still calculating.",
};
