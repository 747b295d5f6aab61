import { SVD } from "svd-js";

/** A line, plane or the like through points, by least squares. */
export interface LeastSquares {
  /** One coefficient for each column. */
  readonly solution: readonly number[];
  readonly residuals: readonly number[];
  /** Points less coefficients. */
  readonly degreesOfFreedom: number;
}

/** Columns count as the same where a mix of them is this much shorter than the columns themselves. */
const SAME_COLUMNS = 1e-9;

/**
 * The coefficients that make the sum of squared residuals least. Undefined where the points cannot tell the columns
 * apart, as when all of them lie in one place. There must be at least as many points as columns.
 *
 * By singular value decomposition (G. H. Golub and C. Reinsch 1970) from the library svd-js, with the columns brought to
 * one length first; test/core/basis holds it against the normal equations and against R.
 */
export function leastSquares(
  rows: readonly (readonly number[])[],
  values: readonly number[],
): LeastSquares | undefined {
  const columns = rows[0]?.length ?? 0;
  const lengths = Array.from({ length: columns }, (_, j) => Math.hypot(...rows.map((row) => row[j] ?? 0)));
  if (lengths.some((length) => length === 0)) return undefined;
  const { u, q, v } = SVD(rows.map((row) => row.map((cell, j) => cell / (lengths[j] as number))));
  if (Math.min(...q) <= SAME_COLUMNS * Math.max(...q)) return undefined;

  const along = q.map(
    (size, k) =>
      dot(
        u.map((row) => row[k] as number),
        values,
      ) / size,
  );
  const solution = lengths.map((length, j) => dot(v[j] as number[], along) / length);
  return {
    solution,
    residuals: values.map((value, i) => value - dot(rows[i] as readonly number[], solution)),
    degreesOfFreedom: values.length - columns,
  };
}

const dot = (one: readonly number[], other: readonly number[]) =>
  one.reduce((sum, value, i) => sum + value * (other[i] as number), 0);
