import { requirePositive } from "../../basis/require";
import { sum } from "../../basis/step";
import { cubicFeet } from "../../basis/units";
import { crossSection, sectionStep } from "./crossSection";
import type { CubicFormula } from "./cubicFormula";
import { sectionFormulas } from "./sectionFormulas";

/**
 * Smalian's formula, from both ends.
 *
 *     V = (A1 + A2) / 2 * L
 *
 *     V       volume                            [ft3]
 *     A1, A2  areas at the small and large ends [ft2]
 *     L       log length                        [ft]
 *
 * Exact for a paraboloid; too high where the butt flares, by over 8 % in sections longer than 5 m [1].
 *
 * @throws InvalidInput when a measure is not a number above 0
 */
export const smalian: CubicFormula = {
  id: "smalian",
  title: "Smalian",
  sources: [
    sectionFormulas, // [1]
    {
      author: "what-when-how.com",
      year: "n.d.",
      title: "Mathematics and Statistics for the Environment",
      where: "rules authorised by the Forest Service: Smalian for cubic volume",
      url: "http://what-when-how.com/Tutorial/topic-topic-1524mbeo/Mathematics-and-Statistics-for-the-Environment-359.html",
      standing: "read",
    },
  ],

  volume({ smallEnd, largeEnd, length }) {
    requirePositive("Length", length, "ft");
    return cubicFeet(((crossSection("Small end", smallEnd) + crossSection("Large end", largeEnd)) / 2) * length);
  },

  working({ smallEnd, largeEnd, length }) {
    const small = sectionStep("Area at the small end", smallEnd);
    const large = sectionStep("Area at the large end", largeEnd);
    const mean = (small.value + large.value) / 2;
    return [
      small,
      large,
      { sum: sum`(${small.value} + ${large.value}) / 2`, meaning: "Mean of both", value: mean, unit: "ft2" },
      { sum: sum`${mean} * ${length}`, meaning: "Times the length", value: mean * length, unit: "ft3" },
    ];
  },
};
