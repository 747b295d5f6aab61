import { requirePositive } from "../../basis/require";
import type { Source } from "../../basis/source";
import { sum } from "../../basis/step";
import { cubicFeet } from "../../basis/units";
import { crossSection, sectionStep } from "./crossSection";
import type { CubicFormula } from "./cubicFormula";

const geometry: Source = {
  author: "Geometry",
  year: "",
  title: "Frustum of a cone",
  where: "area that grows with the square of the height, added up from one end to the other",
  standing: "computed",
};

/**
 * The log as a cone with its tip cut off, from both ends.
 *
 *     V = (A1 + (A1 A2)^(1/2) + A2) / 3 * L
 *
 *     V       volume                            [ft3]
 *     A1, A2  areas at the small and large ends [ft2]
 *     L       log length                        [ft]
 *
 * Exact where the diameter grows evenly, as it does in the upper stem; never above Smalian.
 *
 * @throws InvalidInput when a measure is not a number above 0
 */
export const cone: CubicFormula = {
  id: "cone",
  title: "Cone",
  aliases: ["Conic", "Two-end conic"],
  sources: [geometry],

  volume({ smallEnd, largeEnd, length }) {
    requirePositive("Length", length, "ft");
    const small = crossSection("Small end", smallEnd);
    const large = crossSection("Large end", largeEnd);
    return cubicFeet(((small + Math.sqrt(small * large) + large) / 3) * length);
  },

  working({ smallEnd, largeEnd, length }) {
    const small = sectionStep("Area at the small end", smallEnd);
    const large = sectionStep("Area at the large end", largeEnd);
    const between = Math.sqrt(small.value * large.value);
    const mean = (small.value + between + large.value) / 3;
    return [
      small,
      large,
      {
        sum: sum`(${small.value} * ${large.value}) ^ 0.5`,
        meaning: "Area between them",
        value: between,
        unit: "ft2",
      },
      {
        sum: sum`(${small.value} + ${between} + ${large.value}) / 3`,
        meaning: "Mean of all three",
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
