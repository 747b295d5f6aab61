import { requirePositive } from "../basis/require";
import { pounds, type Pounds } from "../basis/units";
import type { MeasuredLog } from "./cubic/cubicFormula";
import { smalian } from "./cubic/smalian";

/**
 * Weight of a log, by Smalian's cubic volume.
 *
 *     W = V g
 *
 *     W  weight                       [lb]
 *     V  volume by Smalian            [ft3]
 *     g  density, green               [lb/ft3]
 *
 * Of wood alone where the diameters are inside bark.
 *
 * @throws InvalidInput when a measure is not a number above 0
 */
export function logWeight(log: MeasuredLog, greenDensity: number): Pounds {
  requirePositive("Green density", greenDensity, "lb/ft3");
  return pounds(smalian.volume(log) * greenDensity);
}
