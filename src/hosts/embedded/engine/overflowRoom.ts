import { SpreadsheetSkeleton } from "@univerjs/engine-render";

/**
 * The grid reckons how far a text runs over its neighbours by the width of the text alone. One that is indented reaches
 * further, and would lose its end where that lies just beyond a column; so its indent is reckoned in.
 */
export function reckonIndents(): void {
  const grid = SpreadsheetSkeleton.prototype;
  const byText = Reflect.get<SpreadsheetSkeleton, "getOverflowPosition">(grid, "getOverflowPosition");
  grid.getOverflowPosition = function withIndent(size, align, row, column, columns) {
    const indent = this.worksheet.getComposedCellStyle(row, column).pd?.l ?? 0;
    return byText.call(this, { ...size, width: size.width + indent }, align, row, column, columns);
  };
}
