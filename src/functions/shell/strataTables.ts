import { acres as inAcres, percent, type Percent } from "../../core/basis/units";
import { clusterEstimate } from "../../core/cruise/clusters";
import type { Estimate } from "../../core/cruise/estimate";
import { plotsByStratum, type Allocation } from "../../core/cruise/plotsByStratum";
import { stratifiedEstimate } from "../../core/cruise/stratified";
import { spilled } from "./answers";
import { groupedValues } from "./groups";
import type { Cells } from "./readings";
import { marginAt } from "./margins";
import { strataList } from "./strataList";

const NO_PLOTS = [["No plots yet"]];

const cellsOf = ({ value, margin, marginPercent, low, high }: Estimate) => [value, margin, marginPercent, low, high];

/** Mean of each stratum and of all of them together, with margins and totals. */
export function strataTable(stratum: unknown, value: unknown, strata: unknown, acres: unknown, at: Percent): Cells {
  const listed = strataList(strata, { acres });
  const { values } = groupedValues(
    stratum,
    value,
    "Stratum",
    listed.map(({ name }) => name),
  );
  const header = ["Stratum", "Mean", marginAt(at), "Margin %", "Low", "High", "Total", "Plots"];
  if (listed.length === 0) return spilled(header, NO_PLOTS);
  const parts = listed.map(({ name, acres = 0 }, place) => ({
    name,
    acres: inAcres(acres),
    plots: values[place] ?? [],
  }));
  const found = stratifiedEstimate(parts, at);
  const all = parts.reduce((sum, { acres }) => sum + acres, 0);
  const plots = parts.reduce((sum, { plots }) => sum + plots.length, 0);
  return spilled(header, [
    ...parts.map(({ name, acres, plots }, place) => {
      const own = found.strata[place] as Estimate;
      return [name, ...cellsOf(own), own.value * acres, plots.length];
    }),
    ["All strata", ...cellsOf(found.combined), found.combined.value * all, plots],
  ]);
}

/** Mean of plots that were taken in groups, with the group as the unit of the margin. */
export function clusterTable(cluster: unknown, value: unknown, at: Percent): Cells {
  const { values } = groupedValues(cluster, value, "Cluster");
  const header = ["Mean", marginAt(at), "Margin %", "Low", "High", "Clusters", "Plots"];
  if (values.length === 0) return spilled(header, NO_PLOTS);
  const plots = values.reduce((sum, group) => sum + group.length, 0);
  return spilled(header, [[...cellsOf(clusterEstimate(values, at)), values.length, plots]]);
}

/** How many plots each stratum gets, so that they add up. */
export function allocationTable(
  stratum: unknown,
  given: {
    readonly acres: unknown;
    readonly mean: unknown;
    readonly variation: unknown;
  },
  plots: number,
  allocation: Allocation,
): Cells {
  const listed = strataList(stratum, given);
  const header = ["Stratum", "Plots"];
  if (listed.length === 0) return spilled(header, [["No strata yet"]]);
  const parts = plotsByStratum(
    listed.map(({ acres = 0, mean = 0, variation = 0 }) => ({
      acres: inAcres(acres),
      mean,
      variation: percent(variation),
    })),
    plots,
    allocation,
  );
  return spilled(
    header,
    listed.map(({ name }, place) => [name, parts[place]]),
  );
}
