import { feet, type Feet } from "../basis/units";
import type { MapPoint } from "./gridPoints";

/** The way from one point to the next. */
export interface WalkLeg {
  /** From the map's north over east, 0 up to 360. [degrees] */
  readonly bearing: number;
  /** Level distance. [ft] */
  readonly distance: Feet;
}

/** Bearing and level distance from one point to another; undefined when both are the same place. */
export function walkLeg(from: MapPoint, to: MapPoint): WalkLeg | undefined {
  const [east, north] = [to.east - from.east, to.north - from.north];
  const distance = feet(Math.hypot(east, north));
  if (distance === 0) return undefined;
  return { bearing: asBearing((Math.atan2(east, north) * 180) / Math.PI), distance };
}

/**
 * What a compass shows for a bearing of the map.
 * @param declination how far the needle points east of the map's north; west is below 0 [degrees]
 */
export const compassBearing = (bearing: number, declination: number): number => asBearing(bearing - declination);

/** An angle as a bearing, from 0 up to but not including 360. [degrees] */
export function asBearing(degrees: number): number {
  const turned = ((degrees % 360) + 360) % 360;
  return turned === 360 ? 0 : turned;
}

/** A bearing by quarters, as deeds and many compasses have it: N 45° E. To the whole degree. */
export function quadrantBearing(bearing: number): string {
  const whole = Math.round(asBearing(bearing)) % 360;
  const ends = ["north", "east", "south", "west"];
  if (whole % 90 === 0) return `due ${ends[whole / 90] ?? ""}`;
  const southern = whole > 90 && whole < 270;
  const angle = southern ? Math.abs(180 - whole) : Math.min(whole, 360 - whole);
  return `${southern ? "S" : "N"} ${angle}° ${whole < 180 ? "E" : "W"}`;
}
