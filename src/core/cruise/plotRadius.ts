import { requirePositive } from "../basis/require";
import type { Source } from "../basis/source";
import { feet, percent, type Acres, type Feet, type Percent } from "../basis/units";
import { slopeStretch } from "../tree/horizontalDistance";

/**
 * Radius of a round plot of fixed size, as laid out on the ground.
 *
 *     r = sqrt(43560 a / pi) (1 + (s / 100)^2)^(1/4)
 *
 *     r  radius, along the slope if there is one     [ft]
 *     a  plot size on the map                        [ac]
 *     s  slope                                       [%]
 *
 * On a slope the circle is laid larger, so that its level projection keeps the size a; distances are then taped along
 * the slope and not corrected once more. This is the rule behind [1], which gives it in bands of slope.
 *
 * @throws InvalidInput when a is not a number above 0, or the slope is not between -200 and 200 %
 *
 * [1] USDA Forest Service, FSVeg Common Stand Exam User Guide, Appendix I, Table 1
 */
export function plotRadius(plotSize: Acres, slope: Percent = percent(0)): Feet {
  requirePositive("Plot size", plotSize);
  return feet(Math.sqrt(((43_560 * plotSize) / Math.PI) * slopeStretch(slope)));
}

export const sources: readonly Source[] = [
  {
    author: "USDA Forest Service",
    year: "n.d.",
    title: "FSVeg Common Stand Exam User Guide",
    where: "Appendix I, Table 1, circular plot radii corrected for slope",
    url: "https://docslib.org/doc/13681583/xlc-section-508-vpat-template",
    standing: "read",
  },
];
