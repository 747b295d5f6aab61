import { feet, percent } from "../../core/basis/units";
import { STEEPEST } from "../../core/tree/horizontalDistance";
import { measuredIn } from "./measuredIn";
import { optionalNumber } from "./readings";
import type { UnitSystem } from "./unitSystem";

export const slopeReading = (given: unknown) =>
  optionalNumber(given, "Slope", percent, { unit: "%", low: -STEEPEST, high: STEEPEST });

/** A distance that someone tapes or paces in the woods. */
export const taped = (given: unknown, what: string, { distance }: UnitSystem) =>
  measuredIn(given, what, distance, feet, 0.1, 2000);
