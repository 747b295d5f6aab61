import { OutOfRange } from "../basis/problem";
import type { Source } from "../basis/source";
import { weightedMean } from "../basis/statistics";
import { inches, type Acres, type Inches, type Percent } from "../basis/units";
import { designOf, type Cruise } from "../cruise/cruise";
import { diameterClass } from "../cruise/diameterClass";
import { withMargin, type Estimate } from "../cruise/estimate";
import { estimateBy } from "../cruise/plotDesign";
import { sources as ratioSources } from "../cruise/ratioOfMeans";
import { tractTotal } from "../cruise/tractTotal";
import { fewestOfMixed } from "../sawing/wanted/fewestOfMixed";
import type { NewLinearProgram } from "../sawing/wanted/linearProgram";
import type { PieceSawing } from "../sawing/wanted/logSource";
import { treeSource } from "./treeSource";

export interface StandingOrder {
  /** Trees that may be felled, with their plots; trees that are kept are left out of it, their plots are not. */
  readonly cruise: Cruise;
  /** Logs of 16 ft of each line; 0 where there are none. */
  readonly logs: ArrayLike<number>;
  readonly formClass: Percent;
  readonly acres?: Acres;
  readonly acresMargin?: Acres;
  readonly confidence: Percent;
  /** Width of the diameter classes that are told. [in] */
  readonly classWidth: number;
  readonly sawing: PieceSawing;
  readonly counts: readonly number[];
}

export interface TreesOfClass {
  /** Middle of the class. [in] */
  readonly dbh: number;
  /** How many of them the list takes. */
  readonly takes: number;
  /** How many stand on the tract; left out where its acres are not known. */
  readonly standing?: Estimate;
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
  return { trees, classes: classesOf(order, trees.value, all, onTract), never, ...optional(onTract(number)) };
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

const optional = (standing: Estimate | undefined) => (standing ? { standing } : {});

interface Kind {
  readonly key: string;
  readonly dbh: number;
  readonly logs: number;
  perAcre: number;
}

const keyOf = ({ cruise, logs }: StandingOrder, line: number) =>
  `${Math.round(cruise.dbh[line] as number)} ${logs[line] as number}`;

/** Trees per acre by the inch and the number of logs, added over the plots. */
function kindsOf(order: StandingOrder): readonly Kind[] {
  const kinds = new Map<string, Kind>();
  const { weight } = designOf(order.cruise);
  for (let line = 0; line < order.cruise.dbh.length; line += 1) {
    const key = keyOf(order, line);
    const kind = kinds.get(key) ?? {
      key,
      dbh: Math.round(order.cruise.dbh[line] as number),
      logs: order.logs[line] as number,
      perAcre: 0,
    };
    kind.perAcre += standsFor(order, line) * (weight?.[order.cruise.plot[line] as number] ?? 1);
    kinds.set(key, kind);
  }
  return [...kinds.values()].sort((a, b) => a.dbh - b.dbh || a.logs - b.logs);
}

function standsFor({ cruise }: StandingOrder, line: number): number {
  const dbh = cruise.dbh[line] as Inches;
  const plot = cruise.plot[line] as number;
  return (cruise.count[line] as number) * cruise.method.treesPerAcre(dbh, cruise.size.ofTree(plot, dbh));
}

/** What an acre has of something, as every plot has it. */
function perPlot(order: StandingOrder, ofTree: (line: number) => number): Float64Array {
  const totals = new Float64Array(order.cruise.plots);
  for (let line = 0; line < order.cruise.dbh.length; line += 1) {
    const plot = order.cruise.plot[line] as number;
    totals[plot] = (totals[plot] as number) + standsFor(order, line) * ofTree(line);
  }
  return totals;
}

function classesOf(
  order: StandingOrder,
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
    return { dbh: number * order.classWidth, takes: share * trees, ...optional(onTract(values)) };
  });
}
