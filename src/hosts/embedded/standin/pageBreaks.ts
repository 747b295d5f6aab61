import { zoneAt } from "../../../workbook/address";
import { clientObject } from "./clientObject";
import { keepPrint } from "./pageLayout";
import { locates, type FindSheet } from "./places";
import type { Batch } from "./requestContext";

/**
 * Rows with which a new page begins, kept with the sheet as the rest of its print is.
 * https://learn.microsoft.com/javascript/api/excel/excel.pagebreakcollection
 */
export function pageBreaksOf(batch: Batch, find: FindSheet): Excel.PageBreakCollection {
  const breaks: Excel.PageBreakCollection = clientObject<Excel.PageBreakCollection>(batch, {
    kind: "Excel.PageBreakCollection",
    members: {
      add: (range) => {
        batch.enqueue(breaks, () => {
          const row = typeof range === "string" ? zoneAt(range).row : (locates.get(range)?.().row ?? 0);
          keepPrint(batch, find, ({ breaks: before = [] }) => ({ breaks: [...(before as number[]), row + 1] }));
        });
        return clientObject<Excel.PageBreak>(batch, { kind: "Excel.PageBreak" });
      },
      removePageBreaks: () => batch.enqueue(breaks, () => keepPrint(batch, find, () => ({ breaks: [] }))),
    },
  });
  return breaks;
}
