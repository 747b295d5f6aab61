import { InvalidInput } from "../../core/basis/problem";
import { acres, squareFeetPerAcre } from "../../core/basis/units";
import { sameSize, sizeByBreakpoint, sizeByDiameter, sizePerPlot, type PlotSizes } from "../../core/cruise/plotSizes";
import type { SampleSize, SamplingMethod } from "../../core/cruise/samplingMethod";
import { BadRows } from "./badRows";
import { column, isNothing, numberAt, sharedRows } from "./columns";
import type { PlotList } from "./plots";
import { asCells, oneNumber, type Bounds } from "./readings";
import type { Unit, UnitSystem } from "./unitSystem";

/**
 * The basal area factor or the plot size, from the user's unit: one value for every plot; one for each, beside the
 * plot list; or, in two columns, the least diameter of each nested plot and its size.
 */
export function plotSizes(
  given: unknown,
  method: SamplingMethod,
  units: UnitSystem,
  plots: unknown,
  list: PlotList,
): PlotSizes {
  const cells = asCells(given);
  if (method.thinTrees) return nestedSizes(given, method, units);
  if (cells.length === 1 && cells[0]?.length === 1) {
    if (method.complete && list.cells.length > 1) {
      throw new InvalidInput(
        "Each part of the tract needs its own acres. Give them as a column beside the plot list, or list one plot.",
      );
    }
    return sameSize(sampleSize(given, method, units));
  }
  return cells[0]?.length === 2 && !alike(cells, asCells(plots))
    ? nestedSizes(given, method, units)
    : sizePerPlot(besideThePlots(given, method, units, plots, list));
}

/** One size, from the user's unit. */
export function sampleSize(given: unknown, method: SamplingMethod, units: UnitSystem): SampleSize {
  const { bounds, tag } = sizeOf(method, units);
  return tag(oneNumber(given, method.size.what, bounds));
}

const alike = (one: readonly unknown[][], other: readonly unknown[][]) =>
  one.length === other.length && one[0]?.length === other[0]?.length;

/** How a size of this method is bounded in the user's unit, and brought from it into ours. */
export function sizeOf(
  method: SamplingMethod,
  units: UnitSystem,
): { bounds: Bounds; tag: (value: number) => SampleSize } {
  const { kind, low, high } = method.size;
  const unit: Unit = kind === "area" ? units.area : units.areaPerLand;
  const ours = kind === "area" ? acres : squareFeetPerAcre;
  return {
    bounds: {
      unit: unit.name,
      low: low * unit.perOurs,
      high: high * unit.perOurs,
    },
    tag: (value) => ours(value / unit.perOurs),
  };
}

function besideThePlots(
  given: unknown,
  method: SamplingMethod,
  units: UnitSystem,
  plots: unknown,
  { rows }: PlotList,
): Float64Array {
  const { bounds, tag } = sizeOf(method, units);
  const sizes = column(given, method.size.what);
  sharedRows([column(plots, "Plot list"), sizes]);
  const bad = new BadRows("Plot list, row");
  const read = Float64Array.from(rows, (row) => {
    let size = 0;
    bad.guard(row, () => {
      size = numberAt(sizes, row, bounds, 0);
      if (size === 0) throw new InvalidInput(`${method.size.what} is missing.`);
    });
    return tag(size);
  });
  bad.settle();
  return read;
}

/**
 * Rows of the least diameter and the size of a nested plot. Where thin trees are picked another way, the thickest row
 * is the gauge and the others are plots.
 */
function nestedSizes(given: unknown, method: SamplingMethod, units: UnitSystem): PlotSizes {
  if (method.plotsWeigh !== "equally")
    throw new InvalidInput(`${method.size.what} cannot go by the diameter of the tree.`);
  const bad = new BadRows("Size, row");
  const seen = new Set<number>();
  const rows = asCells(given).flatMap(([least, size], row) => {
    const read = { row, leastDbh: 0, size: size as unknown };
    if (isNothing(least) && isNothing(size)) return [];
    bad.guard(row, () => {
      read.leastDbh =
        numberAt(column(least, "Least DBH"), 0, { unit: units.diameter.name, low: 0, high: 1000 }, 0) /
        units.diameter.perOurs;
      if (seen.has(read.leastDbh)) throw new InvalidInput("this least DBH stands there twice.");
      seen.add(read.leastDbh);
    });
    return [read];
  });
  const { thinTrees } = method;
  if (thinTrees && (asCells(given)[0]?.length !== 2 || (!bad.found && rows.length < 2))) {
    throw new InvalidInput(
      "Point and fixed needs two columns of at least two rows: the least DBH and the plot size of the thin trees, and the least DBH and the basal area factor of the thick ones.",
    );
  }
  const breakpoint = Math.max(...seen);
  const steps = rows.map(({ row, leastDbh, size }) => {
    const { bounds, tag } = sizeOf(thinTrees && leastDbh < breakpoint ? thinTrees : method, units);
    const step = { leastDbh, size: tag(0) };
    bad.guard(row, () => {
      step.size = tag(oneNumber(size, (thinTrees && leastDbh < breakpoint ? thinTrees : method).size.what, bounds));
    });
    return step;
  });
  bad.settle();
  if (steps.length === 0) throw new InvalidInput(`${method.size.what} needs a number, but the cell is blank.`);
  return thinTrees ? sizeByBreakpoint(steps, thinTrees) : sizeByDiameter(steps);
}
