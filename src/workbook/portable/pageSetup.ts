import type { WriteSheet } from "hucre/xlsx";
import type { PrintedPage } from "../host";

/** How a page of a file is set up. */
export const pageSetup = ({
  landscape,
  scale,
  area,
  titleRows,
}: PrintedPage): NonNullable<WriteSheet["pageSetup"]> => ({
  orientation: landscape ? "landscape" : "portrait",
  ...(scale === undefined ? { fitToPage: true, fitToWidth: 1, fitToHeight: 0 } : { scale }),
  ...(area !== undefined && { printArea: area.replace(/([A-Z]+)(\d+)/g, "$$$1$$$2") }),
  ...(titleRows && { printTitlesRow: `$${titleRows[0]}:$${titleRows[1]}` }),
});
