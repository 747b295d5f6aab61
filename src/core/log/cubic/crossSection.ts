import { SQUARE_FEET_PER_SQUARE_INCH_OF_DIAMETER } from "../../basis/circle";
import { InvalidInput } from "../../basis/problem";
import { requirePositive, shown } from "../../basis/require";
import type { Step } from "../../basis/step";
import { squareFeet, type Inches, type SquareFeet } from "../../basis/units";

/**
 * Area across a log at one place, taken as a circle. [ft2]
 *
 * @throws InvalidInput when the diameter is not a number above 0
 */
export function crossSection(what: string, diameter: Inches): SquareFeet {
  requirePositive(what, diameter, "in");
  return squareFeet(SQUARE_FEET_PER_SQUARE_INCH_OF_DIAMETER * diameter * diameter);
}

/** The same area as a step of a working. */
export const sectionStep = (meaning: string, diameter: Inches): Step => ({
  sum: `${shown(Math.PI)} / 576 * ${shown(diameter)} ^ 2`,
  meaning,
  value: crossSection("Diameter", diameter),
  unit: "ft2",
});

/**
 * Area across a log half way between its ends. [ft2]
 *
 * @throws InvalidInput when the middle diameter is missing, or not a number above 0
 */
export function middleSection(formula: string, middle: Inches | undefined): SquareFeet {
  if (middle === undefined) throw new InvalidInput(`${formula} needs the diameter at the middle of the log too.`);
  return crossSection("Middle diameter", middle);
}
