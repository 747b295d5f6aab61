import { InvalidInput } from "../basis/problem";
import { shown } from "../basis/require";
import { inches, squareFeetPerAcre } from "../basis/units";
import type { Source } from "../basis/source";
import { basalArea } from "../tree/basalArea";
import type { SampleSize, SamplingMethod } from "./samplingMethod";

/** The basal area factor, or the plot size, under which each tree of a cruise was tallied. */
export interface PlotSizes {
  /** @throws InvalidInput when no plot takes in a tree so thin */
  ofTree(plot: number, dbh: number): SampleSize;
  /** Of a whole plot; undefined where it differs from tree to tree. */
  ofPlot(plot: number): SampleSize | undefined;
  /** The thinnest tree that any plot takes in; 0 where there is no such limit. [in] */
  readonly leastDbh: number;
}

/** From this diameter on, trees are tallied on a plot of this size. */
export interface SizeStep {
  readonly leastDbh: number;
  readonly size: SampleSize;
}

export const sources: readonly Source[] = [
  {
    author: "USDA Forest Service",
    year: "n.d.",
    title: "FSVeg Common Stand Exam User Guide",
    where: "breakpoint diameter: thinner trees are tallied on one plot, the others on another",
    url: "https://docslib.org/doc/13681583/xlc-section-508-vpat-template",
    standing: "read",
  },
  {
    author: "trade habit",
    year: "",
    title: "Half and quarter sweeps",
    where: "a point swept over half a circle has twice its basal area factor, over a quarter four times",
    standing: "common practice",
  },
];

/** One size on every plot. */
export const sameSize = (size: SampleSize): PlotSizes => ({
  ofTree: () => size,
  ofPlot: () => size,
  leastDbh: 0,
});

/**
 * A size for each plot, in the order of the plots. A half sweep at the edge of a stand has twice the basal area
 * factor, a quarter sweep in a corner four times, and each is still one point.
 */
export const sizePerPlot = (sizes: ArrayLike<number>): PlotSizes => ({
  ofTree: (plot) => sizes[plot] as SampleSize,
  ofPlot: (plot) => sizes[plot] as SampleSize,
  leastDbh: 0,
});

/**
 * Nested plots: the size goes by the diameter of the tree, and a tree of just the breakpoint belongs to the plot
 * that begins there. Every tree is expanded by its own plot and by no other.
 */
export function sizeByDiameter(steps: readonly SizeStep[]): PlotSizes {
  const thickFirst = [...steps].sort((one, other) => other.leastDbh - one.leastDbh);
  return {
    ofTree(_, dbh) {
      const step = thickFirst.find(({ leastDbh }) => dbh >= leastDbh);
      if (step) return step.size;
      throw new InvalidInput(`No plot of yours takes in a tree of ${shown(dbh)} in.`);
    },
    ofPlot: () => undefined,
    leastDbh: thickFirst.at(-1)?.leastDbh ?? 0,
  };
}

/**
 * Nested plots whose thin trees are picked another way than the thick ones: the thickest step is the factor of the
 * gauge, the steps below it are plots of fixed size.
 *
 * Under a gauge a tree stands for BAF / BA trees. The factor BA TF makes that TF, the tree factor of the fixed plot,
 * so one sum over the tally does for both.
 */
export function sizeByBreakpoint(steps: readonly SizeStep[], thinTrees: SamplingMethod): PlotSizes {
  const sizes = sizeByDiameter(steps);
  const breakpoint = Math.max(...steps.map(({ leastDbh }) => leastDbh));
  return {
    ...sizes,
    ofTree(plot, dbh) {
      const size = sizes.ofTree(plot, dbh);
      if (dbh >= breakpoint) return size;
      const diameter = inches(dbh);
      return squareFeetPerAcre(basalArea(diameter) * thinTrees.treesPerAcre(diameter, size));
    },
  };
}
