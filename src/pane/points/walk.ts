import { feet } from "../../core/basis/units";
import type { MapPoint } from "../../core/cruise/gridPoints";
import { localPlane } from "../../core/cruise/localPlane";
import { compassBearing, walkLeg } from "../../core/cruise/walkLeg";
import type { PointLayout } from "../../workbook/pointLayout";
import { figure } from "../figures";
import { feetPerChain } from "../plan/chains";
import type { GpxPoint } from "./gpxText";

/** A point as it is walked to. */
export interface NamedPoint extends MapPoint {
  readonly name: string;
  readonly visited: boolean;
}

export const walkHeadings = ["Point", "East ft", "North ft", "Next: bearing", "by compass", "ft", "chains", "paces"];

/** The walk as rows of a table: each point, and the way from it to the next. */
export const walkRows = (points: readonly NamedPoint[], { declination, pace }: PointLayout): readonly string[][] =>
  points.map((point, at) => {
    const next = points[at + 1];
    const leg = next && walkLeg(point, next);
    return [
      point.name,
      figure(point.east),
      figure(point.north),
      ...(leg
        ? [
            `${degrees(leg.bearing)}°`,
            `${degrees(compassBearing(leg.bearing, declination))}°`,
            figure(leg.distance),
            figure(leg.distance / feetPerChain, 2),
            pace === null ? "" : figure(leg.distance / pace),
          ]
        : ["", "", "", "", ""]),
    ];
  });

/** To the whole degree, and never 360. */
const degrees = (bearing: number) => String(Math.round(bearing) % 360);

/** The way from the nearest corner to the first point, in words; "" without points. */
export function wayToFirst([first]: readonly NamedPoint[], layout: PointLayout): string {
  const corner = layout.corners[(layout.startCorner ?? 0) - 1];
  if (!first || !corner) return "";
  const leg = walkLeg({ east: feet(corner.east), north: feet(corner.north) }, first);
  if (!leg) return "";
  const paces = layout.pace === null ? "" : `, ${figure(leg.distance / layout.pace)} paces`;
  return `From corner ${layout.startCorner} of the outline to point ${first.name}: ${degrees(leg.bearing)}°, ${figure(leg.distance)} ft (${figure(leg.distance / feetPerChain, 1)} chains${paces}).`;
}

/** The points as places on the earth; none where 0, 0 has no place. */
export function gpxPoints(points: readonly NamedPoint[], { latitude, longitude }: PointLayout): readonly GpxPoint[] {
  if (latitude === null || longitude === null) return [];
  const plane = localPlane({ latitude, longitude });
  return points.map((point) => ({ ...plane.toPlace(point), name: point.name }));
}
