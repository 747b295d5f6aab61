import { OutOfRange } from "../basis/problem";
import { mean } from "../basis/statistics";
import type { Source } from "../basis/source";
import { requireTwoPlots } from "./requireTwoPlots";

/** A ratio of two means over the same plots, and how far chance may have moved it. */
export interface Ratio {
  readonly value: number;
  readonly standardError: number;
}

export const sources: readonly Source[] = [
  {
    author: "A. P. Robinson and J. D. Hamann",
    year: "2010",
    title: "Forest Analytics with R, code of the data package FAwR",
    where: "standard error of the mean of clusters of unequal size, which is that of a ratio of means",
    url: "https://github.com/cran/FAwR",
    standing: "read",
  },
  {
    author: "W. G. Cochran",
    year: "1977",
    title: "Sampling Techniques",
    where: "ratio estimate and its variance",
    standing: "from memory",
  },
];

/**
 * Ratio of two means that rise and fall together, such as the tally of strips over their acres.
 *
 *     R = sum(y) / sum(x)     s_R = sqrt(sum((y - R x)^2) / (n (n - 1))) / mean(x)
 *
 *     R, s_R  ratio and its standard error
 *     y, x    what a plot has above and below the line
 *     n       number of plots
 *
 * Where all x are alike it is the plain mean and its plain standard error. The variance is that of a line through
 * the plots, good once there are a dozen of them or so.
 *
 * @throws OutOfRange when there are fewer than 2 plots, or nothing below the line
 */
export function ratioOfMeans(above: ArrayLike<number>, below: ArrayLike<number>): Ratio {
  const plots = above.length;
  requireTwoPlots(plots);
  const middle = mean(below);
  if (!(middle > 0)) throw new OutOfRange("Nothing to work on yet.");
  const value = mean(above) / middle;
  let squares = 0;
  for (let i = 0; i < plots; i += 1) squares += ((above[i] as number) - value * (below[i] as number)) ** 2;
  return { value, standardError: Math.sqrt(squares / (plots * (plots - 1))) / middle };
}
