import { requirePositive } from "../../basis/require";
import { sum } from "../../basis/step";
import { cubicFeet, inches } from "../../basis/units";
import { crossSection, middleSection, sectionStep } from "./crossSection";
import type { CubicFormula } from "./cubicFormula";
import { sectionFormulas } from "./sectionFormulas";

/**
 * Newton's formula, from both ends and the middle.
 *
 *     V = (A1 + 4 Am + A2) / 6 * L
 *
 *     V       volume                            [ft3]
 *     A1, A2  areas at the small and large ends [ft2]
 *     Am      area half way between the ends    [ft2]
 *     L       log length                        [ft]
 *
 * Exact for a cylinder, a cone, a paraboloid and a neiloid, and so the best of them.
 *
 * @throws InvalidInput when the middle diameter is missing, or a measure is not a number above 0
 */
export const newton: CubicFormula = {
  id: "newton",
  title: "Newton",
  sources: [sectionFormulas],

  volume({ smallEnd, middle, largeEnd, length }) {
    requirePositive("Length", length, "ft");
    const small = crossSection("Small end", smallEnd);
    const large = crossSection("Large end", largeEnd);
    return cubicFeet(((small + 4 * middleSection(newton.title, middle) + large) / 6) * length);
  },

  working({ smallEnd, middle = inches(NaN), largeEnd, length }) {
    const small = sectionStep("Area at the small end", smallEnd);
    const half = sectionStep("Area half way between the ends", middle);
    const large = sectionStep("Area at the large end", largeEnd);
    const mean = (small.value + 4 * half.value + large.value) / 6;
    return [
      small,
      half,
      large,
      {
        sum: sum`(${small.value} + 4 * ${half.value} + ${large.value}) / 6`,
        meaning: "Weighted mean, the middle counted four times",
        value: mean,
        unit: "ft2",
      },
      { sum: sum`${mean} * ${length}`, meaning: "Times the length", value: mean * length, unit: "ft3" },
    ];
  },
};
