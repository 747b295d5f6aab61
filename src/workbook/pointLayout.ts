import { southWest } from "../core/cruise/startCorners";
import type { TableRow } from "./plan";
import { corner } from "./tables";

/** How the points lie on the tract, each figure a value in a cell: nothing draws anew by itself. */
export interface PointLayout {
  /** Corners in order around the tract, in feet on the map. */
  readonly corners: readonly { readonly east: number; readonly north: number }[];
  /** Where the corners came from, in words. */
  readonly source: string;
  /** Of the place 0, 0 on the map; null when that is not known. [degrees] */
  readonly latitude: number | null;
  readonly longitude: number | null;
  /** [ft] */
  readonly spacing: number | null;
  readonly seed: number | null;
  /** Of the lines, from north over east. [degrees] */
  readonly bearing: number;
  /** Corner of the tract where the walk begins. */
  readonly from: string;
  /** How far the needle points east of the map's north; west is below 0. [degrees] */
  readonly declination: number;
  /** Length of one of the owner's paces; null when not counted. [ft] */
  readonly pace: number | null;
  /** The corner of the outline, counted from 1, from which the first point is found; null while there is none. */
  readonly startCorner: number | null;
}

/** No outline yet. */
export const noLayout: PointLayout = {
  corners: [],
  source: "",
  latitude: null,
  longitude: null,
  spacing: null,
  seed: null,
  bearing: 0,
  from: southWest.title,
  declination: 0,
  pace: null,
  startCorner: null,
};

/** To the tenth of a foot: finer than anyone can walk. */
export const toTenth = (feet: number): number => Math.round(feet * 10) / 10;

export const cornerRows = ({ corners }: PointLayout): readonly TableRow[] =>
  corners.map(({ east, north }, at) => ({
    [corner.corner]: at + 1,
    [corner.east]: toTenth(east),
    [corner.north]: toTenth(north),
  }));
