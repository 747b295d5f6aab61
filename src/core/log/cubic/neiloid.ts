import { requirePositive } from "../../basis/require";
import type { Source } from "../../basis/source";
import { sum } from "../../basis/step";
import { cubicFeet } from "../../basis/units";
import { crossSection, sectionStep } from "./crossSection";
import type { CubicFormula } from "./cubicFormula";

const geometry: Source = {
  author: "Geometry",
  year: "",
  title: "Frustum of a neiloid",
  where: "area that grows with the cube of the height, added up from one end to the other",
  standing: "computed",
};

/**
 * The log as a neiloid with its tip cut off, from both ends: the shape of a butt that flares.
 *
 *     V = (A1 + (A1^2 A2)^(1/3) + (A1 A2^2)^(1/3) + A2) / 4 * L
 *
 *     V       volume                            [ft3]
 *     A1, A2  areas at the small and large ends [ft2]
 *     L       log length                        [ft]
 *
 * Never above the cone.
 *
 * @throws InvalidInput when a measure is not a number above 0
 */
export const neiloid: CubicFormula = {
  id: "neiloid",
  title: "Neiloid",
  sources: [geometry],

  volume({ smallEnd, largeEnd, length }) {
    requirePositive("Length", length, "ft");
    const small = crossSection("Small end", smallEnd);
    const large = crossSection("Large end", largeEnd);
    return cubicFeet(((small + Math.cbrt(small ** 2 * large) + Math.cbrt(small * large ** 2) + large) / 4) * length);
  },

  working({ smallEnd, largeEnd, length }) {
    const small = sectionStep("Area at the small end", smallEnd);
    const large = sectionStep("Area at the large end", largeEnd);
    const upper = Math.cbrt(small.value ** 2 * large.value);
    const lower = Math.cbrt(small.value * large.value ** 2);
    const mean = (small.value + upper + lower + large.value) / 4;
    return [
      small,
      large,
      {
        sum: sum`(${small.value} ^ 2 * ${large.value}) ^ (1 / 3)`,
        meaning: "Area nearer to the small end",
        value: upper,
        unit: "ft2",
      },
      {
        sum: sum`(${small.value} * ${large.value} ^ 2) ^ (1 / 3)`,
        meaning: "Area nearer to the large end",
        value: lower,
        unit: "ft2",
      },
      {
        sum: sum`(${small.value} + ${upper} + ${lower} + ${large.value}) / 4`,
        meaning: "Mean of all four",
        value: mean,
        unit: "ft2",
      },
      {
        sum: sum`${mean} * ${length}`,
        meaning: "Times the length",
        value: mean * length,
        unit: "ft3",
      },
    ];
  },
};
