import { requirePositive } from "../../basis/require";
import { sum } from "../../basis/step";
import { cubicFeet, inches } from "../../basis/units";
import { middleSection, sectionStep } from "./crossSection";
import type { CubicFormula } from "./cubicFormula";
import { sectionFormulas } from "./sectionFormulas";

/**
 * Huber's formula, from the middle alone.
 *
 *     V = Am L
 *
 *     V   volume                                     [ft3]
 *     Am  area half way between the ends             [ft2]
 *     L   log length                                 [ft]
 *
 * Exact for a cylinder and a paraboloid; the ends do not matter.
 *
 * @throws InvalidInput when the middle diameter is missing, or a measure is not a number above 0
 */
export const huber: CubicFormula = {
  id: "huber",
  title: "Huber",
  sources: [sectionFormulas],

  volume({ middle, length }) {
    requirePositive("Length", length, "ft");
    return cubicFeet(middleSection(huber.title, middle) * length);
  },

  working({ middle = inches(NaN), length }) {
    const half = sectionStep("Area half way between the ends", middle);
    return [
      half,
      { sum: sum`${half.value} * ${length}`, meaning: "Times the length", value: half.value * length, unit: "ft3" },
    ];
  },
};
