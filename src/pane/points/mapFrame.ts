import type { MapPoint } from "../../core/cruise/gridPoints";

/** How feet on the map become places in the drawing, to one scale in both directions, north up. */
export interface MapFrame {
  readonly width: number;
  readonly height: number;
  /** Parts of the drawing for each foot. */
  readonly perFoot: number;
  readonly at: (point: MapPoint) => readonly [x: number, y: number];
}

const WIDTH = 300;
const HIGHEST = 380;
const MARGIN = 18;

export function mapFrame(points: readonly MapPoint[]): MapFrame {
  const [west, east] = ends(points.map((point) => point.east));
  const [south, north] = ends(points.map((point) => point.north));
  const room = WIDTH - 2 * MARGIN;
  const perFoot = Math.min(room / Math.max(east - west, 1), (HIGHEST - 2 * MARGIN) / Math.max(north - south, 1));
  const height = (north - south) * perFoot + 2 * MARGIN;
  const left = (WIDTH - (east - west) * perFoot) / 2;
  return {
    width: WIDTH,
    height,
    perFoot,
    at: (point) => [left + (point.east - west) * perFoot, MARGIN + (north - point.north) * perFoot],
  };
}

const ends = (values: readonly number[]): readonly [number, number] =>
  values.length === 0 ? [0, 1] : [Math.min(...values), Math.max(...values)];

/** The longest of 1, 2 or 5 times a power of ten that is not above a length. */
export function niceLength(longest: number): number {
  const power = 10 ** Math.floor(Math.log10(longest));
  return (longest >= 5 * power ? 5 : longest >= 2 * power ? 2 : 1) * power;
}
