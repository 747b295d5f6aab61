import type { CellValue } from "../../workbook/plan";
import { number, text } from "../job/cells";

export type Corner = readonly [x: number, y: number];

/** A closed line in the end view of a log, the pith at 0, 0 and y counted upwards. */
export interface LaidOutline {
  /** As the sheet has it, such as "Small end" or "3: 1 x 6 x 16". */
  readonly piece: string;
  readonly grain: string;
  readonly corners: readonly Corner[];
}

export interface LaidBoard extends LaidOutline {
  readonly number: number;
}

export interface EndView {
  readonly ends: readonly LaidOutline[];
  readonly boards: readonly LaidBoard[];
  /** From the pith to the outermost corner; 0 when there is nothing to see. */
  readonly reach: number;
}

/** The outlines of a layout, row by row: x, y, piece, grain. Rows without a place part one outline from the next. */
export function endViewOf(rows: readonly (readonly CellValue[])[]): EndView {
  const found = new Map<string, { grain: string; corners: Corner[] }>();
  for (const [xCell, yCell, pieceCell, grainCell] of rows) {
    const [x, y, piece] = [number(xCell), number(yCell), text(pieceCell)];
    if (x === null || y === null || piece === "") continue;
    const outline = found.get(piece) ?? { grain: text(grainCell), corners: [] };
    outline.corners.push([x, y]);
    found.set(piece, outline);
  }
  const outlines: readonly LaidOutline[] = [...found].map(([piece, rest]) => ({
    piece,
    ...rest,
  }));
  const numbered = outlines.map((outline) => ({
    outline,
    number: Number.parseInt(outline.piece, 10),
  }));
  return {
    ends: numbered.filter((one) => Number.isNaN(one.number)).map(({ outline }) => outline),
    boards: numbered.flatMap(({ outline, number: place }) =>
      Number.isNaN(place) ? [] : [{ ...outline, number: place }],
    ),
    reach: outlines
      .flatMap(({ corners }) => corners)
      .reduce((most, [x, y]) => Math.max(most, Math.abs(x), Math.abs(y)), 0),
  };
}

/** Where a board's number is written, and how large it may be. */
export function middleOf({ corners }: LaidOutline) {
  const [xs, ys] = [corners.map(([x]) => x), corners.map(([, y]) => y)];
  const [left, right, lower, upper] = [Math.min(...xs), Math.max(...xs), Math.min(...ys), Math.max(...ys)];
  return {
    x: (left + right) / 2,
    y: (lower + upper) / 2,
    room: Math.min(right - left, upper - lower),
  };
}
