import { chosen } from "../../core/basis/choices";
import { InvalidInput } from "../../core/basis/problem";
import { acres, squareFeetPerAcre } from "../../core/basis/units";
import type { Cruise } from "../../core/cruise/cruise";
import { samplingMethods } from "../../core/cruise/methods";
import { NameList } from "../../core/cruise/nameList";
import type { SampleSize, SamplingMethod } from "../../core/cruise/samplingMethod";
import { BadRows, column, filledRows, isNothing, numberAt, sharedRows } from "./columns";
import { isLeftOut, oneNumber } from "./readings";
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
export const dbhBounds = ({ diameter }: UnitSystem) => ({
  unit: diameter.name,
  low: diameter.perOurs,
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
  const size = sampleSize(given.size, method, units);
  const { cells: plotCells, placeOf } = plotList(given.plots);

  const plot = column(given.plot, "Plot");
  const dbh = column(given.dbh, "DBH");
  const species = column(given.species, "Species");
  const volume = column(given.volume, "Volume");
  const count = column(given.count, "Count");
  const rows = Math.min(sharedRows([plot, dbh, species, volume, count]), dbh.single ? Infinity : filledRows(dbh));

  const lines = {
    plot: new Int32Array(rows),
    dbh: new Float64Array(rows),
    volume: new Float64Array(rows),
    count: new Float64Array(rows),
    species: new Int32Array(rows),
  };
  const kinds = new NameList();
  const kindOf = remembered((cell: unknown) => kinds.add(isNothing(cell) ? NO_SPECIES : String(cell)));
  const bounds = dbhBounds(units);
  const bad = new BadRows();
  let used = 0;
  let row = 0;
  const readLine = () => {
    const diameter = numberAt(dbh, row, bounds, 0);
    if (diameter === 0) return;
    const place = placeOf(plot.at(row));
    if (place === undefined) return bad.add(row, notInList(plot.at(row)));
    lines.plot[used] = place;
    lines.dbh[used] = diameter / units.diameter.perOurs;
    lines.volume[used] = numberAt(volume, row, VOLUME, 0);
    lines.count[used] = numberAt(count, row, COUNT, 1);
    lines.species[used] = kindOf(species.at(row));
    used += 1;
  };
  for (; row < rows; row += 1) bad.guard(row, readLine);
  if (plotCells.length === 0 && bad.found) {
    throw new InvalidInput("The plot list is empty. Every plot belongs in it, those without trees too.");
  }
  bad.settle();

  const volumes = lines.volume.subarray(0, used);
  return {
    cruise: {
      method,
      size,
      plots: plotCells.length,
      plot: lines.plot.subarray(0, used),
      dbh: lines.dbh.subarray(0, used),
      count: lines.count.subarray(0, used),
      ...(!isLeftOut(given.volume) && volumes.some((one) => one > 0) && { volume: volumes }),
    },
    species: lines.species.subarray(0, used),
    speciesNames: kinds.names,
    plotCells,
  };
}

/** The basal area factor or the plot size, from the user's unit. */
export function sampleSize(given: unknown, method: SamplingMethod, units: UnitSystem): SampleSize {
  const { what, kind, low, high } = method.size;
  const unit = kind === "area" ? units.area : units.areaPerLand;
  const tag = kind === "area" ? acres : squareFeetPerAcre;
  return tag(
    oneNumber(given, what, { unit: unit.name, low: low * unit.perOurs, high: high * unit.perOurs }) / unit.perOurs,
  );
}

/** Every plot that was visited, in the order of the list. */
function plotList(given: unknown) {
  const list = column(given, "Plot list");
  const cells: (string | number)[] = [];
  const known = new NameList();
  const rows = filledRows(list);
  for (let row = 0; row < rows; row += 1) {
    const cell = list.at(row);
    if (isNothing(cell)) continue;
    if (known.placeOf(String(cell)) !== undefined)
      throw new InvalidInput(`Plot ${String(cell)} is in the plot list twice.`);
    known.add(String(cell));
    cells.push(typeof cell === "number" ? cell : String(cell).trim());
  }
  return { cells, placeOf: remembered((cell: unknown) => known.placeOf(String(cell))) };
}

const notInList = (cell: unknown) =>
  isNothing(cell) ? "the plot is missing." : `plot ${String(cell)} is not in the plot list.`;

/** Spares the work on a text that was met before: a tally names few plots and species many times. */
function remembered<T>(work: (cell: unknown) => T): (cell: unknown) => T {
  const known = new Map<unknown, T>();
  return (cell) => {
    const before = known.get(cell);
    if (before !== undefined) return before;
    const answer = work(cell);
    known.set(cell, answer);
    return answer;
  };
}
