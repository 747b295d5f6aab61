import type { IStyleData } from "@univerjs/core";
import type { Place } from "../engine/place";
import { ApiError } from "./apiError";
import { clientObject } from "./clientObject";
import type { Engine } from "./engine";
import * as look from "./looks";
import type { Batch } from "./requestContext";

/**
 * Named cell styles. The grid has none, so they are kept in the workbook's own notes, and a cell that is given a style
 * takes its looks. A style that is changed later does not repaint the cells that already have it, as Excel would.
 * https://learn.microsoft.com/javascript/api/excel/excel.stylecollection
 */
export function stylesOf(batch: Batch): Excel.StyleCollection {
  const { engine } = batch;
  const styles: Excel.StyleCollection = clientObject<Excel.StyleCollection>(batch, {
    kind: "Excel.StyleCollection",
    read: { items: () => Object.keys(notes(engine).styles ?? {}).map((name) => styleOf(batch, name)) },
    members: {
      add: (name) =>
        batch.enqueue(styles, () => {
          if (find(engine, name)) throw new ApiError("ItemAlreadyExists", `There is a style "${name}" already.`);
          keep(engine, name, {});
        }),
      getItem: (name) => styleOf(batch, name),
    },
  });
  return styles;
}

export function applyStyle(engine: Engine, place: Place, name: string): void {
  if (name === "Normal") {
    engine.cells.dress(place, () => null);
    return;
  }
  const s = existing(engine, name);
  engine.cells.dress(place, () => s);
  if (s.fs !== undefined && s.fs > USUAL_SIZE)
    engine.cells.setRowHeight(place, Math.ceil(s.fs * PIXELS_PER_POINT_OF_TEXT));
}

/** Rows grow with their text in Excel; the grid has to be told. Points of text to pixels of row, with room to breathe. */
const PIXELS_PER_POINT_OF_TEXT = 1.9;
const USUAL_SIZE = 12;

function styleOf(batch: Batch, name: string): Excel.Style {
  const { engine } = batch;
  const change = (style: IStyleData) => keep(engine, name, merged(existing(engine, name), style));
  const edges = new Map<string, look.EdgeLook>();
  const draw = (edge: string, part: look.EdgeLook) => {
    const whole = { ...edges.get(edge), ...part };
    edges.set(edge, whole);
    change(look.border(edge, whole));
  };
  return clientObject<Excel.Style>(batch, {
    kind: "Excel.Style",
    read: { name: () => (existing(engine, name), name) },
    write: {
      wrapText: (on) => change(look.wrapped(on)),
      horizontalAlignment: (word) => change(look.horizontal(word)),
      verticalAlignment: (word) => change(look.vertical(word)),
      indentLevel: (level) => change(look.indented(level)),
      includeNumber: () => void existing(engine, name),
      includeProtection: () => void existing(engine, name),
      includeAlignment: () => void existing(engine, name),
      includeFont: () => void existing(engine, name),
      includeBorder: () => void existing(engine, name),
      includePatterns: () => void existing(engine, name),
    },
    members: {
      get font() {
        return clientObject<Excel.RangeFont>(batch, {
          kind: "Excel.RangeFont",
          write: {
            bold: (on) => change(look.bold(on)),
            italic: (on) => change(look.italic(on)),
            color: (color) => change(look.fontColor(color)),
            size: (fs) => change({ fs }),
            name: (ff) => change({ ff }),
          },
        });
      },
      get fill() {
        return clientObject<Excel.RangeFill>(batch, {
          kind: "Excel.RangeFill",
          write: { color: (color) => change(look.fillColor(color)) },
        });
      },
      get borders() {
        return clientObject<Excel.RangeBorderCollection>(batch, {
          kind: "Excel.RangeBorderCollection",
          members: {
            getItem: (edge) =>
              clientObject<Excel.RangeBorder>(batch, {
                kind: "Excel.RangeBorder",
                write: {
                  style: (style) => draw(edge, { style }),
                  color: (color) => draw(edge, { color }),
                  weight: (weight) => draw(edge, { weight }),
                },
              }),
          },
        });
      },
    },
  });
}

type StyleNotes = Readonly<Record<string, IStyleData>>;

const notes = ({ cells }: Engine): { styles?: StyleNotes } =>
  (cells.workbook.getCustomMetadata() ?? {}) as { styles?: StyleNotes };

const find = (engine: Engine, name: string): IStyleData | undefined => notes(engine).styles?.[name];

function existing(engine: Engine, name: string): IStyleData {
  const style = find(engine, name);
  if (!style) throw new ApiError("ItemNotFound", `There is no style "${name}".`);
  return style;
}

function keep(engine: Engine, name: string, style: IStyleData): void {
  const before = notes(engine);
  engine.cells.workbook.setCustomMetadata({ ...before, styles: { ...before.styles, [name]: style } });
}

const merged = (before: IStyleData, change: IStyleData): IStyleData => ({
  ...before,
  ...change,
  ...(change.bd && { bd: { ...before.bd, ...change.bd } }),
});
