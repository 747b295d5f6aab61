import { requirePositive } from "../../basis/require";
import { perAcre, squareFeetPerAcre } from "../../basis/units";
import { basalArea } from "../../tree/basalArea";
import { limitingDistance } from "../limitingDistance";
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
 * [1] Point Sampling or Variable Plot Cruising, Kentucky forestry teaching slides, n.d.
 * [2] "Getting to Point Sampling", Penn State private-forests article, 2014, after O. L. Frank: table of tree factors
 */
export const pointSample: SamplingMethod = {
  id: "pointSample",
  title: "Point",
  aliases: ["Points", "Point sampling", "Prism", "Angle gauge", "Variable radius"],
  size: { what: "Basal area factor", kind: "basal area", low: 0.5, high: 400 },
  plotsWeigh: "equally",
  complete: false,
  sources: [
    {
      author: "author not shown",
      year: "n.d.",
      title: "Point Sampling or Variable Plot Cruising, Kentucky forestry teaching slides",
      where: "tree factor; the derivation from the limiting circle was done again for this add-in",
      url: "https://studylib.net/doc/5701643/13--14",
      standing: "read",
    },
    {
      author: "Penn State, private forests, after O. L. Frank",
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

  farthest: (dbh, size) => limitingDistance({ dbh, baf: squareFeetPerAcre(size) }),
};
