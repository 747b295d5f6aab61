import type { PrintPlan, SheetClass, SheetPlan } from "../../workbook/plan";

/** Colours of the tabs, by what a sheet is for; the order of the sheets says the same. */
const TAB_COLORS: Readonly<Record<SheetClass, string>> = {
  control: "#595959",
  foundation: "#145B54",
  presentation: "#64258C",
};

const FOOTER = "&A - page &P of &N - Estimate - see Sources and cautions";

/** How a sheet looks on the screen and on paper. */
export function layPage(
  sheet: Excel.Worksheet,
  { sheetClass, frozenRows, landscape, printTitleRow, print }: SheetPlan,
): void {
  sheet.tabColor = TAB_COLORS[sheetClass];
  sheet.showGridlines = sheetClass === "foundation";
  if (frozenRows > 0) sheet.freezePanes.freezeRows(frozenRows);
  sheet.pageLayout.orientation = landscape ? "Landscape" : "Portrait";
  sheet.pageLayout.headersFooters.defaultForAllPages.centerFooter = FOOTER;
  if (printTitleRow !== undefined) sheet.pageLayout.setPrintTitleRows(`$${printTitleRow}:$${printTitleRow}`);
  if (print) layPrint(sheet, print);
}

const POINTS_PER_INCH = 72;

/** Pages that begin where the plan says. A sheet that is laid again loses the breaks it had. */
function layPrint(
  sheet: Excel.Worksheet,
  { titleRows: [first, last], area, breaks, gridlines, margin, scale }: PrintPlan,
): void {
  const { pageLayout, horizontalPageBreaks } = sheet;
  pageLayout.setPrintArea(area);
  pageLayout.setPrintTitleRows(`$${first}:$${last}`);
  pageLayout.zoom = scale === undefined ? { horizontalFitToPages: 1 } : { scale };
  pageLayout.printGridlines = gridlines;
  pageLayout.leftMargin = margin * POINTS_PER_INCH;
  pageLayout.rightMargin = margin * POINTS_PER_INCH;
  pageLayout.topMargin = margin * POINTS_PER_INCH;
  horizontalPageBreaks.removePageBreaks();
  for (const row of breaks) horizontalPageBreaks.add(`A${row}`);
}
