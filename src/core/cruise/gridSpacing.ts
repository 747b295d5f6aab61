import { requirePositive } from "../basis/require";
import type { Source } from "../basis/source";
import { feet, type Acres, type Feet } from "../basis/units";

/**
 * Spacing of a square grid that puts a number of plots on a tract.
 *
 *     g = sqrt(43560 A / n)
 *
 *     g  distance between points, and between lines    [ft]
 *     A  tract                                         [ac]
 *     n  plots
 *
 * @throws InvalidInput when A or n is not a number above 0
 */
export function gridSpacing(tract: Acres, plots: number): Feet {
  requirePositive("Acres", tract);
  requirePositive("Plots", plots);
  return feet(Math.sqrt((43_560 * tract) / plots));
}

export const sources: readonly Source[] = [
  {
    author: "author not shown",
    year: "n.d.",
    title: "Fixed area plot sampling, Forest Measurements II slides",
    where: "square chains that a plot stands for; the square root is plain geometry",
    url: "https://yumpu.com/en/document/view/45427768/plot-sampling",
    standing: "read",
  },
];
