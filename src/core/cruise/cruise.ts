import type { SampleSize, SamplingMethod } from "./samplingMethod";

/**
 * A cruise as plain columns: one entry for each line of the tally, and the number of plots beside them, because
 * a plot without trees has no line and yet counts in every mean.
 */
export interface Cruise {
  readonly method: SamplingMethod;
  readonly size: SampleSize;
  /** How many plots were visited, those without trees included. */
  readonly plots: number;
  /** The plot of each line, counted from 0. */
  readonly plot: ArrayLike<number>;
  /** Diameter at breast height, as measured. [in] */
  readonly dbh: ArrayLike<number>;
  /** Trees that the line stands for: 1, 2 for a tree doubled at an edge, 0.5 for a halved borderline tree. */
  readonly count: ArrayLike<number>;
  /** Volume of one tree of the line, in whatever unit the cruiser uses. Left out when none was measured. */
  readonly volume?: ArrayLike<number>;
}

/** The lines of a cruise that a test picks, on the same plots: those without a picked tree stay, as empty ones. */
export function partOf(cruise: Cruise, picked: (line: number) => boolean): Cruise {
  const lines: number[] = [];
  for (let line = 0; line < cruise.dbh.length; line += 1) if (picked(line)) lines.push(line);
  const only = (column: ArrayLike<number>) => Float64Array.from(lines, (line) => column[line] as number);
  return {
    ...cruise,
    plot: only(cruise.plot),
    dbh: only(cruise.dbh),
    count: only(cruise.count),
    ...(cruise.volume && { volume: only(cruise.volume) }),
  };
}
