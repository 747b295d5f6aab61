import { requirePositive } from "../../basis/require";
import { perAcre } from "../../basis/units";
import type { SamplingMethod } from "../samplingMethod";

/**
 * Strips across the tract, each one plot. They are as long as the tract is wide there, so a long one says more than
 * a short one: the mean of the stand is all that was tallied over all the acres that were walked.
 *
 *     TF = 1 / a     a = w l / 43560
 *
 *     TF    tree factor: trees per acre that the tree stands for on its strip   [1/ac]
 *     a     size of the strip                                                   [ac]
 *     w, l  width and length of the strip                                       [ft]
 *
 * @throws InvalidInput when the diameter or the size of the strip is not a number above 0
 *
 * [1] W. G. Cochran, "Sampling Techniques", 1977: ratio of means, from memory
 */
export const strips: SamplingMethod = {
  id: "strips",
  title: "Strip",
  aliases: ["Strips", "Strip cruise"],
  size: { what: "Strip size", kind: "area", low: 0.0001, high: 10_000 },
  plotsWeigh: "by area",
  complete: false,
  sources: [
    {
      author: "W. G. Cochran",
      year: "1977",
      title: "Sampling Techniques",
      where: "ratio of means, for units of unequal size",
      standing: "from memory",
    },
  ],

  treesPerAcre(dbh, size) {
    requirePositive("DBH", dbh, "in");
    requirePositive("Strip size", size, "ac");
    return perAcre(1 / size);
  },
};
