import type { SamplingMethod } from "../samplingMethod";
import { fixedPlots } from "./fixedPlots";
import { pointSample } from "./pointSample";

/**
 * Points for the thick trees and a small fixed plot about the same center for the thin ones: from the breakpoint
 * diameter on the gauge picks the trees, below it every tree on the plot is tallied.
 *
 *     TF = BAF / BA for d >= d_b     TF = 1 / a for d < d_b
 *
 *     d, d_b   diameter at breast height, and the breakpoint; a tree of just the breakpoint is picked by the gauge
 *     BAF, BA  as for points
 *     a        size of the small plot                                                        [ac]
 *
 * Each tree is expanded by the way it was picked and by no other, and both add up at one point.
 *
 * [1] FSVeg Common Stand Exam User Guide: a fixed plot below the breakpoint diameter, a point from there on
 */
export const pointAndFixed: SamplingMethod = {
  ...pointSample,
  id: "pointAndFixed",
  title: "Point and fixed",
  aliases: ["Nested point", "Fixed and point", "Point with fixed plot"],
  thinTrees: fixedPlots,
  sources: [
    {
      author: "USDA Forest Service",
      year: "n.d.",
      title: "FSVeg Common Stand Exam User Guide",
      where: "breakpoint diameter: thinner trees on a fixed plot, the others by a point sample",
      url: "https://docslib.org/doc/13681583/xlc-section-508-vpat-template",
      standing: "read",
    },
    ...pointSample.sources,
    ...fixedPlots.sources,
  ],
};
