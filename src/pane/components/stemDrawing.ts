import { html, svg } from "lit";
import { rulerOf, type StemPiece, type StemSide } from "../bucking/stemSide";

export interface StemDrawingOptions {
  readonly side: StemSide;
  /** Number of the log that is marked. */
  readonly marked: number;
  /** Heights of crooks and breaks, and where rot begins and ends. */
  readonly flaws: readonly number[];
  readonly name: string;
}

/** Size of the drawing in its own units, and where in it the stem lies. */
const WIDE = 320;
const EDGE = 10;
const NUMBERS = 14;
const MIDDLE = 52;
const HALF = 28;
const RULER = MIDDLE + HALF + 8;
const HIGH = RULER + 22;

/**
 * A stem lying on its side, butt to the left: lengths to one scale, thicknesses to another so that they can be seen.
 * The list beside it says all that it shows.
 */
export function stemDrawing({ side: { pieces, top, thickest }, marked, flaws, name }: StemDrawingOptions) {
  const x = (h: number) => EDGE + (h / top) * (WIDE - 2 * EDGE);
  const half = (d: number) => (Math.min(d, thickest) / thickest) * HALF;
  const corners = ({ from, to, largeEnd, smallEnd }: StemPiece) =>
    [
      [x(from), MIDDLE - half(largeEnd)],
      [x(to), MIDDLE - half(smallEnd)],
      [x(to), MIDDLE + half(smallEnd)],
      [x(from), MIDDLE + half(largeEnd)],
    ]
      .map((corner) => corner.map((place) => place.toFixed(1)).join(","))
      .join(" ");
  const inOrder = [...pieces].sort((a, b) => Number(a.log === marked) - Number(b.log === marked));
  return html`<svg class="stem-side" role="img" aria-label=${name} viewBox="0 0 ${WIDE} ${HIGH}">
    ${inOrder.map((piece) => {
      const kind = piece.log === 0 ? "left" : piece.log === marked ? "piece marked" : "piece";
      return svg`<g class=${kind}>
        <polygon points=${corners(piece)} />
        ${piece.log === 0 ? "" : svg`<text x=${x((piece.from + piece.to) / 2).toFixed(1)} y=${NUMBERS}>${piece.log}</text>`}
      </g>`;
    })}
    ${flaws.map(
      (h) => svg`<line class="flaw" x1=${x(h)} x2=${x(h)} y1=${MIDDLE - HALF - 4} y2=${MIDDLE + HALF + 4} />`,
    )}
    <line class="ruler" x1=${x(0)} x2=${x(top)} y1=${RULER} y2=${RULER} />
    ${rulerOf(top).map(
      (h) => svg`<g class="ruler">
        <line x1=${x(h)} x2=${x(h)} y1=${RULER} y2=${RULER + 4} />
        <text x=${x(h)} y=${RULER + 14}>${h}</text>
      </g>`,
    )}
  </svg>`;
}
