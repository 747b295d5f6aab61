import type { IStyleData } from "@univerjs/core";
import { clientObject } from "./clientObject";
import * as look from "./looks";
import type { Locate } from "./places";
import type { Batch } from "./requestContext";

/** Excel measures columns and rows in points, the grid in pixels: 96 pixels or 72 points to the inch. */
const PIXELS_PER_POINT = 96 / 72;

/** https://learn.microsoft.com/office/dev/add-ins/excel/excel-add-ins-ranges-set-format */
export function rangeFormatOf(batch: Batch, locate: Locate): Excel.RangeFormat {
  const { cells } = batch.engine;
  const style = (s: IStyleData) => cells.dress(locate(), () => s);
  return clientObject<Excel.RangeFormat>(batch, {
    kind: "Excel.RangeFormat",
    read: {
      columnWidth: () => cells.worksheet(locate().sheetId).getColumnWidth(locate().column) / PIXELS_PER_POINT,
      rowHeight: () => cells.worksheet(locate().sheetId).getRowHeight(locate().row) / PIXELS_PER_POINT,
    },
    write: {
      columnWidth: (points) => cells.setColumnWidth(locate(), Math.round(points * PIXELS_PER_POINT)),
      rowHeight: (points) => cells.setRowHeight(locate(), Math.round(points * PIXELS_PER_POINT)),
      wrapText: (on) => style(look.wrapped(on)),
      horizontalAlignment: (word) => style(look.horizontal(word)),
      verticalAlignment: (word) => style(look.vertical(word)),
      indentLevel: (level) => style(look.indented(level)),
    },
    members: {
      get font() {
        return clientObject<Excel.RangeFont>(batch, {
          kind: "Excel.RangeFont",
          write: {
            bold: (on) => style(look.bold(on)),
            italic: (on) => style(look.italic(on)),
            color: (color) => style(look.fontColor(color)),
            size: (fs) => style({ fs }),
            name: (ff) => style({ ff }),
          },
        });
      },
      get fill() {
        const fill: Excel.RangeFill = clientObject<Excel.RangeFill>(batch, {
          kind: "Excel.RangeFill",
          write: { color: (color) => style(look.fillColor(color)) },
          members: { clear: () => batch.enqueue(fill, () => style({ bg: null })) },
        });
        return fill;
      },
      get borders() {
        return clientObject<Excel.RangeBorderCollection>(batch, {
          kind: "Excel.RangeBorderCollection",
          members: { getItem: (edge) => edgeOf(batch, locate, edge) },
        });
      },
    },
  });
}

/** The edge of a whole range: its top edge is the top of its first row only. */
function edgeOf(batch: Batch, locate: Locate, edge: string): Excel.RangeBorder {
  const shown: look.EdgeLook = {};
  const draw = (change: look.EdgeLook) => {
    const place = locate();
    const s = look.border(edge, Object.assign(shown, change));
    batch.engine.cells.dress(place, (i, j) => (onEdge(edge, i, j, place.rows, place.columns) ? s : undefined));
  };
  return clientObject<Excel.RangeBorder>(batch, {
    kind: "Excel.RangeBorder",
    write: {
      style: (style) => draw({ style }),
      color: (color) => draw({ color }),
      weight: (weight) => draw({ weight }),
    },
  });
}

function onEdge(edge: string, row: number, column: number, rows: number, columns: number): boolean {
  if (edge === "EdgeTop") return row === 0;
  if (edge === "EdgeBottom") return row === rows - 1;
  return edge === "EdgeLeft" ? column === 0 : column === columns - 1;
}
