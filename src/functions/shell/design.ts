import { InvalidInput } from "../../core/basis/problem";
import { acres as inAcres } from "../../core/basis/units";
import { plotWeights, type Cruise } from "../../core/cruise/cruise";
import { fixedPlots } from "../../core/cruise/methods/fixedPlots";
import { NameList } from "../../core/cruise/nameList";
import { evenPlots, groupedPlots, type PlotDesign } from "../../core/cruise/plotDesign";
import { stratifiedPlots } from "../../core/cruise/stratifiedPlots";
import { BadRows } from "./badRows";
import { column, isMissing, isNothing, sharedRows, type Column } from "./columns";
import { spoken, type PlotList } from "./plots";
import { asCells, isLeftOut, oneNumber } from "./readings";
import { strataList } from "./strataList";

/** How the plots were drawn, as the cell gave it; all of it may be left out. */
export interface DesignArguments {
  /** Stratum of each plot, beside the plot list. */
  readonly stratum?: unknown;
  /** Two columns: every stratum and its acres. */
  readonly strata?: unknown;
  /** Group of each plot, beside the plot list. */
  readonly cluster?: unknown;
  /** How many plots would cover the tract. */
  readonly population?: unknown;
}

/**
 * The design of a cruise, where it is not the usual one of plots over the whole tract.
 * @throws InvalidInput when parts of the design are missing or do not go together
 */
export function readDesign(
  given: DesignArguments & { readonly plots: unknown },
  cruise: Pick<Cruise, "method" | "size" | "plots">,
  list: PlotList,
): PlotDesign | undefined {
  if (cruise.method.complete || list.cells.length === 0) return undefined;
  const strata = listedStrata(given.strata);
  const stratum = besidePlots(given.stratum, "Stratum", given.plots, list);
  const cluster = besidePlots(given.cluster, "Cluster", given.plots, list);
  const population = populationOf(given.population, cruise);
  if (strata.length === 0 && stratum)
    throw new InvalidInput("Plots have strata, but the list of strata is empty. Give each stratum and its acres.");
  if (cluster && (strata.length > 0 || population !== Infinity || cruise.method.plotsWeigh !== "equally"))
    throw new InvalidInput("Clusters go with plots that all weigh the same, and not with strata or a population.");
  if (strata.length > 0) {
    const known = new NameList(strata.map(({ name }) => name));
    return stratifiedPlots(
      strata.map(({ name, acres = 0 }) => ({ name, acres: inAcres(acres) })),
      {
        stratum: placesIn(known, stratum, list, "stratum"),
        weight: plotWeights({ ...cruise, plot: [], dbh: [], count: [] }),
        population,
      },
    );
  }
  if (cluster) {
    const groups = new NameList();
    const group = placesIn(groups, cluster, list, "cluster");
    return groupedPlots(group, groups.names.length);
  }
  return population === Infinity ? undefined : evenPlots(list.cells.length, population);
}

/** The strata, from a block of two columns; none when it is left out or blank. */
function listedStrata(given: unknown) {
  if (isLeftOut(given)) return [];
  const cells = asCells(given);
  if (cells.every((row) => row.every(isNothing))) return [];
  if (cells[0]?.length !== 2)
    throw new InvalidInput("The list of strata needs two columns: the stratum, and its acres.");
  return strataList(
    cells.map(([name]): unknown[] => [name]),
    { acres: cells.map(([, acres]): unknown[] => [acres]) },
  );
}

/** A column beside the plot list; undefined when it is left out or blank from top to bottom. */
function besidePlots(given: unknown, what: string, plots: unknown, { rows }: PlotList): Column | undefined {
  const names = column(given, what);
  if (isMissing(names)) return undefined;
  sharedRows([column(plots, "Plot list"), names]);
  return rows.every((row) => isNothing(names.at(row))) ? undefined : names;
}

/** The number of the name beside each plot; a list that is not fixed takes in new names as they come. */
function placesIn(known: NameList, names: Column | undefined, list: PlotList, what: string): Int32Array {
  const fixed = known.names.length > 0;
  const bad = new BadRows("Plot list, row");
  const places = Int32Array.from(list.rows, (row) => {
    const cell = names?.at(row);
    if (isNothing(cell)) {
      bad.add(row, `the ${what} is missing.`);
      return 0;
    }
    const place = fixed ? known.placeOf(String(cell)) : known.add(String(cell));
    if (place === undefined) bad.add(row, `${what} ${spoken(cell)} is not in the list of strata.`);
    return place ?? 0;
  });
  bad.settle();
  return places;
}

/** A finite population belongs to fixed plots alone: points overlap, and no number of them covers a tract. */
function populationOf(given: unknown, { method }: Pick<Cruise, "method">): number {
  if (isLeftOut(given)) return Infinity;
  const population = oneNumber(given, "Population", { unit: "plots", low: 0, high: 1e9 }, 0);
  if (population === 0) return Infinity;
  if (method !== fixedPlots)
    throw new InvalidInput("Only fixed plots have a number that would cover the tract. Leave the population blank.");
  return population;
}
