import { InvalidInput } from "../../core/basis/problem";
import { squareFeet } from "../../core/basis/units";
import type { MeasuredTree } from "../../core/cruise/countMeasure";
import { pointSample } from "../../core/cruise/methods/pointSample";
import type { NameList } from "../../core/cruise/nameList";
import { BadRows } from "./badRows";
import { column, filledRows, isNothing, numbersOf, remembered, sharedRows, type Column } from "./columns";
import { plotList, spoken, type PlotList } from "./plots";
import { plotSizes } from "./plotSizes";
import type { UnitSystem } from "./unitSystem";

export interface CountArguments {
  readonly plot: unknown;
  readonly counted: unknown;
  readonly plots: unknown;
  readonly baf: unknown;
  readonly volume: unknown;
  readonly treeArea: unknown;
}

export interface CountTally {
  /** Trees counted at each point, and the basal area factor there. [ft2/ac] */
  readonly counts: Float64Array;
  readonly bafs: Float64Array;
  readonly trees: readonly MeasuredTree[];
}

const VOLUME = { unit: "", low: 0, high: 1e6 };
const COUNT = { unit: "trees", low: 0.1, high: 1000 };
const THINNEST = 0.005; // ft2, a tree of 1 in
const THICKEST = 35; // ft2, a tree of 80 in

/**
 * Reads points on which trees were counted and some measured. A row with a basal area is a measured tree and counts
 * as 1 unless it says otherwise; a row without one is a count of trees, and a blank there is a count of none.
 *
 * @throws InvalidInput naming the first bad row and how many more there are
 */
export function readCounts(given: CountArguments, units: UnitSystem): CountTally {
  const list = plotList(given.plots);
  const bafs = factors(given, units, list);
  const counts = new Float64Array(bafs.length);
  const trees: MeasuredTree[] = [];
  const bad = new BadRows();
  const { plot, rows, treeAreas, volumes, counted } = columnsOf(given, units, bad);
  const places = placesOf(plot, rows, list.known);
  for (let row = 0; row < rows; row += 1) {
    const measured = treeAreas[row] !== 0;
    const count = counted[row] === 0 && measured ? 1 : (counted[row] as number);
    const place = places[row] as number;
    if (!measured && volumes[row] !== 0) bad.add(row, "the basal area of the tree is missing.");
    else if (place === NOWHERE && count > 0) bad.add(row, "the plot is missing.");
    else if (place === UNKNOWN) bad.add(row, `plot ${spoken(plot.at(row))} is not in the plot list.`);
    if (place < 0) continue;
    counts[place] = (counts[place] as number) + count;
    if (!measured) continue;
    const basalArea = squareFeet((treeAreas[row] as number) / units.treeArea.perOurs);
    trees.push({ plot: place, count, baf: bafs[place] as number, basalArea, volume: volumes[row] as number });
  }
  if (list.cells.length === 0 && bad.found)
    throw new InvalidInput("The plot list is empty. Every plot belongs in it, those without trees too.");
  bad.settle();
  return { counts, bafs, trees };
}

/** The basal area factor of each point. [ft2/ac] */
function factors({ baf, plots }: CountArguments, units: UnitSystem, list: PlotList): Float64Array {
  const sizes = plotSizes(baf, pointSample, units, plots, list);
  return Float64Array.from(list.cells, (_, plot) => {
    const own = sizes.ofPlot(plot);
    if (own === undefined) throw new InvalidInput("Basal area factor should be one value, or one for each point.");
    return own;
  });
}

/** The lists of the tally as numbers, 0 where they are blank; the plots are left as they stand. */
function columnsOf(given: CountArguments, { treeArea }: UnitSystem, bad: BadRows) {
  const plot = column(given.plot, "Plot");
  const counted = column(given.counted, "Counted trees");
  const volume = column(given.volume, "Volume");
  const area = column(given.treeArea, "Basal area of the tree");
  const columns = [plot, counted, volume, area];
  const filled = columns.filter(({ single }) => !single).map((one) => filledRows(one));
  const rows = Math.min(sharedRows(columns), Math.max(1, ...filled));
  const areaBounds = { unit: treeArea.name, low: THINNEST * treeArea.perOurs, high: THICKEST * treeArea.perOurs };
  return {
    plot,
    rows,
    treeAreas: numbersOf(area, rows, areaBounds, 0, bad),
    volumes: numbersOf(volume, rows, VOLUME, 0, bad),
    counted: numbersOf(counted, rows, COUNT, 0, bad),
  };
}

const NOWHERE = -1;
const UNKNOWN = -2;

/** The point of each row, counted from 0. */
function placesOf(plot: Column, rows: number, known: NameList): Int32Array {
  const placeOf = remembered((cell: unknown) => (isNothing(cell) ? NOWHERE : (known.placeOf(String(cell)) ?? UNKNOWN)));
  const places = new Int32Array(rows);
  for (let row = 0; row < rows; row += 1) places[row] = placeOf(plot.at(row));
  return places;
}
