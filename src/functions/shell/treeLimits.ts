import { chosen } from "../../core/basis/choices";
import { inches } from "../../core/basis/units";
import type { FullTallyLine } from "../../core/cruise/checkTally";
import { samplingMethods } from "../../core/cruise/methods";
import { column, isMissing, isNothing, sharedRows, type Column } from "./columns";
import { sampleSize } from "./plotSizes";
import { asCells, isLeftOut } from "./readings";
import type { UnitSystem } from "./unitSystem";

/** What says how far a tree may stand from the middle of its plot. */
export interface LimitArguments {
  readonly plots: unknown;
  readonly method: unknown;
  readonly size: unknown;
  readonly distance: unknown;
}

/** How far a tree of a diameter may stand; undefined where nothing tells. */
export type LimitOf = (dbh: number, plot: string | undefined) => FullTallyLine["limit"];

/**
 * How far a tree of a diameter may stand on its plot, where the tally has a middle to tape from. Sizes are one for all
 * plots, or one beside each; a plot without a size has no limit.
 */
export function limitOf({ plots, method, size, distance }: LimitArguments, units: UnitSystem): LimitOf {
  if (isLeftOut(method) || isLeftOut(size) || isMissing(column(distance, "Distance"))) return () => undefined;
  const picked = chosen("Method", asCells(method)[0]?.[0], samplingMethods);
  const sizes = column(size, picked.size.what);
  if (sizes.single) {
    const taken = sampleSize(size, picked, units);
    return (dbh) => picked.farthest?.(inches(dbh), taken);
  }
  const own = sizesByPlot(plots, sizes);
  return (dbh, plot) => {
    const cell = plot === undefined ? undefined : own.get(plot.toLowerCase());
    return cell === undefined ? undefined : picked.farthest?.(inches(dbh), sampleSize([[cell]], picked, units));
  };
}

function sizesByPlot(plots: unknown, sizes: Column): ReadonlyMap<string, unknown> {
  const names = column(plots, "Plots");
  const own = new Map<string, unknown>();
  const rows = sharedRows([names, sizes]);
  for (let row = 0; row < rows; row += 1) {
    if (isNothing(names.at(row)) || isNothing(sizes.at(row))) continue;
    own.set(String(names.at(row)).trim().toLowerCase(), sizes.at(row));
  }
  return own;
}
