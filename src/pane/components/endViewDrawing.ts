import { html, svg } from "lit";
import { middleOf, type EndView, type LaidOutline } from "../sawing/endView";

export interface EndViewDrawingOptions {
  readonly endView: EndView;
  /** Numbers of the boards that are marked, with a thick outline and a ground of their own. */
  readonly marked: readonly number[];
  readonly name: string;
}

const MARGIN = 1.04; // room for the line around the log

/** The end of a log to scale, its boards numbered. The list beside it says all that it shows. */
export function endViewDrawing({ endView: { ends, boards, reach }, marked, name }: EndViewDrawingOptions) {
  const half = reach * MARGIN;
  const inOrder = [...boards].sort((a, b) => Number(marked.includes(a.number)) - Number(marked.includes(b.number)));
  return html`<svg class="end-view" role="img" aria-label=${name} viewBox="${-half} ${-half} ${2 * half} ${2 * half}">
    ${ends.map((end) => svg`<polygon class="log-end" points=${points(end)} />`)}
    ${inOrder.map((board) => {
      const { x, y, room } = middleOf(board);
      return svg`<g class=${marked.includes(board.number) ? "board marked" : "board"}>
        <polygon points=${points(board)} />
        <text x=${x} y=${-y} font-size=${Math.min(room * 0.85, reach * 0.16)}>${board.number}</text>
      </g>`;
    })}
  </svg>`;
}

/** The page counts y downwards. */
const points = ({ corners }: LaidOutline) => corners.map(([x, y]) => `${x},${-y}`).join(" ");
