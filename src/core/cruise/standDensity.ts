import type { Choice } from "../basis/choices";
import { OutOfRange } from "../basis/problem";
import { requireNotNegative, requirePositive } from "../basis/require";
import type { Source } from "../basis/source";

/** A stand as its diameters and the trees per acre that each stands for, such as the rows of a stand table. */
export interface DiameterList {
  /** [in] */
  readonly dbh: ArrayLike<number>;
  /** [1/ac] */
  readonly trees: ArrayLike<number>;
}

/** A way of saying how crowded a stand is. */
export interface DensityMeasure extends Choice {
  readonly id: string;
  readonly sources: readonly Source[];
  /** What the answer counts: trees on an acre, or something that has no land in it. */
  readonly perLand: boolean;
  /** What the number is, in a few words beside it. */
  readonly says: string;
  of(stand: DiameterList): number;
}

/**
 * How crowded a stand is, by one measure.
 * @throws InvalidInput when a diameter is not above 0 or trees are below 0
 * @throws OutOfRange when there are no trees
 */
export function standDensity(stand: DiameterList, measure: DensityMeasure): number {
  let all = 0;
  for (let i = 0; i < stand.dbh.length; i += 1) {
    requirePositive("DBH", stand.dbh[i] as number, "in");
    requireNotNegative("Trees per acre", stand.trees[i] as number);
    all += stand.trees[i] as number;
  }
  if (all === 0) throw new OutOfRange("Nothing to work on yet.");
  return measure.of(stand);
}

/** Sum over the trees of an acre. */
export function overTrees({ dbh, trees }: DiameterList, each: (dbh: number) => number): number {
  let sum = 0;
  for (let i = 0; i < dbh.length; i += 1) sum += (trees[i] as number) * each(dbh[i] as number);
  return sum;
}
