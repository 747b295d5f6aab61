import { chosen } from "../../core/basis/choices";
import { InvalidInput } from "../../core/basis/problem";
import type { Cruise } from "../../core/cruise/cruise";
import { samplingMethods } from "../../core/cruise/methods";
import { NameList } from "../../core/cruise/nameList";
import { BadRows, column, filledRows, isMissing, isNothing, numbersOf, sharedRows, type Column } from "./columns";
import { plotList, plotSizes } from "./plots";
import type { UnitSystem } from "./unitSystem";

/** The arguments that every stand table shares, as the cell gave them. */
export interface TallyArguments {
  readonly plot: unknown;
  readonly dbh: unknown;
  readonly plots: unknown;
  readonly method: unknown;
  readonly size: unknown;
  readonly species?: unknown;
  readonly volume?: unknown;
  readonly count?: unknown;
}

export interface Tally {
  readonly cruise: Cruise;
  /** Number of the species of each line, counted from 0, and their names as first spelt. */
  readonly species: ArrayLike<number>;
  readonly speciesNames: readonly string[];
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

  const plot = column(given.plot, "Plot");
  const dbh = column(given.dbh, "DBH");
  const species = column(given.species, "Species");
  const volume = column(given.volume, "Volume");
  const count = column(given.count, "Count");
  const rows = Math.min(sharedRows([plot, dbh, species, volume, count]), dbh.single ? Infinity : filledRows(dbh));

  const bad = new BadRows();
  const diameters = numbersOf(dbh, rows, dbhBounds(units, size.leastDbh), 0, bad);
  const places = placesOf(plot, known, diameters, bad);
  const volumes = isMissing(volume) ? undefined : numbersOf(volume, rows, VOLUME, 0, bad, diameters);
  const counts = numbersOf(count, rows, COUNT, 1, bad, diameters);
  if (plotCells.length === 0 && bad.found) {
    throw new InvalidInput("The plot list is empty. Every plot belongs in it, those without trees too.");
  }
  bad.settle();

  const kinds = new NameList();
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
    },
    species: used(kind),
    speciesNames: kinds.names,
    plotCells,
  };
}

/** The plot of every row with a diameter, counted from 0. */
function placesOf(plot: Column, known: NameList, diameters: Float64Array, bad: BadRows): Float64Array {
  const places = new Float64Array(diameters.length);
  const placeOf = remembered((cell: unknown) => (isNothing(cell) ? undefined : known.placeOf(String(cell))));
  const { narrow } = plot;
  for (let row = 0; row < places.length; row += 1) {
    if (diameters[row] === 0) continue;
    const cell: unknown = narrow ? narrow[row]?.[0] : plot.at(row);
    const place = placeOf(cell);
    if (place !== undefined) places[row] = place;
    else
      bad.add(
        row,
        isNothing(cell) ? "the plot is missing." : `plot ${String(cell).slice(0, 60)} is not in the plot list.`,
      );
  }
  return places;
}

/** The species of every row with a diameter, counted from 0; new ones are added to the list. */
function kindsOf(species: Column, kinds: NameList, diameters: Float64Array): Float64Array {
  const numbers = new Float64Array(diameters.length);
  const kindOf = remembered((cell: unknown) => kinds.add(isNothing(cell) ? NO_SPECIES : String(cell)));
  const anyTree = diameters.some((diameter) => diameter !== 0);
  if (species.single) return anyTree ? numbers.fill(kindOf(species.at(0))) : numbers;
  for (let row = 0; row < numbers.length; row += 1) if (diameters[row] !== 0) numbers[row] = kindOf(species.at(row));
  return numbers;
}

/** Takes the rows with a diameter out of a column; most tallies have no other, and keep theirs. */
function linesWithTrees(diameters: Float64Array): (column: Float64Array) => Float64Array {
  if (!diameters.includes(0)) return (whole) => whole;
  return (whole) => whole.filter((_, row) => diameters[row] !== 0);
}

/**
 * Spares the work on a cell that was met before: a tally names few plots and species many times. Most plots go by
 * small whole numbers, which a plain list finds sooner than a map does.
 */
function remembered<T>(work: (cell: unknown) => T): (cell: unknown) => T {
  const numbered: T[] = [];
  const known = new Map<unknown, T>();
  return (cell) => {
    const small = typeof cell === "number" && cell >= 0 && cell < 10_000 && Number.isInteger(cell);
    const before = small ? numbered[cell] : known.get(cell);
    if (before !== undefined) return before;
    const answer = work(cell);
    if (small) numbered[cell] = answer;
    else known.set(cell, answer);
    return answer;
  };
}
