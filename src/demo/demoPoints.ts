import type { TableRow } from "../workbook/plan";
import { plot } from "../workbook/tables";

const SPACING = 316; // ft
const FIRST = 158; // ft, half a spacing from the corner
const PER_ROW = 5;

const SLOPES = [4, 6, 8, 5, 3, 9, 12, 15, 11, 7, 14, 20, 18, 10] as const;
/** Serial numbers of the invented days, 3 and 4 October 2026. */
const DAYS = [46_298, 46_299] as const;

/** Fourteen points on a square grid, walked to and fro; the last place of the third row lies outside. */
export const demoPoints: readonly TableRow[] = SLOPES.map((slope, i) => {
  const row = Math.floor(i / PER_ROW);
  const along = i % PER_ROW;
  return {
    [plot.plot]: i + 1,
    [plot.east]: FIRST + SPACING * (row % 2 === 0 ? along : PER_ROW - 1 - along),
    [plot.north]: FIRST + SPACING * row,
    [plot.date]: i < 8 ? DAYS[0] : DAYS[1],
    [plot.crew]: "owner",
    [plot.visited]: "Yes",
    [plot.slope]: slope,
  };
});
