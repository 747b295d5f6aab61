import { OutOfRange } from "../basis/problem";
import type { Source } from "../basis/source";
import { feet, type Dollars, type Feet } from "../basis/units";
import type { BuckOrder } from "./buckOrder";
import { buckPlan } from "./buckPlan";
import { lengthsOf, logsFrom, type BuckedLog } from "./logsFrom";
import { soundStretches } from "./soundStretches";

/** What a stem brings when it is cut by a rule of thumb. */
export interface Habit {
  /** Length of every log; undefined where each is as long as fits. [ft] */
  readonly length: Feet | undefined;
  readonly logs: readonly BuckedLog[];
  readonly value: Dollars;
}

/**
 * The habits that the best plan is held against, each log sold as the product that pays most for it:
 * every log of one length, for each length on the list of products; and every log as long as any product takes.
 * Habits that sell nothing from this stem are left out.
 *
 * Each of them is one of the ways that the best plan chooses among, so that none brings more.
 *
 * @throws InvalidInput when a measure cannot be used
 */
export function buckHabits(order: BuckOrder): readonly Habit[] {
  const lengths = [...new Set(order.products.flatMap((product) => [...lengthsOf(product)]).map(toMillionths))];
  const fixed = lengths
    .sort((one, other) => one - other)
    .map((length) => ({ length: feet(length), logs: allOfLength(order, feet(length)) }));
  const habits = [...fixed, { length: undefined, logs: longestThatFit(order) }];
  return habits
    .filter(({ logs }) => logs.length > 0)
    .map((habit) => ({ ...habit, value: habit.logs.reduce((sum, { value }) => sum + value, 0) as Dollars }));
}

/** Steps are added up, so that the same length may come out a hair apart. */
const toMillionths = (length: number) => Math.round(length * 1e6) / 1e6;
const SAME_LENGTH = 1e-5;

/** Log upon log of one length: what is best when no other length is on the list. */
function allOfLength(order: BuckOrder, length: Feet): readonly BuckedLog[] {
  const products = order.products
    .filter((product) => [...lengthsOf(product)].some((one) => Math.abs(one - length) < SAME_LENGTH))
    .map((product) => ({ ...product, shortest: length, longest: length }));
  try {
    return buckPlan({ ...order, products });
  } catch (problem) {
    if (problem instanceof OutOfRange) return [];
    throw problem;
  }
}

/** From the bottom of each sound stretch up, the longest log that any product takes, as long as one fits. */
function longestThatFit(order: BuckOrder): readonly BuckedLog[] {
  const { stem, stump, flaws = [] } = order;
  const logs: BuckedLog[] = [];
  for (const [from, to] of soundStretches(stump, stem.height, flaws)) {
    for (let at: number | undefined = from; at !== undefined;) {
      const log = longestFrom(order, at, to);
      if (log) logs.push(log);
      at = log?.to;
    }
  }
  return logs;
}

/** The longest log with its bottom at a height; of several so long the one that pays most. */
function longestFrom(order: BuckOrder, from: number, to: number): BuckedLog | undefined {
  let longest: BuckedLog | undefined;
  for (const log of logsFrom(order, from, to)) {
    const longer = log.length - (longest?.length ?? 0);
    if (longer > SAME_LENGTH || (longest && longer > -SAME_LENGTH && log.value > longest.value)) longest = log;
  }
  return longest;
}

export const sources: readonly Source[] = [
  {
    author: "Woodlot Reckoner",
    year: "",
    title: "Habits of cutting a stem",
    where: "every log of one length, or as long as any product takes; each sold as the product that pays most for it",
    standing: "choice of ours",
  },
];
