import { plotTotals } from "../../core/cruise/plotTotals";
import { areaName, NO_TREES, treesName, volumeName } from "./amounts";
import { spilled } from "./answers";
import type { Cells } from "./readings";
import type { Tally } from "./tally";
import type { UnitSystem } from "./unitSystem";

/** What each plot says of an acre, in the order of the plot list, plots without trees included. */
export function plotsTable({ cruise, plotCells }: Tally, units: UnitSystem): Cells {
  const header = ["Plot", "Trees tallied", treesName(units), areaName(units), volumeName(units)];
  if (cruise.dbh.length === 0) return spilled(header, NO_TREES);
  const totals = plotTotals(cruise);
  return spilled(
    header,
    plotCells.map((plot, at) => [
      plot,
      totals.tally[at],
      (totals.trees[at] as number) * units.perLand.perOurs,
      (totals.basalArea[at] as number) * units.areaPerLand.perOurs,
      totals.volume && (totals.volume[at] as number) * units.perLand.perOurs,
    ]),
  );
}
