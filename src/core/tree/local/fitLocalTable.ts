import { OutOfRange } from "../../basis/problem";
import { leastSquares } from "../../basis/leastSquares";
import { requirePositive } from "../../basis/require";
import type { Source } from "../../basis/source";
import { mean } from "../../basis/statistics";
import type { FelledTree, LocalCoefficients, LocalForm } from "./localForm";

export interface Range {
  readonly least: number;
  readonly most: number;
}

/** A volume table of one's own: an equation, and how far and how well it goes. */
export interface LocalTable {
  readonly form: LocalForm;
  readonly coefficients: LocalCoefficients;
  readonly dbh: Range;
  readonly height: Range;
}

export interface FittedTable extends LocalTable {
  readonly trees: number;
  readonly meanVolume: number;
  /** Of one tree, in the unit of volume. */
  readonly standardError: number;
  /** Share of the differences between the felled trees' volumes that the equation tells; in volumes, whatever was fitted. */
  readonly rSquared: number;
  readonly furnivalIndex: number;
  /** What the first coefficient was multiplied by; 1 where the volume itself is fitted. */
  readonly correction: number;
}

/**
 * A volume equation fitted to felled trees by least squares, with its error.
 *
 *     s   = sqrt[ sum (V - v)^2 / (n - p) ]
 *     R^2 = 1 - sum (V - v)^2 / sum (V - mean V)^2
 *     FI  = s' exp[ mean ln(dV/df) ]                            [1]
 *
 *     s      standard error of estimate                         [unit of V]
 *     V, v   measured volume of a felled tree, and the one by the equation
 *     n, p   felled trees, and coefficients
 *     FI     Furnival's index: the standard error as it would be were the volume itself fitted, so that forms can be
 *            set side by side                                   [unit of V]
 *     f, s'  what is fitted (V or ln V), and its own standard error
 *
 * @throws InvalidInput when a measure is not a number above 0
 * @throws OutOfRange when the trees are too few, too much alike, or make volume fall as trees grow
 *
 * [1] G. M. Furnival 1961, below
 */
export function fitLocalTable(form: LocalForm, trees: readonly FelledTree[]): FittedTable {
  for (const { dbh, height, volume } of trees) {
    requirePositive("DBH", dbh);
    requirePositive("Height", height);
    requirePositive("Volume", volume);
  }
  const rows = trees.map((tree) => form.terms(tree));
  const terms = form.terms({ dbh: 1, height: 1 }).length;
  if (trees.length <= terms) {
    throw new OutOfRange(
      `${form.equation} needs at least ${terms + 1} felled trees with DBH, height and volume. You have ${trees.length}.`,
    );
  }
  const fit = leastSquares(
    rows,
    trees.map(({ volume }) => form.fitted(volume)),
  );
  if (!fit) throw new OutOfRange("The felled trees are too much alike to tell one size from another. Add other sizes.");

  const variance = sumOfSquares(fit.residuals) / fit.degreesOfFreedom;
  const correction = form.correction(variance);
  const coefficients = form.coefficients(fit.solution, correction);
  requireGrowth(form, coefficients);

  const volumes = trees.map(({ volume }) => volume);
  const meanVolume = mean(volumes);
  const misses = trees.map(({ dbh, height, volume }) => volume - form.volume(coefficients, dbh, height));
  return {
    form,
    coefficients,
    correction,
    trees: trees.length,
    meanVolume,
    standardError: Math.sqrt(sumOfSquares(misses) / fit.degreesOfFreedom),
    rSquared: 1 - sumOfSquares(misses) / sumOfSquares(volumes.map((volume) => volume - meanVolume)),
    furnivalIndex: Math.sqrt(variance) * Math.exp(mean(volumes.map((volume) => Math.log(form.perFitted(volume))))),
    dbh: rangeOf(trees.map(({ dbh }) => dbh)),
    height: rangeOf(trees.map(({ height }) => height)),
  };
}

function requireGrowth({ equation }: LocalForm, { b, c = 1 }: LocalCoefficients): void {
  if (b > 0 && c >= 0) return;
  const grow = b > 0 ? "taller" : "thicker";
  throw new OutOfRange(
    `By ${equation} these felled trees would hold less as they grow ${grow}. Check them, add other sizes, or take the other form.`,
  );
}

const sumOfSquares = (values: readonly number[]) => values.reduce((sum, value) => sum + value * value, 0);
const rangeOf = (values: readonly number[]): Range => ({ least: Math.min(...values), most: Math.max(...values) });

export const sources: readonly Source[] = [
  {
    author: "G. M. Furnival",
    year: "1961",
    title: "An index for comparing equations used in constructing volume tables, Forest Science 7:337-341",
    where: "[1] the index",
    standing: "from memory",
  },
];
