import { InvalidInput } from "../basis/problem";
import { evenPlots, plotsByArea, type PlotDesign } from "./plotDesign";
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
  /** How the plots were drawn. Left out: by chance or on a grid over the whole tract. */
  readonly design?: PlotDesign;
}

/** The design that every mean and margin of a cruise goes by. */
export function designOf(cruise: Cruise): PlotDesign {
  if (cruise.design) return cruise.design;
  const weight = plotWeights(cruise);
  return weight ? plotsByArea(weight) : evenPlots(cruise.plots);
}

/**
 * What each plot weighs by its own size; undefined where all weigh the same.
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
