import { addressOf, zoneAt } from "../../workbook/address";
import type { PrintedPage } from "../../workbook/host";

/** Asks how a sheet prints; what is handed back tells it once the context was synchronized. */
export function pageOf({ pageLayout }: Excel.Worksheet): () => PrintedPage {
  pageLayout.load("orientation,zoom");
  const area = pageLayout.getPrintAreaOrNullObject().load("address");
  const titles = pageLayout.getPrintTitleRowsOrNullObject().load("address");
  return () => {
    const printed = area.isNullObject ? undefined : oneRange(area.address);
    const rows = titles.isNullObject ? [] : rowsIn(titles.address);
    const [first, last = first] = rows;
    const { scale } = pageLayout.zoom;
    return {
      landscape: pageLayout.orientation === "Landscape",
      ...(pageLayout.zoom.horizontalFitToPages === undefined && { scale: scale ?? 100 }),
      ...(printed !== undefined && { area: printed }),
      ...(first !== undefined && last !== undefined && { titleRows: [first, last] as const }),
    };
  };
}

/** An area of several ranges is none that a copy could have. */
function oneRange(address: string): string | undefined {
  return address.includes(",") ? undefined : addressOf(zoneAt(address));
}

/** The rows of "Sawing!$20:$20", or of "Sawing!A20:XFD20". */
const rowsIn = (address: string): readonly number[] =>
  [...address.slice(address.lastIndexOf("!") + 1).matchAll(/\d+/g)].map(([digits]) => Number(digits));
