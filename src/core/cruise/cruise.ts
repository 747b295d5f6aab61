import { InvalidInput } from "../basis/problem";
import type { PlotSizes } from "./plotSizes";
import type { SamplingMethod } from "./samplingMethod";

/**
 * A cruise as plain columns: one entry for each line of the tally, and the number of plots beside them, because
 * a plot without trees has no line and yet counts in every mean.
 */
export interface Cruise {
  readonly method: SamplingMethod;
  readonly size: PlotSizes;
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

/**
 * What each plot weighs in the mean of the stand; undefined where all weigh the same.
 * @throws InvalidInput when plots weigh by their area and it is not one for each plot
 */
export function plotWeights({ method, size, plots }: Cruise): Float64Array | undefined {
  if (method.plotsWeigh === "equally") return undefined;
  return Float64Array.from({ length: plots }, (_, plot) => {
    const area = size.ofPlot(plot);
    if (area === undefined) throw new InvalidInput(`${method.size.what} cannot go by the diameter of the tree.`);
    return area;
  });
}
