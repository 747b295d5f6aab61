import type { Source } from "../basis/source";

export const sources: readonly Source[] = [
  {
    author: "B. Iglewicz and D. C. Hoaglin",
    year: "1993",
    title: "How to Detect and Handle Outliers",
    where: "modified z-scores, pages 11 to 13: a score over 3.5 is looked at",
    standing: "from memory",
  },
];

const FAR = 3.5; // modified z-scores [1]
const NORMAL = 0.6745; // quartile of the normal distribution, which makes the median deviation a standard one [1]
/** The least spread that is taken for usual, however like the others are: so none below twice or over half of them is far. */
const ALIKE = Math.log(1.15); // a choice of ours

/** What a value is held against: the values that are no outliers themselves, from the least to the largest. */
export interface Others {
  readonly least: number;
  readonly largest: number;
}

/**
 * Finds the values that lie far from the others of their group, in proportion: 5 among tens is as far as 20.
 *
 *     M = 0.6745 |ln x - m| / max(MAD, ln 1.15), far when M > 3.5
 *
 *     m    median of ln x
 *     MAD  median of |ln x - m|
 *
 * Median and median deviation, because a mean and a standard deviation are drawn along by the very value that is looked
 * for. The floor keeps a group of like values from making an outlier of a slightly different one.
 *
 * @param values all above 0
 * @param fewest fewer values than this tell nothing: then none is far
 * @returns for each value undefined, or the others that it lies far from
 *
 * [1] B. Iglewicz and D. C. Hoaglin 1993
 */
export function farFromOthers(values: readonly number[], fewest: number): readonly (Others | undefined)[] {
  if (values.length < fewest) return values.map(() => undefined);
  const logs = values.map(Math.log);
  const middle = median(logs);
  const deviations = logs.map((log) => Math.abs(log - middle));
  const spread = Math.max(median(deviations), ALIKE);
  const isFar = deviations.map((deviation) => (NORMAL * deviation) / spread > FAR);
  const near = values.filter((_, place) => !isFar[place]);
  const others: Others = {
    least: near.reduce((a, b) => Math.min(a, b)),
    largest: near.reduce((a, b) => Math.max(a, b)),
  };
  return isFar.map((far) => (far ? others : undefined));
}

function median(values: readonly number[]): number {
  const sorted = Float64Array.from(values).sort();
  const half = sorted.length / 2;
  return ((sorted[Math.ceil(half) - 1] as number) + (sorted[Math.floor(half)] as number)) / 2;
}
