import { OutOfRange } from "../basis/problem";
import type { Source } from "../basis/source";
import { weightedMean } from "../basis/statistics";
import { inches, type Acres, type Percent } from "../basis/units";
import { designOf } from "../cruise/cruise";
import { withMargin, type Estimate } from "../cruise/estimate";
import { estimateBy } from "../cruise/plotDesign";
import { sources as ratioSources } from "../cruise/ratioOfMeans";
import { tractTotal } from "../cruise/tractTotal";
import { fewestOfMixed } from "../sawing/wanted/fewestOfMixed";
import type { NewLinearProgram } from "../sawing/wanted/linearProgram";
import type { PieceSawing } from "../sawing/wanted/logSource";
import { keyOf, kindsOf, perPlot, type StandingStems } from "./standingStems";
import { treesOfClass, type TreesOfClass } from "./treesOfClass";
import { treeSource } from "./treeSource";

export interface StandingOrder extends StandingStems {
  readonly formClass: Percent;
  readonly acres?: Acres;
  readonly acresMargin?: Acres;
  readonly confidence: Percent;
  /** Width of the diameter classes that are told. [in] */
  readonly classWidth: number;
  readonly sawing: PieceSawing;
  readonly counts: readonly number[];
}

export interface TreesForCutList {
  readonly trees: Estimate;
  readonly classes: readonly TreesOfClass[];
  /** All that may be felled; left out where the acres are not known. */
  readonly standing?: Estimate;
  /** Numbers of the pieces that no such tree gives. */
  readonly never: readonly number[];
}

export const sources: readonly Source[] = [
  {
    author: "Woodlot Reckoner",
    year: "2026",
    title: "Trees that a cut list takes when they are felled in the proportions in which they stand",
    where: "core/value/treesForCutList",
    standing: "choice of ours",
  },
  ...ratioSources,
];

/**
 * How many standing trees a cut list takes, with its margin.
 *
 * The trees are taken as they stand: of every inch of diameter and every number of logs in the share that the cruise
 * has it. So their number is one over what share of the list an average tree gives,
 *
 *     T = 1 / R     R = mean(u) / mean(n)     m_T = T t s_R / R     s_R = s(u - R n) / mean(n)
 *
 *     u, n  share of the list that the trees on an acre give, and their number, as each plot has it
 *     s     standard error of a mean by the design of the cruise, whose means and t these are as well; for plots that
 *           all weigh the same s_R is that of ratioOfMeans.ts
 *
 * What a tree gives is reckoned at the worths of the pieces that column generation ends with; a small change of the
 * stand's make-up changes T by as much at these worths as if all were planned anew. The margin is that of the sample
 * alone: crook, rot, mishap and the logs' true taper come on top.
 *
 * @throws OutOfRange when there are fewer than 2 plots, or no tree gives any of the pieces
 */
export function* treesForCutList(
  order: StandingOrder,
  newProgram: NewLinearProgram,
): Generator<number, TreesForCutList> {
  const { sawing, counts } = order;
  const kinds = kindsOf(order);
  const all = kinds.reduce((sum, { perAcre }) => sum + perAcre, 0);
  if (all === 0) throw new OutOfRange("No tree that may be felled is in the tally yet.");
  const { ofOne, never } = yield* fewestOfMixed(
    {
      sources: kinds.map(({ dbh, logs }) =>
        treeSource([""], { dbh: inches(dbh), logs, formClass: order.formClass }, sawing),
      ),
      shares: kinds.map(({ perAcre }) => perAcre / all),
      pieces: sawing.pieces,
      counts,
      kerf: sawing.kerf,
    },
    newProgram,
  );
  if (never.length === sawing.pieces.length) throw new OutOfRange("No tree of the cruise gives any of these pieces.");

  const gives = new Map(kinds.map((kind, i) => [kind.key, ofOne[i] as number]));
  const given = perPlot(order, (line) => gives.get(keyOf(order, line)) ?? 0);
  const number = perPlot(order, () => 1);
  const trees = inverseRatio(order, given, number);
  const onTract = (values: Float64Array): Estimate | undefined => {
    if (order.acres === undefined) return undefined;
    const { value, margin } = meanOf(order, values);
    return tractTotal(value, margin, order.acres, order.acresMargin ?? (0 as Acres));
  };
  const standing = onTract(number);
  return { trees, classes: treesOfClass(order, trees.value, all, onTract), never, ...(standing && { standing }) };
}

/** How many trees make one list. */
function inverseRatio(order: StandingOrder, given: Float64Array, number: Float64Array): Estimate {
  const { weight } = designOf(order.cruise);
  const trees = weightedMean(number, weight);
  const ratio = weightedMean(given, weight) / trees;
  const { margin } = meanOf(
    order,
    given.map((share, plot) => share - ratio * (number[plot] as number)),
  );
  return withMargin(1 / ratio, margin / trees / ratio ** 2);
}

/** Mean of the plots; the margin is left at 0 where every tree of the tract was tallied. */
function meanOf({ cruise, confidence }: StandingOrder, values: Float64Array): Estimate {
  const design = designOf(cruise);
  return cruise.method.complete
    ? withMargin(weightedMean(values, design.weight), 0)
    : estimateBy(design, values, confidence);
}
