import type { Choice } from "../basis/choices";
import { OutOfRange } from "../basis/problem";
import { requirePositive } from "../basis/require";
import type { Source } from "../basis/source";
import type { Acres } from "../basis/units";

/** A printed guide that goes by the size of the tract alone. It knows nothing of how plots differ. */
export interface PlotGuide extends Choice {
  readonly source: Source;
  /** @throws OutOfRange where the guide stops */
  plots(tract: Acres): number;
}

/** Keeps a whole number whole where its product is a hair above. */
const ROUNDING = 1e-9;
const roundedUp = (plots: number) => Math.ceil(plots - ROUNDING);

/** Least number of plots of a low-intensity inventory, printed for whole acres: 10 or less, 11 to 20 and so on. */
const nrcsMinimum: PlotGuide = {
  title: "NRCS minimum",
  aliases: ["NRCS"],
  source: {
    author: "Town, Padley, Kruse, Ward and Gariglio",
    year: "2018",
    title: "Forestry Inventory Methods, USDA NRCS Forestry Technical Note 190-FOR-01",
    where: "table 1: 3 plots to 10 ac, 6 to 20, 10 to 40, 15 to 150, then 1 for each 10 ac",
    url: "https://docslib.org/download/8109926",
    standing: "read",
  },
  plots(tract) {
    const steps = [
      [10, 3],
      [20, 6],
      [40, 10],
      [150, 15],
    ] as const;
    return steps.find(([acres]) => tract <= acres)?.[1] ?? roundedUp(tract / 10);
  },
};

/** 10 points below 10 ac; 1 an acre to 40; 20 + A/2 to 80; 40 + A/4 to 200. The pieces meet at 40 and at 80. */
const teachingRule: PlotGuide = {
  title: "Teaching rule",
  aliases: ["Teaching"],
  source: {
    author: "author not shown",
    year: "n.d.",
    title: "Point Sampling or Variable Plot Cruising, Kentucky forestry teaching slides",
    where: "number of points by acres, to 200 ac",
    url: "https://studylib.net/doc/5701643/13--14",
    standing: "read",
  },
  plots(tract) {
    if (tract > 200) throw new OutOfRange("This rule stops at 200 acres.");
    if (tract > 80) return roundedUp(40 + tract / 4);
    if (tract > 40) return roundedUp(20 + tract / 2);
    return Math.max(10, roundedUp(tract));
  },
};

export const plotGuides: readonly PlotGuide[] = [nrcsMinimum, teachingRule];
export const sources: readonly Source[] = plotGuides.map(({ source }) => source);

/**
 * Number of plots that a printed guide asks for.
 * @throws InvalidInput when the acres are not a number above 0
 * @throws OutOfRange where the guide stops
 */
export function plotsByAcres(tract: Acres, guide: PlotGuide): number {
  requirePositive("Acres", tract, "ac");
  return guide.plots(tract);
}
