import type { Place } from "../../core/cruise/localPlane";

/** A point of the walk as a receiver takes it. */
export interface GpxPoint extends Place {
  readonly name: string;
}

const DECIMALS = 7; // of a degree: a third of an inch

/**
 * The points as a GPX 1.1 text: each a waypoint, and a route through them in walking order. No time and no height,
 * since neither was measured.
 */
export function gpxText(title: string, points: readonly GpxPoint[]): string {
  const point = (element: string, { latitude, longitude, name }: GpxPoint) =>
    `<${element} lat="${latitude.toFixed(DECIMALS)}" lon="${longitude.toFixed(DECIMALS)}"><name>${escaped(name)}</name></${element}>`;
  return [
    '<?xml version="1.0" encoding="UTF-8"?>',
    '<gpx version="1.1" creator="Woodlot Reckoner" xmlns="http://www.topografix.com/GPX/1/1">',
    `  <metadata><name>${escaped(title)}</name></metadata>`,
    ...points.map((one) => `  ${point("wpt", one)}`),
    `  <rte><name>${escaped(title)}</name>`,
    ...points.map((one) => `    ${point("rtept", one)}`),
    "  </rte>",
    "</gpx>",
    "",
  ].join("\n");
}

/** What a text may hold of XML's own signs, and none of the control signs that XML forbids. */
const escaped = (text: string): string =>
  text
    .replace(/[^\t\n\r\u0020-\uD7FF\uE000-\uFFFD]/g, "")
    .replace(/&/g, "&amp;")
    .replace(/</g, "&lt;")
    .replace(/>/g, "&gt;")
    .replace(/"/g, "&quot;");
