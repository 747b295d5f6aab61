import { OutOfRange } from "../basis/problem";
import type { Source } from "../basis/source";
import { mean, sampleVariance, studentT } from "../basis/statistics";
import type { Percent, SquareFeet } from "../basis/units";
import { withMargin, type Estimate } from "./estimate";
import { ratioOfMeans } from "./ratioOfMeans";
import { requireTwoPlots } from "./requireTwoPlots";

/** A tree that was measured at a point, not only counted. */
export interface MeasuredTree {
  /** The point it was tallied from, counted from 0. */
  readonly plot: number;
  /** Trees that it stands for, and the basal area factor under which it was tallied: what it weighs. */
  readonly count: number;
  readonly baf: number;
  readonly basalArea: SquareFeet;
  readonly volume: number;
}

export interface CountMeasure {
  /** [ft2/ac] */
  readonly basalArea: Estimate;
  /** Mean volume for one square foot of basal area. [volume/ft2] */
  readonly ratio: Estimate;
  /** Volume per acre, with the product term taken off and without doing so. */
  readonly volume: Estimate;
  readonly volumeByPlainSum: Estimate;
}

export const sources: readonly Source[] = [
  {
    author: "A. P. Robinson and J. D. Hamann",
    year: "2015",
    title: "Forest Analytics with R, errata of 17 March 2015 in the data package FAwR",
    where: "p. 113: error of counts and volume-basal area ratios combined, product term included, by tree",
    url: "https://github.com/cran/FAwR",
    standing: "read",
  },
  {
    author: "D. Marshall, K. Iles and J. F. Bell",
    year: "2004",
    title: "Canadian Journal of Forest Research 34:840",
    where: "abstract: counts vary more than the ratios, so many points are counted and few measured",
    url: "https://studylib.net/doc/12786843/",
    standing: "read",
  },
  {
    author: "Woodlot Reckoner",
    year: "",
    title: "Degrees of freedom of a count-and-measure cruise",
    where: "Satterthwaite's formula on the two parts of the relative variance",
    standing: "choice of ours",
  },
];

/**
 * Points at which every tree that is in was counted, and some trees measured.
 *
 *     V = G R     R = sum(w v / b) / sum(w)     w = c BAF
 *     e^2 = e_G^2 + e_R^2 - e_G^2 e_R^2
 *
 *     V        volume per acre
 *     G        mean basal area of all points, factor times count                       [ft2/ac]
 *     R        mean ratio of volume to basal area; each measured tree weighs by the
 *              basal area it stands for, which matters only where factors differ
 *     v, b     volume of a measured tree and its basal area                            [ft2]
 *     c, BAF   trees it stands for, and the factor it was tallied under                [ft2/ac]
 *     e        relative standard errors of volume, basal area and ratio
 *
 * The product term is small: two errors of 5 and 1 percent change in the fourth digit. The measured trees are taken
 * as picked one by one; where whole points were measured they are alike, and the true error is larger (see
 * wholePointsMeasured).
 *
 * @param basalAreas what each point says, those without trees as 0 [ft2/ac]
 * @throws OutOfRange when there are fewer than 2 points or fewer than 2 measured trees
 *
 * [1] A. P. Robinson and J. D. Hamann, errata of "Forest Analytics with R", 2015
 */
export function countMeasure(
  basalAreas: ArrayLike<number>,
  trees: readonly MeasuredTree[],
  confidence: Percent,
): CountMeasure {
  requireTwoPlots(basalAreas.length);
  if (trees.length < 2)
    throw new OutOfRange(`A margin of error needs at least 2 measured trees. You have ${trees.length}.`);
  const area = mean(basalAreas);
  const areaError = Math.sqrt(sampleVariance(basalAreas) / basalAreas.length);
  const weights = trees.map(({ count, baf }) => count * baf);
  const ratio = ratioOfMeans(
    trees.map(({ volume, basalArea }, i) => (weights[i] as number) * (volume / basalArea)),
    weights,
  );
  if (area === 0 || ratio.value === 0) throw new OutOfRange("Nothing to work on yet.");

  const [free, treesFree] = [basalAreas.length - 1, trees.length - 1];
  const [countPart, ratioPart] = [(areaError / area) ** 2, (ratio.standardError / ratio.value) ** 2];
  const t = studentT(confidence, jointFreedom(countPart, free, ratioPart, treesFree));
  const volume = area * ratio.value;
  return {
    basalArea: withMargin(area, studentT(confidence, free) * areaError),
    ratio: withMargin(ratio.value, studentT(confidence, treesFree) * ratio.standardError),
    volume: withMargin(volume, t * volume * combinedError(Math.sqrt(countPart), Math.sqrt(ratioPart))),
    volumeByPlainSum: withMargin(volume, t * volume * Math.hypot(Math.sqrt(countPart), Math.sqrt(ratioPart))),
  };
}

/** Relative error of a product from those of its two factors, which were drawn apart. [1] */
export const combinedError = (one: number, other: number): number =>
  Math.sqrt(one ** 2 + other ** 2 - one ** 2 * other ** 2);

/** Satterthwaite's degrees of freedom of two variances; where neither varies, those of the larger part will do. */
function jointFreedom(one: number, oneFree: number, other: number, otherFree: number): number {
  const both = one ** 2 / oneFree + other ** 2 / otherFree;
  return both === 0 ? oneFree : (one + other) ** 2 / both;
}

/**
 * True when trees were measured by whole points: every point with a measured tree has all its trees measured, and
 * some has several. Neighbours are alike, so the margin by single trees is then too small.
 *
 * @param counts trees counted at each point, measured ones included
 */
export function wholePointsMeasured(counts: ArrayLike<number>, trees: readonly MeasuredTree[]): boolean {
  const measured = new Map<number, { trees: number; count: number }>();
  for (const { plot, count } of trees) {
    const point = measured.get(plot) ?? { trees: 0, count: 0 };
    measured.set(plot, { trees: point.trees + 1, count: point.count + count });
  }
  const points = [...measured];
  return (
    points.some(([, point]) => point.trees > 1) &&
    points.every(([plot, point]) => point.count >= (counts[plot] as number) * (1 - 1e-9))
  );
}
