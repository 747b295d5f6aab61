import type { DensityMeasure } from "../standDensity";
import { reineke, reinekeBySummation } from "./reineke";
import { relativeDensity } from "./relativeDensity";
import { uplandOakStocking } from "./uplandOakStocking";

/** Every measure of density that a cell may name. */
export const densityMeasures: readonly DensityMeasure[] = [
  reineke,
  reinekeBySummation,
  relativeDensity,
  uplandOakStocking,
];
