import { invalid } from "./apiError";
import { clientObject } from "./clientObject";
import { locates } from "./range";
import type { Batch } from "./requestContext";
import type { FindSheet } from "./worksheet";

/**
 * How a sheet prints. This page prints nothing, so the settings are checked and kept with the sheet, where a test can
 * find them. https://learn.microsoft.com/javascript/api/excel/excel.pagelayout
 */
export function pageLayoutOf(batch: Batch, find: FindSheet): Excel.PageLayout {
  const { cells } = batch.engine;
  const keep = (setting: Record<string, unknown>) => {
    const sheet = cells.worksheet(find());
    const before = sheet.getCustomMetadata() as { print?: object } | undefined;
    sheet.setCustomMetadata({ ...before, print: { ...before?.print, ...setting } });
  };
  const layout: Excel.PageLayout = clientObject<Excel.PageLayout>(batch, {
    kind: "Excel.PageLayout",
    write: {
      orientation: (orientation) => {
        if (orientation !== "Portrait" && orientation !== "Landscape") throw invalid(`No page orientation: ${orientation}`);
        keep({ orientation });
      },
    },
    members: {
      setPrintTitleRows: (range) =>
        batch.enqueue(layout, () => {
          const place = typeof range === "string" ? undefined : locates.get(range)?.();
          keep({ titleRows: place ? `${place.row + 1}:${place.row + place.rows}` : String(range) });
        }),
      get headersFooters() {
        return clientObject<Excel.HeaderFooterGroup>(batch, {
          kind: "Excel.HeaderFooterGroup",
          members: {
            get defaultForAllPages() {
              return clientObject<Excel.HeaderFooter>(batch, {
                kind: "Excel.HeaderFooter",
                write: { centerFooter: (centerFooter) => keep({ centerFooter }) },
              });
            },
          },
        });
      },
    },
  });
  return layout;
}
