import { percent } from "../basis/units";

/**
 * Moisture content at which cell walls are full and free water is gone. Above it wood neither shrinks nor swells.
 * An average over species: Forest Products Laboratory, Wood Handbook, FPL-GTR-190 (2010), p. 4-2, read.
 */
export const FIBRE_SATURATION = percent(30);
