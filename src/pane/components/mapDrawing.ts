import { html, nothing, svg } from "lit";
import type { Outline } from "../../core/cruise/outline";
import type { NamedPoint } from "../points/walk";
import { mapFrame, niceLength } from "../points/mapFrame";

export interface MapDrawingOptions {
  readonly outline: Outline;
  readonly points: readonly NamedPoint[];
  /** What it shows, for those who do not see it; the list beside it says all of it. */
  readonly name: string;
}

const STRIP = 30; // above the map, for the scale and the arrow
const MOST_CORNERS_TOLD = 12;
const LABEL = { least: 7, most: 12 } as const;
/** Points nearer than this on the paper are numbered in fives. */
const CROWDED = 15;

/** The tract to scale, north up, with its points in walking order, a north arrow and a bar to measure by. */
export function mapDrawing({ outline, points, name }: MapDrawingOptions) {
  const frame = mapFrame([...outline, ...points]);
  const { width, height, at, perFoot } = frame;
  const apart = nearest(points) * perFoot;
  const size = Math.max(LABEL.least, Math.min(LABEL.most, apart * 0.4));
  const radius = Math.max(1.5, Math.min(5, apart * 0.13));
  const numbered = (place: number) =>
    apart >= CROWDED || place === 0 || place === points.length - 1 || (place + 1) % 5 === 0;
  const line = (corners: Outline) =>
    corners
      .map(at)
      .map(([x, y]) => `${x.toFixed(1)},${y.toFixed(1)}`)
      .join(" ");
  return html`<svg class="map" role="img" aria-label=${name} viewBox="0 ${-STRIP} ${width} ${height + STRIP}">
    ${scaleBar(width, perFoot)} ${northArrow(width)}
    ${outline.length > 0 ? svg`<polygon class="tract" points=${line(outline)} />` : nothing}
    ${outline.length <= MOST_CORNERS_TOLD ? outline.map((corner, place) => cornerLabel(frame, outline, corner, place)) : nothing}
    ${points.length > 1 ? svg`<polyline class="walk" points=${line(points)} />` : nothing}
    ${points.map((point) => {
      const [x, y] = at(point);
      return svg`<circle class=${point.visited ? "point visited" : "point"} cx=${x} cy=${y} r=${radius} />`;
    })}
    ${points.map((point, place) => {
      const [x, y] = at(point);
      return numbered(place)
        ? svg`<text class="point-number" x=${x + radius + 1} y=${y - radius - 1} font-size=${size}>${point.name}</text>`
        : nothing;
    })}
  </svg>`;
}

function scaleBar(width: number, perFoot: number) {
  const feet = niceLength((width * 0.4) / perFoot);
  const long = feet * perFoot;
  return svg`<g class="furniture">
    <path d=${`M 4 ${4 - STRIP} v 6 h ${long} v -6`} />
    <text x="4" y=${22 - STRIP} font-size="10">${`${feet.toLocaleString("en-US")} ft = ${Number((feet / 66).toFixed(1))} chains`}</text>
  </g>`;
}

const northArrow = (width: number) =>
  svg`<g class="furniture">
    <path d=${`M ${width - 10} ${22 - STRIP} v -18 m -4 6 l 4 -6 l 4 6`} />
    <text x=${width - 20} y=${14 - STRIP} font-size="11" text-anchor="end">N</text>
  </g>`;

/** The corner's number, a little outside the line. */
function cornerLabel({ at }: ReturnType<typeof mapFrame>, outline: Outline, corner: Outline[number], place: number) {
  const [x, y] = at(corner);
  const middle = outline.map(at).reduce(([sumX, sumY], [px, py]) => [sumX + px, sumY + py], [0, 0]);
  const [fromX, fromY] = [x - middle[0] / outline.length, y - middle[1] / outline.length];
  const far = Math.hypot(fromX, fromY) || 1;
  return svg`<text class="corner" x=${x + (fromX / far) * 9} y=${y + (fromY / far) * 9} font-size="9">${place + 1}</text>`;
}

/** The least distance between points that follow each other. */
const nearest = (points: readonly NamedPoint[]) =>
  points.reduce((least, point, at) => {
    const next = points[at + 1];
    return next ? Math.min(least, Math.hypot(point.east - next.east, point.north - next.north) || least) : least;
  }, 500);
