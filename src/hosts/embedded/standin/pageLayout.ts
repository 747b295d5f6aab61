import { invalid } from "./apiError";
import { clientObject } from "./clientObject";
import { locates } from "./places";
import type { Batch } from "./requestContext";
import type { FindSheet } from "./places";

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
        if (orientation !== "Portrait" && orientation !== "Landscape")
          throw invalid("A page stands in Portrait or in Landscape.");
        keep({ orientation });
      },
    },
    members: {
      setPrintTitleRows: (range) =>
        batch.enqueue(layout, () => {
          keep({ titleRows: typeof range === "string" ? range : rowsOf(range) });
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

function rowsOf(range: Excel.Range): string {
  const place = locates.get(range)?.();
  if (!place) throw invalid("The rows that repeat in print are a range or a text.");
  return `$${place.row + 1}:$${place.row + place.rows}`;
}
