import type { Source } from "../basis/source";
import { requireTwoPlots } from "./requireTwoPlots";

export const sources: readonly Source[] = [
  {
    author: "A. P. Robinson and J. D. Hamann",
    year: "2010",
    title: "Forest Analytics with R, code of the data package FAwR",
    where: "sampling.r: standard error from successive differences",
    url: "https://github.com/cran/FAwR",
    standing: "read",
  },
];

/**
 * Standard error of the mean of a systematic grid, from the differences of neighbours. Taken as a random draw, a grid
 * looks less sure than it is wherever neighbours are alike; this shows by how much.
 *
 *     s = sqrt(sum((y_i - y_(i+1))^2) / (2 n (n - 1)))
 *
 *     y_i  what plot i says, in the order in which the plots were walked
 *     n    number of plots
 *
 * @throws OutOfRange when there are fewer than 2 plots
 *
 * [1] A. P. Robinson and J. D. Hamann, "Forest Analytics with R", 2010, code of the package FAwR
 */
export function successiveDifferenceError(inWalkingOrder: ArrayLike<number>): number {
  const plots = inWalkingOrder.length;
  requireTwoPlots(plots);
  let squares = 0;
  for (let i = 1; i < plots; i += 1)
    squares += ((inWalkingOrder[i] as number) - (inWalkingOrder[i - 1] as number)) ** 2;
  return Math.sqrt(squares / (2 * plots * (plots - 1)));
}
