import { OutOfRange } from "../basis/problem";
import type { Source } from "../basis/source";
import { studentT } from "../basis/statistics";
import type { Percent } from "../basis/units";
import { withMargin, type Estimate } from "./estimate";
import { ratioOfMeans, sources as ratioSources } from "./ratioOfMeans";

export const sources: readonly Source[] = ratioSources;

/**
 * Mean of plots that were taken in groups. Plots of one group are neighbours and much alike, so the group is the unit
 * of the margin of error, not the plot.
 *
 *     y = sum(y_i) / sum(m_i)     s = sqrt(sum((m_i / m)^2 (y_i / m_i - y)^2) / (k (k - 1)))
 *
 *     y, s    mean of all plots and its standard error
 *     y_i     sum of the m_i plots of group i
 *     m, k    mean number of plots in a group, and number of groups
 *
 * With groups of one size it is the plain standard error of the group means [1].
 *
 * @param clusters the plots of each group
 * @throws OutOfRange when there are fewer than 2 groups
 *
 * [1] A. P. Robinson and J. D. Hamann, "Forest Analytics with R", 2010, code of the package FAwR
 */
export function clusterEstimate(clusters: readonly ArrayLike<number>[], confidence: Percent): Estimate {
  if (clusters.length < 2)
    throw new OutOfRange(`A margin of error needs at least 2 groups of plots. You have ${clusters.length}.`);
  const sums = clusters.map((plots) => Array.from(plots).reduce((sum, one) => sum + one, 0));
  const { value, standardError } = ratioOfMeans(
    sums,
    clusters.map((plots) => plots.length),
  );
  return withMargin(value, studentT(confidence, clusters.length - 1) * standardError);
}
