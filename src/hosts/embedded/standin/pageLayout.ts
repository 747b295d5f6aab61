import { addressOf, zoneAt } from "../../../workbook/address";
import { invalid } from "./apiError";
import { clientObject } from "./clientObject";
import { locates, quoted } from "./places";
import { rangeOf } from "./range";
import type { Batch } from "./requestContext";
import type { FindSheet } from "./places";

/**
 * How a sheet prints. This page prints nothing, so the settings are checked and kept with the sheet, where a test can
 * find them. https://learn.microsoft.com/javascript/api/excel/excel.pagelayout
 */
export function pageLayoutOf(batch: Batch, find: FindSheet): Excel.PageLayout {
  const kept = () => keptPrint(batch, find);
  const keep = (setting: Record<string, unknown>) => keepPrint(batch, find, () => setting);
  const layout: Excel.PageLayout = clientObject<Excel.PageLayout>(batch, {
    kind: "Excel.PageLayout",
    read: {
      orientation: () => kept().orientation ?? "Portrait",
      zoom: () => kept().zoom ?? { scale: 100 },
    },
    write: {
      orientation: (orientation) => {
        if (orientation !== "Portrait" && orientation !== "Landscape")
          throw invalid("A page stands in Portrait or in Landscape.");
        keep({ orientation });
      },
      zoom: (zoom) => {
        if (zoom.scale !== undefined && (zoom.scale < 10 || zoom.scale > 400))
          throw invalid("A page is printed at 10 to 400 percent.");
        keep({ zoom });
      },
      printGridlines: (printGridlines) => keep({ printGridlines }),
      leftMargin: (leftMargin) => keep({ leftMargin: margin(leftMargin) }),
      rightMargin: (rightMargin) => keep({ rightMargin: margin(rightMargin) }),
      topMargin: (topMargin) => keep({ topMargin: margin(topMargin) }),
    },
    members: {
      setPrintTitleRows: (range) =>
        batch.enqueue(layout, () => {
          keep({ titleRows: typeof range === "string" ? range : rowsOf(range) });
        }),
      setPrintArea: (range) =>
        batch.enqueue(layout, () => {
          const place = typeof range === "string" ? zoneAt(range) : locates.get(range)?.();
          if (!place) throw invalid("What is printed is a range or its address.");
          keep({ area: addressOf(place) });
        }),
      getPrintAreaOrNullObject: () =>
        clientObject<Excel.RangeAreas>(batch, {
          kind: "Excel.RangeAreas",
          exists: () => kept().area !== undefined,
          read: {
            address: () => `${quoted(batch.engine.cells.worksheet(find()).getSheetName())}!${kept().area ?? ""}`,
          },
        }),
      getPrintTitleRowsOrNullObject: () => {
        const place = () => {
          const [first = 1, last = first] = (kept().titleRows ?? "").match(/\d+/g)?.map(Number) ?? [];
          const columns = batch.engine.cells.worksheet(find()).getMaxColumns();
          return { sheetId: find(), row: first - 1, column: 0, rows: last - first + 1, columns };
        };
        return rangeOf(batch, place, () => kept().titleRows !== undefined);
      },
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

interface KeptPrint {
  readonly orientation?: Excel.PageOrientation;
  readonly zoom?: Excel.PageLayoutZoomOptions;
  readonly area?: string;
  readonly titleRows?: string;
}

const keptPrint = (batch: Batch, find: FindSheet): KeptPrint => {
  const kept = batch.engine.cells.worksheet(find()).getCustomMetadata() as { print?: KeptPrint } | undefined;
  return kept?.print ?? {};
};

/** Changes what a sheet keeps of its print, given what it kept before. */
export function keepPrint(
  batch: Batch,
  find: FindSheet,
  change: (before: Record<string, unknown>) => Record<string, unknown>,
): void {
  const sheet = batch.engine.cells.worksheet(find());
  const kept = sheet.getCustomMetadata() as { print?: Record<string, unknown> } | undefined;
  sheet.setCustomMetadata({ ...kept, print: { ...kept?.print, ...change(kept?.print ?? {}) } });
}

/** In points. */
function margin(points: number): number {
  if (!(points >= 0)) throw invalid("A margin is 0 points or more.");
  return points;
}

function rowsOf(range: Excel.Range): string {
  const place = locates.get(range)?.();
  if (!place) throw invalid("The rows that repeat in print are a range or a text.");
  return `$${place.row + 1}:$${place.row + place.rows}`;
}
