import { partOf, type Cruise } from "./cruise";
import { plotTotals, type PlotTotals } from "./plotTotals";

/**
 * The plot totals of each species by itself. A species keeps every plot of the cruise, with 0 where it is absent,
 * so that its margin of error comes from its own plots and is not a share of the stand's margin.
 *
 * @param species number of the species of each line, counted from 0
 */
export function speciesParts(cruise: Cruise, species: ArrayLike<number>, speciesCount: number): PlotTotals[] {
  return Array.from({ length: speciesCount }, (_, one) => plotTotals(partOf(cruise, (line) => species[line] === one)));
}
