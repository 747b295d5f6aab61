import { chosen } from "../core/basis/choices";
import { allocations } from "../core/cruise/plotsByStratum";
import { answered } from "./shell/answers";
import { oneNumber, oneText } from "./shell/readings";
import { confidenceOf } from "./shell/margins";
import { allocationTable, clusterTable, strataTable } from "./shell/strataTables";

/**
 * By what strata share the plots out.
 * @customenum {string}
 */
export enum AllocationName {
  /** The least margin of error: more plots where there is more volume and where plots differ more. */
  Best = "Best",
  /** In proportion to the acres. */
  Area = "By area",
}

/**
 * How to share a number of plots out among strata; the parts add up to the number.
 * @customfunction PLOTSBYSTRATUM
 * @param stratum Name of each stratum.
 * @param acres Size of each stratum, in acres or hectares.
 * @param mean What an acre of each stratum holds, by guess or by an earlier cruise, in any one unit.
 * @param cv_pct How much the plots of each stratum differ: their coefficient of variation, in percent.
 * @param plots Number of plots to share out.
 * @param [allocation] Best, for the least margin of error, or By area. Left out: Best.
 * @returns A table: stratum and its plots, at least 2 in each.
 */
export function plotsByStratum(
  stratum: any[][],
  acres: any[][],
  mean: any[][],
  cv_pct: any[][],
  plots: any,
  allocation?: AllocationName,
): any[][] {
  return answered(() => {
    const total = oneNumber(plots, "Plots", { unit: "plots", low: 2, high: 1e6 });
    const way = chosen("Allocation", oneText(allocation, "Allocation", AllocationName.Best), allocations);
    return allocationTable(stratum, { acres, mean, variation: cv_pct }, total, way);
  });
}

/**
 * Mean, margin of error and total of each stratum and of the whole tract, each stratum by its acres.
 * @customfunction STRATASUMMARY
 * @param stratum Stratum of each plot: name or number.
 * @param value What each plot says of an acre, one number a plot, in any one unit; a blank counts as 0, a plot without trees.
 * @param strata Every stratum of the tract: names or numbers.
 * @param acres Size of each of these strata, in acres (hectares where the values are per hectare).
 * @param [confidence_pct] Confidence of the margins, in percent. Left out: 95.
 * @returns A table: stratum, mean, margin, margin in percent, low, high, total and number of plots; all strata in the last row.
 */
export function strataSummary(
  stratum: any[][],
  value: any[][],
  strata: any[][],
  acres: any[][],
  confidence_pct?: any,
): any[][] {
  return answered(() => strataTable(stratum, value, strata, acres, confidenceOf(confidence_pct)));
}

/**
 * Mean and margin of error of plots that were taken in groups, with the group as the unit.
 * @customfunction CLUSTERSUMMARY
 * @param cluster Group that each plot belongs to: name or number.
 * @param value What each plot says of an acre, one number a plot, in any one unit; a blank counts as 0, a plot without trees.
 * @param [confidence_pct] Confidence of the margin, in percent. Left out: 95.
 * @returns A table of one row: mean, margin, margin in percent, low, high, number of groups and of plots.
 */
export function clusterSummary(cluster: any[][], value: any[][], confidence_pct?: any): any[][] {
  return answered(() => clusterTable(cluster, value, confidenceOf(confidence_pct)));
}
