import { OutOfRange } from "../core/basis/problem";
import { percent } from "../core/basis/units";
import { estimate } from "../core/cruise/estimate";
import { morePlots as furtherPlots } from "../core/cruise/morePlots";
import { plotsNeeded as plotsFor } from "../core/cruise/plotsNeeded";
import { answered } from "./shell/answers";
import { plotValues } from "./shell/plotValues";
import { isLeftOut, oneNumber } from "./shell/readings";
import { confidenceOf } from "./shell/margins";

/**
 * Number of plots for the margin of error that you want.
 * @customfunction PLOTSNEEDED
 * @param cv_pct How much plots differ: their coefficient of variation, in percent of the mean.
 * @param error_pct Margin of error that you want, in percent of the mean.
 * @param [confidence_pct] Confidence, in percent. Left out: 95.
 * @param [population] How many plots would cover the whole tract, for fixed plots only: number of plots. Left out: no limit.
 * @returns Number of plots.
 */
export function plotsNeeded(cv_pct: any, error_pct: any, confidence_pct?: any, population?: any): number {
  return answered(() =>
    plotsFor(
      percent(oneNumber(cv_pct, "Coefficient of variation", { unit: "%", low: 1, high: 1000 })),
      wantedError(error_pct),
      confidenceOf(confidence_pct),
      isLeftOut(population) ? Infinity : oneNumber(population, "Population", { unit: "plots", low: 2, high: 1e9 }),
    ),
  );
}

/**
 * Margin of error of the mean of your plots: the mean lies within this much, give or take.
 * @customfunction MARGINOFERROR
 * @param values What each plot says, one number a plot, in any one unit; a blank between others counts as 0, a plot without trees; type 0 for an empty plot at the end.
 * @param [confidence_pct] Confidence, in percent. Left out: 95.
 * @returns Half the width of the interval, in the unit of the values.
 */
export function marginOfError(values: any[][], confidence_pct?: any): number {
  return answered(() => estimate(plotValues(values), confidenceOf(confidence_pct)).margin);
}

/**
 * Margin of error of the mean of your plots, in percent of the mean.
 * @customfunction MARGINPERCENT
 * @param values What each plot says, one number a plot, in any one unit; a blank between others counts as 0, a plot without trees; type 0 for an empty plot at the end.
 * @param [confidence_pct] Confidence, in percent. Left out: 95.
 * @returns Percent of the mean.
 */
export function marginPercent(values: any[][], confidence_pct?: any): number {
  return answered(() => {
    const { marginPercent } = estimate(plotValues(values), confidenceOf(confidence_pct));
    if (marginPercent === undefined) throw new OutOfRange("Nothing to work on yet.");
    return marginPercent;
  });
}

/**
 * How many further plots would bring the margin of error down to what you want.
 * @customfunction MOREPLOTS
 * @param values What each plot taken so far says, one number a plot, in any one unit; a blank between others counts as 0, a plot without trees; type 0 for an empty plot at the end.
 * @param error_pct Margin of error that you want, in percent of the mean.
 * @param [confidence_pct] Confidence, in percent. Left out: 95.
 * @returns Number of further plots; 0 when you have enough.
 */
export function morePlots(values: any[][], error_pct: any, confidence_pct?: any): number {
  return answered(() => furtherPlots(plotValues(values), wantedError(error_pct), confidenceOf(confidence_pct)));
}

const wantedError = (given: unknown) => percent(oneNumber(given, "Margin of error", { unit: "%", low: 1, high: 100 }));
