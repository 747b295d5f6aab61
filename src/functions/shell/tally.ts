import { chosen } from "../../core/basis/choices";
import { InvalidInput } from "../../core/basis/problem";
import type { Cruise } from "../../core/cruise/cruise";
import { samplingMethods } from "../../core/cruise/methods";
import { NameList } from "../../core/cruise/nameList";
import { BadRows } from "./badRows";
import { column, filledRows, isMissing, isNothing, numbersOf, remembered, sharedRows, type Column } from "./columns";
import { readDesign, type DesignArguments } from "./design";
import { plotList, spoken } from "./plots";
import { plotSizes } from "./plotSizes";
import type { UnitSystem } from "./unitSystem";

/** The arguments that every stand table shares, as the cell gave them. */
export interface TallyArguments extends DesignArguments {
  readonly plot: unknown;
  readonly dbh: unknown;
  readonly plots: unknown;
  readonly method: unknown;
  readonly size: unknown;
  readonly species?: unknown;
  /** Whether each tree is to be cut, in the owner's words. */
  readonly take?: unknown;
  readonly volume?: unknown;
  readonly count?: unknown;
}

export interface Tally {
  readonly cruise: Cruise;
  /** Number of the species of each line, counted from 0, and their names as first spelt. */
  readonly species: ArrayLike<number>;
  readonly speciesNames: readonly string[];
  /** The mark of each line, counted and named as the species are. Left out when nothing was marked. */
  readonly mark?: { readonly of: ArrayLike<number>; readonly names: readonly string[] };
  /** The plots as their list has them. */
  readonly plotCells: readonly (string | number)[];
}

/** How a tree without a species is shown. */
export const NO_SPECIES = "(blank)";

const VOLUME = { unit: "", low: 0, high: 1e6 };
const COUNT = { unit: "trees", low: 0.1, high: 1000 };

/** Bounds of a diameter at breast height, in the user's unit. */
export const dbhBounds = ({ diameter }: UnitSystem, least = 1) => ({
  unit: diameter.name,
  low: Math.max(1, least) * diameter.perOurs,
  high: 80 * diameter.perOurs,
});

/**
 * Reads a tally and its plot list. A line without a diameter is passed over; a line that cannot be used is an error
 * for the whole table, since a mean without it would be wrong in silence.
 *
 * @throws InvalidInput naming the first bad row and how many more there are
 */
export function readTally(given: TallyArguments, units: UnitSystem): Tally {
  const method = chosen("Method", given.method, samplingMethods);
  const list = plotList(given.plots);
  const size = plotSizes(given.size, method, units, given.plots, list);
  const { cells: plotCells, known } = list;
  const design = readDesign(given, { method, size, plots: plotCells.length }, list);

  const plot = column(given.plot, "Plot");
  const dbh = column(given.dbh, "DBH");
  const species = column(given.species, "Species");
  const take = column(given.take, "Take");
  const volume = column(given.volume, "Volume");
  const count = column(given.count, "Count");
  const rows = Math.min(sharedRows([plot, dbh, species, take, volume, count]), dbh.single ? Infinity : filledRows(dbh));

  const bad = new BadRows();
  const diameters = numbersOf(dbh, rows, dbhBounds(units, size.leastDbh), 0, bad);
  const places = placesOf(plot, known, diameters, bad);
  const volumes = isMissing(volume) ? undefined : numbersOf(volume, rows, VOLUME, 0, bad, diameters);
  const counts = numbersOf(count, rows, COUNT, 1, bad, diameters);
  if (plotCells.length === 0 && bad.found) {
    throw new InvalidInput("The plot list is empty. Every plot belongs in it, those without trees too.");
  }
  bad.settle();

  const [kinds, marks] = [new NameList(), new NameList()];
  const kind = kindsOf(species, kinds, diameters);
  const perInch = units.diameter.perOurs;
  const used = linesWithTrees(diameters);
  return {
    cruise: {
      method,
      size,
      plots: plotCells.length,
      plot: used(places),
      dbh: used(perInch === 1 ? diameters : diameters.map((diameter) => diameter / perInch)),
      count: used(counts),
      ...(volumes?.some((one) => one > 0) && { volume: used(volumes) }),
      ...(design && { design }),
    },
    species: used(kind),
    speciesNames: kinds.names,
    ...(!isMissing(take) && { mark: { of: used(kindsOf(take, marks, diameters)), names: marks.names } }),
    plotCells,
  };
}

/** The plot of every row with a diameter, counted from 0. */
function placesOf(plot: Column, known: NameList, diameters: Float64Array, bad: BadRows): Int32Array {
  const places = new Int32Array(diameters.length);
  const placeOf = remembered((cell: unknown) => (isNothing(cell) ? undefined : known.placeOf(String(cell))));
  const { narrow } = plot;
  for (let row = 0; row < places.length; row += 1) {
    if (diameters[row] === 0) continue;
    const cell: unknown = narrow ? narrow[row]?.[0] : plot.at(row);
    const place = placeOf(cell);
    if (place !== undefined) places[row] = place;
    else bad.add(row, isNothing(cell) ? "the plot is missing." : `plot ${spoken(cell)} is not in the plot list.`);
  }
  return places;
}

/** The species, or the mark, of every row with a diameter, counted from 0; new ones are added to the list. */
function kindsOf(species: Column, kinds: NameList, diameters: Float64Array): Int32Array {
  const numbers = new Int32Array(diameters.length);
  const kindOf = remembered((cell: unknown) => kinds.add(isNothing(cell) ? NO_SPECIES : String(cell)));
  const anyTree = diameters.some((diameter) => diameter !== 0);
  if (species.single) return anyTree ? numbers.fill(kindOf(species.at(0))) : numbers;
  const { narrow } = species;
  for (let row = 0; row < numbers.length; row += 1)
    if (diameters[row] !== 0) numbers[row] = kindOf(narrow ? narrow[row]?.[0] : species.at(row));
  return numbers;
}

/** Takes the rows with a diameter out of a column; most tallies have no other, and keep theirs. */
function linesWithTrees(diameters: Float64Array) {
  const all = !diameters.includes(0);
  return <T extends Float64Array | Int32Array>(whole: T): T =>
    all ? whole : (whole.filter((_, row) => diameters[row] !== 0) as T);
}
