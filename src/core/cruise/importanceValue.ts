import { OutOfRange } from "../basis/problem";
import type { Source } from "../basis/source";
import { weightedMean } from "../basis/statistics";
import type { PlotTotals } from "./plotTotals";

/** What a species is to the stand, each part in percent of all species. */
export interface Importance {
  readonly frequency: number;
  readonly density: number;
  readonly dominance: number;
  /** The three together, 0 to 300 over all species. */
  readonly value: number;
}

export const sources: readonly Source[] = [
  {
    author: "Sewanee, The University of the South",
    year: "n.d.",
    title: "teaching pages on importance values",
    where: "the three parts and their sum",
    url: "http://www.sewanee.edu/Forestry_Geology/watershed_web/Emanuel/ImportanceValues/ImpVal_bod3.htm",
    standing: "read",
  },
  {
    author: "J. T. Curtis and R. P. McIntosh",
    year: "1951",
    title: "Ecology 32:476-496",
    where: "scale of 300, as cited elsewhere",
    standing: "from memory",
  },
];

/**
 * Importance value of each species.
 *
 *     IV = 100 f / sum(f) + 100 T / sum(T) + 100 G / sum(G)
 *
 *     f     share of the plots on which the species stands, each plot by what it weighs
 *     T, G  its trees and its basal area on an acre     [1/ac, ft2/ac]
 *
 * In a point sample the frequency goes with the gauge and with the size of the trees, so that values from different
 * designs cannot be compared.
 *
 * @param species the plot totals of each species, all on the same plots
 * @throws OutOfRange when there are no trees
 *
 * [1] Sewanee teaching pages on importance values
 */
export function importanceValues(species: readonly PlotTotals[]): Importance[] {
  const mean = (one: PlotTotals, values: ArrayLike<number>) => weightedMean(values, one.design.weight);
  const frequency = sharesOf(
    species.map((one) =>
      mean(
        one,
        one.tally.map((trees) => (trees > 0 ? 1 : 0)),
      ),
    ),
  );
  const density = sharesOf(species.map((one) => mean(one, one.trees)));
  const dominance = sharesOf(species.map((one) => mean(one, one.basalArea)));
  return species.map((_, one) => {
    const parts = {
      frequency: frequency[one] as number,
      density: density[one] as number,
      dominance: dominance[one] as number,
    };
    return {
      ...parts,
      value: parts.frequency + parts.density + parts.dominance,
    };
  });
}

function sharesOf(amounts: readonly number[]): number[] {
  const all = amounts.reduce((sum, one) => sum + one, 0);
  if (!(all > 0)) throw new OutOfRange("Nothing to work on yet.");
  return amounts.map((amount) => (100 * amount) / all);
}
