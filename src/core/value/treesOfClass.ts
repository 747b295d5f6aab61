import { designOf } from "../cruise/cruise";
import { diameterClass } from "../cruise/diameterClass";
import type { Estimate } from "../cruise/estimate";
import { perPlot, type StandingStems } from "./standingStems";

export interface TreesOfClass {
  /** Middle of the class. [in] */
  readonly dbh: number;
  /** How many of them the list takes. */
  readonly takes: number;
  /** How many stand on the tract; left out where its acres are not known. */
  readonly standing?: Estimate;
}

/**
 * Of a number of trees in the proportions in which they stand, how many are of each diameter class.
 *
 * @param all trees per acre, added over the plots
 */
export function treesOfClass(
  order: StandingStems & { readonly classWidth: number },
  trees: number,
  all: number,
  onTract: (values: Float64Array) => Estimate | undefined,
): readonly TreesOfClass[] {
  const classOf = (dbh: number) => diameterClass(dbh, order.classWidth);
  const { weight } = designOf(order.cruise);
  const classes = [...new Set(Array.from(order.cruise.dbh, classOf))].sort((a, b) => a - b);
  return classes.map((number) => {
    const values = perPlot(order, (line) => (classOf(order.cruise.dbh[line] as number) === number ? 1 : 0));
    const share = values.reduce((sum, value, plot) => sum + value * (weight?.[plot] ?? 1), 0) / all;
    const standing = onTract(values);
    return { dbh: number * order.classWidth, takes: share * trees, ...(standing && { standing }) };
  });
}
