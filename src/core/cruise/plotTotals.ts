import type { Inches } from "../basis/units";
import { basalArea } from "../tree/basalArea";
import type { Cruise } from "./cruise";

/** What each plot says an acre holds, one entry a plot, in the order of the plot list; a plot without trees says 0. */
export interface PlotTotals {
  /** Trees tallied, a doubled tree as two. */
  readonly tally: Float64Array;
  /** [1/ac] */
  readonly trees: Float64Array;
  /** [ft2/ac] */
  readonly basalArea: Float64Array;
  /** In the unit of the tree volumes, per acre. */
  readonly volume?: Float64Array;
}

/**
 * Adds up the tally plot by plot. The plot, never the tree, is the unit of every mean and margin that follows.
 *
 *     T_p = sum(c TF)     G_p = sum(c TF BA)     V_p = sum(c TF v)     over the lines of plot p
 *
 *     T_p, G_p, V_p  trees, basal area and volume on an acre, as plot p has it  [1/ac, ft2/ac, volume/ac]
 *     c              trees that the line stands for
 *     TF             trees per acre that one such tree stands for                [1/ac]
 *     BA, v          basal area [ft2] and volume of one such tree
 *
 * @throws InvalidInput when a diameter or the size is not a number above 0
 */
export function plotTotals(cruise: Cruise): PlotTotals {
  const { method, size, plots, plot, dbh, count, volume } = cruise;
  const tally = new Float64Array(plots);
  const trees = new Float64Array(plots);
  const areas = new Float64Array(plots);
  const volumes = new Float64Array(plots);
  for (let line = 0; line < dbh.length; line += 1) {
    const place = plot[line] as number;
    const diameter = dbh[line] as Inches;
    const counted = count[line] as number;
    const standsFor = counted * method.treesPerAcre(diameter, size);
    tally[place] = (tally[place] as number) + counted;
    trees[place] = (trees[place] as number) + standsFor;
    areas[place] = (areas[place] as number) + standsFor * basalArea(diameter);
    if (volume) volumes[place] = (volumes[place] as number) + standsFor * (volume[line] as number);
  }
  return { tally, trees, basalArea: areas, ...(volume && { volume: volumes }) };
}
