import { requirePositive } from "../../basis/require";
import { acres, perAcre } from "../../basis/units";
import { plotRadius } from "../plotRadius";
import type { SamplingMethod } from "../samplingMethod";

/**
 * Plots of one fixed size: every tree on the plot stands for the same number of trees on an acre.
 *
 *     TF = 1 / a
 *
 *     TF  tree factor: trees per acre that the tree stands for   [1/ac]
 *     a   size of one plot                                        [ac]
 *
 * @throws InvalidInput when the diameter or the plot size is not a number above 0
 *
 * [1] "Fixed Plot Sampling", lecture slides, n.d.: 1 over plot size times number of plots
 */
export const fixedPlots: SamplingMethod = {
  id: "fixedPlots",
  title: "Fixed",
  aliases: ["Fixed plot", "Fixed plots", "Fixed area", "Fixed radius"],
  size: { what: "Plot size", kind: "area", low: 0.0001, high: 1000 },
  plotsWeigh: "equally",
  complete: false,
  sources: [
    {
      author: "author not shown",
      year: "n.d.",
      title: "Fixed Plot Sampling, lecture slides after USDA Forest Service methods",
      where: "expansion of a tally to an acre",
      url: "http://slidegur.com/doc/69419/fixed-plot-sampling",
      standing: "read",
    },
  ],

  treesPerAcre(dbh, size) {
    requirePositive("DBH", dbh, "in");
    requirePositive("Plot size", size, "ac");
    return perAcre(1 / size);
  },

  farthest: (_, size) => plotRadius(acres(size)),
};
