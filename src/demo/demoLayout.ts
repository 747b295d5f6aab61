import { southWest } from "../core/cruise/startCorners";
import { noLayout, type PointLayout } from "../workbook/pointLayout";

/** The outline of a tract that does not exist, and the grid on it; the seed gives the demo's fourteen points. */
export const demoLayout: PointLayout = {
  ...noLayout,
  corners: [
    { east: 0, north: 0 },
    { east: 1495, north: 40 },
    { east: 1590, north: 610 },
    { east: 1245, north: 705 },
    { east: 1220, north: 1010 },
    { east: 520, north: 1065 },
    { east: 60, north: 910 },
  ],
  source: "Invented, in feet from the south-west corner",
  spacing: 316,
  seed: 2,
  bearing: 90,
  from: southWest.title,
  pace: 2.5,
  startCorner: 1,
};
