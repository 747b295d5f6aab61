import { OutOfRange } from "../basis/problem";
import type { Source } from "../basis/source";
import { feet, type Feet } from "../basis/units";

export const sources: readonly Source[] = [
  {
    author: "M. Russell",
    year: "2023",
    title: "Lorey's height, article at arbor-analytics.com",
    where: "heights weighted by basal area; in a point sample the plain mean of the trees that are in",
    url: "https://arbor-analytics.com/post/2023-04-21-lorey-s-height-the-remote-sensing-way-to-estimate-tree-height/",
    standing: "read",
  },
];

/**
 * Mean height of a stand, each tree by its basal area (Lorey's height), so that the tall thick trees set it.
 *
 *     H = sum(w h) / sum(w)     w = TF BA
 *
 *     h   height of a tree                                       [ft]
 *     w   basal area that the tree stands for on an acre         [ft2/ac]
 *
 * @throws OutOfRange when no tree has a height
 *
 * [1] M. Russell, arbor-analytics.com, 2023
 */
export function loreysHeight(heights: ArrayLike<number>, basalAreas: ArrayLike<number>): Feet {
  let above = 0;
  let below = 0;
  for (let i = 0; i < heights.length; i += 1) {
    above += (basalAreas[i] as number) * (heights[i] as number);
    below += basalAreas[i] as number;
  }
  if (!(below > 0)) throw new OutOfRange("Nothing to work on yet.");
  return feet(above / below);
}
