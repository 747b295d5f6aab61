import type { Choice } from "../basis/choices";
import { InvalidInput, OutOfRange } from "../basis/problem";
import { requireNotNegative, requirePositive, shown } from "../basis/require";
import type { Source } from "../basis/source";
import { percent, type Acres, type Percent } from "../basis/units";
import { largestRemainders } from "./largestRemainders";

/** What is known or guessed of a stratum before it is cruised. */
export interface PlannedStratum {
  readonly acres: Acres;
  /** What an acre holds, in any one unit for all strata. */
  readonly mean: number;
  /** How much its plots differ. [%] */
  readonly variation: Percent;
}

/** By what strata share the plots out. */
export interface Allocation extends Choice {
  weight(stratum: PlannedStratum): number;
}

export const sources: readonly Source[] = [
  {
    author: "D. J. Brus",
    year: "2022",
    title: "Spatial Sampling with R",
    where: "chapter 4: proportional and Neyman allocation",
    url: "https://github.com/DickBrus/SpatialSamplingwithR",
    standing: "read",
  },
  {
    author: "author not shown, after USDA Forest Service FSH 2409.12",
    year: "2000",
    title: "Calculating Sample Size for Stratified Random Sample, handout",
    where: "worked allocation; the weights are shares of volume, as it defines them",
    url: "https://www.scribd.com/doc/290105300/Calculating-Sample-Size-for-Stratified-Random-Sample",
    standing: "read",
  },
  {
    author: "Woodlot Reckoner",
    year: "",
    title: "Least number of plots in a stratum",
    where: "2, since one plot has no margin of error",
    standing: "choice of ours",
  },
];

/** The least margin for the number of plots (Neyman): acres times standard deviation, which is mean times CV. */
export const best: Allocation = {
  title: "Best",
  aliases: ["Neyman"],
  weight: ({ acres, mean, variation }) => (acres * mean * variation) / 100,
};

export const byArea: Allocation = { title: "By area", aliases: ["Area"], weight: ({ acres }) => acres };

export const allocations: readonly Allocation[] = [best, byArea];

const LEAST = 2;

/**
 * Shares a number of plots out among strata.
 *
 *     n_h = n W_h s_h / sum(W_h s_h)   best     n_h = n W_h   by area
 *
 *     n_h, n  plots of stratum h and of all strata
 *     W_h     share of the stratum in the acres
 *     s_h     standard deviation of its plots: mean times coefficient of variation
 *
 * Parts are rounded by largest remainders, so that they add up to n. A stratum that would have fewer than 2 plots
 * gets 2, and the others share the rest.
 *
 * @throws InvalidInput when acres are not above 0, a mean or a CV is below 0, or the plots are not whole or not 2 for each
 * @throws OutOfRange when no stratum has anything to go by
 *
 * [1] D. J. Brus, "Spatial Sampling with R", ch. 4
 */
export function plotsByStratum(strata: readonly PlannedStratum[], plots: number, allocation: Allocation): number[] {
  for (const { acres, mean, variation } of strata) {
    requirePositive("Acres", acres, "ac");
    requireNotNegative("Mean", mean);
    requireNotNegative("Coefficient of variation", variation, "%");
  }
  if (!Number.isInteger(plots)) throw new InvalidInput(`Plots should be a whole number. You have ${shown(plots)}.`);
  if (plots < LEAST * strata.length) {
    throw new InvalidInput(
      `Every stratum needs 2 plots: ${LEAST * strata.length} or more for ${strata.length} strata. You have ${plots}.`,
    );
  }
  const weights = strata.map((stratum) => allocation.weight(stratum));
  if (!weights.some((weight) => weight > 0)) throw new OutOfRange("Nothing to work on yet.");

  let floored = new Set<number>();
  for (;;) {
    const free = weights.map((weight, place) => (floored.has(place) ? 0 : weight));
    const shared = largestRemainders(plots - LEAST * floored.size, free);
    const parts = shared.map((part, place) => (floored.has(place) ? LEAST : part));
    const few = parts.flatMap((part, place) => (part < LEAST ? [place] : []));
    if (few.length === 0) return parts;
    floored = new Set([...floored, ...few]);
  }
}

/**
 * Coefficient of variation of a stratified cruise as a whole: that of each stratum by its share of the volume. Shares
 * of the acres would be right only where every acre holds the same. [%]
 */
export function weightedVariation(strata: readonly PlannedStratum[]): Percent {
  const volume = strata.reduce((sum, { acres, mean }) => sum + acres * mean, 0);
  if (!(volume > 0)) throw new OutOfRange("Nothing to work on yet.");
  return percent(strata.reduce((sum, { acres, mean, variation }) => sum + (acres * mean * variation) / volume, 0));
}
