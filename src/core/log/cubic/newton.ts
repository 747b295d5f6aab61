import { requirePositive } from "../../basis/require";
import { cubicFeet } from "../../basis/units";
import { crossSection, middleSection } from "./crossSection";
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
 * Exact for a cylinder, a cone, a paraboloid and a neiloid, and so the best of the three.
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
};
