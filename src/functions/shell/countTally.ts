import { InvalidInput } from "../../core/basis/problem";
import { squareFeet } from "../../core/basis/units";
import type { MeasuredTree } from "../../core/cruise/countMeasure";
import { pointSample } from "../../core/cruise/methods/pointSample";
import { BadRows, column, filledRows, isNothing, numberAt, sharedRows } from "./columns";
import { plotList, plotSizes } from "./plots";
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
  const sizes = plotSizes(given.baf, pointSample, units, given.plots, list);
  const bafs = Float64Array.from(list.cells, (_, plot) => {
    const baf = sizes.ofPlot(plot);
    if (baf === undefined) throw new InvalidInput("Basal area factor should be one value, or one for each point.");
    return baf;
  });
  const counts = new Float64Array(bafs.length);
  const trees: MeasuredTree[] = [];

  const plot = column(given.plot, "Plot");
  const counted = column(given.counted, "Counted trees");
  const volume = column(given.volume, "Volume");
  const treeArea = column(given.treeArea, "Basal area of the tree");
  const columns = [plot, counted, volume, treeArea];
  const filled = columns.filter(({ single }) => !single).map((one) => filledRows(one));
  const rows = Math.min(sharedRows(columns), Math.max(1, ...filled));
  const area = {
    unit: units.treeArea.name,
    low: THINNEST * units.treeArea.perOurs,
    high: THICKEST * units.treeArea.perOurs,
  };
  const bad = new BadRows();
  for (let row = 0; row < rows; row += 1) {
    bad.guard(row, () => {
      const basalArea = numberAt(treeArea, row, area, 0) / units.treeArea.perOurs;
      const measured = basalArea > 0;
      if (!measured && !isNothing(volume.at(row))) throw new InvalidInput("the basal area of the tree is missing.");
      const count = numberAt(counted, row, COUNT, measured ? 1 : 0);
      const cell = plot.at(row);
      if (isNothing(cell)) {
        if (count > 0) throw new InvalidInput("the plot is missing.");
        return;
      }
      const place = list.known.placeOf(String(cell));
      if (place === undefined) throw new InvalidInput(`plot ${String(cell).slice(0, 60)} is not in the plot list.`);
      counts[place] = (counts[place] as number) + count;
      if (!measured) return;
      trees.push({
        plot: place,
        count,
        baf: bafs[place] as number,
        basalArea: squareFeet(basalArea),
        volume: numberAt(volume, row, VOLUME, 0),
      });
    });
  }
  if (list.cells.length === 0 && bad.found)
    throw new InvalidInput("The plot list is empty. Every plot belongs in it, those without trees too.");
  bad.settle();
  return { counts, bafs, trees };
}
