import { Problem } from "../../core/basis/problem";
import { shown } from "../../core/basis/require";
import { inches } from "../../core/basis/units";
import { designOf, type Cruise } from "../../core/cruise/cruise";
import { densityMeasures } from "../../core/cruise/densities";
import { standDensity, type DensityMeasure, type DiameterList } from "../../core/cruise/standDensity";
import { NO_TREES } from "./amounts";
import { asError, spilled, type Answer } from "./answers";
import { readMarked } from "./marks";
import type { Cells } from "./readings";
import type { TallyArguments } from "./tally";
import type { UnitSystem } from "./unitSystem";

/** How crowded the stand is by every measure, before the cut and after it. */
export function densityTable(given: TallyArguments & { readonly take: unknown }, units: UnitSystem): Cells {
  const { tally, cut } = readMarked(given, units);
  const { cruise } = tally;
  const least = leastOf(cruise.dbh);
  const counted = `trees from ${shown(Number((least * units.diameter.perOurs).toFixed(1)))} ${units.diameter.name} up`;
  const header = ["Measure", "Before", "After the cut", "What it is"];
  if (cruise.dbh.length === 0) return spilled(header, NO_TREES);
  const { before, after } = onAnAcre(cruise, cut);
  return spilled(
    header,
    densityMeasures.map((by) => [
      by.title,
      densityIn(before, by, units),
      densityIn(after, by, units),
      `${by.says}; ${counted}`,
    ]),
  );
}

/** The thinnest tree; 0 where there is none. */
function leastOf(dbh: ArrayLike<number>): number {
  let least = Infinity;
  for (let line = 0; line < dbh.length; line += 1) least = Math.min(least, dbh[line] as number);
  return dbh.length === 0 ? 0 : least;
}

/**
 * What the lines of a tally stand for on an acre of the stand, each plot by what it weighs. Trees of one diameter are
 * put together: a measure asks nothing else of a tree, and a tally has few diameters beside its trees.
 */
function onAnAcre(cruise: Cruise, cut: ArrayLike<number>): { before: DiameterList; after: DiameterList } {
  const { method, size, plots, plot, dbh, count } = cruise;
  const { weight } = designOf(cruise);
  const weights = weight ? weight.reduce((sum, one) => sum + one, 0) : plots;
  const places = new Map<number, number>();
  const [diameters, all, left]: [number[], number[], number[]] = [[], [], []];
  for (let line = 0; line < dbh.length; line += 1) {
    const [place, diameter] = [plot[line] as number, inches(dbh[line] as number)];
    const standsFor = (count[line] as number) * method.treesPerAcre(diameter, size.ofTree(place, diameter));
    const trees = weight ? (standsFor * (weight[place] as number)) / weights : standsFor / weights;
    let at = places.get(diameter);
    if (at === undefined) {
      at = diameters.length;
      places.set(diameter, at);
      diameters.push(diameter);
      all.push(0);
      left.push(0);
    }
    all[at] = (all[at] as number) + trees;
    if (cut[line] === 0) left[at] = (left[at] as number) + trees;
  }
  return { before: { dbh: diameters, trees: all }, after: { dbh: diameters, trees: left } };
}

/** One measure; a stand without trees has none, and its cell says so. */
function densityIn(stand: DiameterList, by: DensityMeasure, units: UnitSystem): Answer {
  try {
    return standDensity(stand, by) * (by.perLand ? units.perLand.perOurs : 1);
  } catch (problem) {
    if (problem instanceof Problem) return asError(problem);
    throw problem;
  }
}
