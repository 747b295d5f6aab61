import type { TableRow } from "../workbook/plan";
import { plot } from "../workbook/tables";

/** Where the seed of the demo's layout puts them, in the order in which they are walked. [ft] */
const PLACES: readonly (readonly [east: number, north: number])[] = [
  [208.3, 147.4],
  [524.3, 147.4],
  [840.3, 147.4],
  [1156.3, 147.4],
  [1472.3, 147.4],
  [1472.3, 463.4],
  [1156.3, 463.4],
  [840.3, 463.4],
  [524.3, 463.4],
  [208.3, 463.4],
  [208.3, 779.4],
  [524.3, 779.4],
  [840.3, 779.4],
  [1156.3, 779.4],
];

const SLOPES = [4, 6, 8, 5, 3, 9, 12, 15, 11, 7, 14, 20, 18, 10] as const;
/** Serial numbers of the invented days, 3 and 4 October 2026. */
const DAYS = [46_298, 46_299] as const;

/** Fourteen points on a square grid of 316 ft, walked to and fro. */
export const demoPoints: readonly TableRow[] = PLACES.map(([east, north], i) => ({
  [plot.plot]: i + 1,
  [plot.east]: east,
  [plot.north]: north,
  [plot.date]: i < 8 ? DAYS[0] : DAYS[1],
  [plot.crew]: "owner",
  [plot.visited]: "Yes",
  [plot.slope]: SLOPES[i] ?? null,
}));
