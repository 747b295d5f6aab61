import { HostProblem, type WorkbookHost } from "../../workbook/host";
import { SAWING, sawingArea } from "../../workbook/sheets/sawing";
import type { SawingAnswers } from "../job/readSawing";

/**
 * Lets the sheet Sawing print down to the end of its cut list: a spreadsheet prints the blank rows of its print area too.
 * Only this add-in's functions can change the list, so it is always there when the list changes.
 */
export async function fitPrint(host: WorkbookHost, { cutRows }: SawingAnswers): Promise<void> {
  if (cutRows === null) return;
  try {
    await host.printDownTo(SAWING, sawingArea(cutRows));
  } catch (problem) {
    // A sheet that is protected or busy goes on printing as it did.
    if (!(problem instanceof HostProblem)) throw problem;
  }
}
