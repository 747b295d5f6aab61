import { Problem } from "../../core/basis/problem";
import { shown } from "../../core/basis/require";
import { inches } from "../../core/basis/units";
import { designOf, type Cruise } from "../../core/cruise/cruise";
import { densityMeasures } from "../../core/cruise/densities";
import { standDensity, type DensityMeasure, type DiameterList } from "../../core/cruise/standDensity";
import { asError, spilled, type Answer } from "./answers";
import { readMarked } from "./marks";
import type { Cells } from "./readings";
import type { TallyArguments } from "./tally";
import type { UnitSystem } from "./unitSystem";

/** How crowded the stand is by every measure, before the cut and after it. */
export function densityTable(given: TallyArguments & { readonly take: unknown }, units: UnitSystem): Cells {
  const { tally, cut } = readMarked(given, units);
  const { cruise } = tally;
  const least = cruise.dbh.length === 0 ? 0 : Array.from(cruise.dbh).reduce((low, one) => Math.min(low, one), Infinity);
  const counted = `trees from ${shown(Number((least * units.diameter.perOurs).toFixed(1)))} ${units.diameter.name} up`;
  const header = ["Measure", "Before", "After the cut", "What it is"];
  if (cruise.dbh.length === 0) return spilled(header, [["No trees yet"]]);
  const before = onAnAcre(cruise, () => true);
  const after = onAnAcre(cruise, (line) => cut[line] === 0);
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

/**
 * What the lines of a tally stand for on an acre of the stand, each plot by what it weighs. Trees of one diameter are
 * put together: a measure asks nothing else of a tree, and a tally has few diameters beside its trees.
 */
function onAnAcre(cruise: Cruise, kept: (line: number) => boolean): DiameterList {
  const { method, size, plots, plot, dbh, count } = cruise;
  const { weight } = designOf(cruise);
  const weights = weight ? weight.reduce((sum, one) => sum + one, 0) : plots;
  const trees = new Map<number, number>();
  for (let line = 0; line < dbh.length; line += 1) {
    if (!kept(line)) continue;
    const place = plot[line] as number;
    const diameter = inches(dbh[line] as number);
    const standsFor = (count[line] as number) * method.treesPerAcre(diameter, size.ofTree(place, diameter));
    trees.set(diameter, (trees.get(diameter) ?? 0) + (standsFor * (weight?.[place] ?? 1)) / weights);
  }
  return { dbh: [...trees.keys()], trees: [...trees.values()] };
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
