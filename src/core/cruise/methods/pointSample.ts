import { requirePositive } from "../../basis/require";
import { perAcre } from "../../basis/units";
import { basalArea } from "../../tree/basalArea";
import type { SamplingMethod } from "../samplingMethod";

/**
 * Point sampling with a prism or an angle gauge: a thick tree is seen from farther away, so each tree that is in
 * stands for the same basal area per acre, and a thick one for fewer trees.
 *
 *     TF = BAF / BA
 *
 *     TF   tree factor: trees per acre that the tree stands for   [1/ac]
 *     BAF  basal area factor of the gauge                          [ft2/ac]
 *     BA   basal area of the tree                                  [ft2]
 *
 * @throws InvalidInput when the diameter or the factor is not a number above 0
 *
 * [1] "Lecture 13-14", University of Kentucky, n.d., point sampling
 * [2] "Getting to Point Sampling", Penn State, 2014, after O. L. Frank; its table holds the tree factors
 */
export const pointSample: SamplingMethod = {
  id: "pointSample",
  title: "Point",
  aliases: ["Points", "Point sampling", "Prism", "Angle gauge", "Variable radius"],
  size: { what: "Basal area factor", kind: "basal area", low: 0.5, high: 200 },
  sources: [
    {
      author: "University of Kentucky",
      year: "n.d.",
      title: "Lecture 13-14, point sampling",
      where: "tree factor; the derivation from the limiting circle was done again for this add-in",
      url: "https://studylib.net/doc/5701643/13--14",
      standing: "read",
    },
    {
      author: "Penn State Extension, after O. L. Frank",
      year: "2014",
      title: "Getting to Point Sampling",
      where: "table for basal area factor 10",
      url: "http://ecosystems.psu.edu/research/centers/private-forests/news/2014/getting-to-point-sampling",
      standing: "read",
    },
  ],

  treesPerAcre(dbh, size) {
    requirePositive("Basal area factor", size, "ft2/ac");
    return perAcre(size / basalArea(dbh));
  },
};
