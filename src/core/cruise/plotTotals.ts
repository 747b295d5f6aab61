import type { Inches } from "../basis/units";
import { basalArea } from "../tree/basalArea";
import { designOf, type Cruise } from "./cruise";
import type { PlotDesign } from "./plotDesign";

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
  /** How the plots were drawn: what each weighs in a mean, and how unsure that mean is. */
  readonly design: PlotDesign;
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
export const plotTotals = (cruise: Cruise): PlotTotals => partTotals(cruise, undefined, 1)[0] as PlotTotals;

/**
 * The plot totals of each part of a stand by itself, such as a species or the trees to be cut, in one pass. A part
 * keeps every plot of the cruise, with 0 where it is absent, so that its margin of error comes from its own plots
 * and is no share of the stand's margin.
 *
 * @param part number of the part of each line, counted from 0. Left out: all lines are of part 0
 */
export function partTotals(cruise: Cruise, part: ArrayLike<number> | undefined, parts: number): PlotTotals[] {
  const { method, size, plots, plot, dbh, count, volume } = cruise;
  const tally = new Float64Array(parts * plots);
  const trees = new Float64Array(parts * plots);
  const areas = new Float64Array(parts * plots);
  const volumes = new Float64Array(volume ? parts * plots : 0);
  for (let line = 0; line < dbh.length; line += 1) {
    const place = plot[line] as number;
    const at = part ? (part[line] as number) * plots + place : place;
    const diameter = dbh[line] as Inches;
    const counted = count[line] as number;
    const standsFor = counted * method.treesPerAcre(diameter, size.ofTree(place, diameter));
    tally[at] = (tally[at] as number) + counted;
    trees[at] = (trees[at] as number) + standsFor;
    areas[at] = (areas[at] as number) + standsFor * basalArea(diameter);
    if (volume) volumes[at] = (volumes[at] as number) + standsFor * (volume[line] as number);
  }
  const design = designOf(cruise);
  return Array.from({ length: parts }, (_, one) => {
    const its = (totals: Float64Array) => totals.subarray(one * plots, (one + 1) * plots);
    return {
      tally: its(tally),
      trees: its(trees),
      basalArea: its(areas),
      ...(volume && { volume: its(volumes) }),
      design,
    };
  });
}

/** The totals of the parts put together again, plot by plot. There must be at least one part. */
export function wholeOf(parts: readonly PlotTotals[]): PlotTotals {
  const [first] = parts as [PlotTotals, ...PlotTotals[]];
  const added = (columns: readonly Float64Array[]) => {
    const sums = new Float64Array(first.trees.length);
    for (const column of columns)
      for (let plot = 0; plot < sums.length; plot += 1) sums[plot] = (sums[plot] as number) + (column[plot] as number);
    return sums;
  };
  return {
    ...first,
    tally: added(parts.map(({ tally }) => tally)),
    trees: added(parts.map(({ trees }) => trees)),
    basalArea: added(parts.map(({ basalArea }) => basalArea)),
    ...(first.volume && {
      volume: added(parts.map(({ volume }) => volume as Float64Array)),
    }),
  };
}
