import { chosen } from "../core/basis/choices";
import { studentT } from "../core/basis/statistics";
import { successiveDifferenceError } from "../core/cruise/successiveDifferences";
import { answered } from "./shell/answers";
import { checkTable, doubleTable, doubleWays } from "./shell/doubleTable";
import { plotValues } from "./shell/plotValues";
import { oneText } from "./shell/readings";
import { confidenceOf } from "./shell/margins";

/**
 * How the full measure is carried over to all plots.
 * @customenum {string}
 */
export enum DoubleWayName {
  /** Full over quick on the measured plots, times the quick mean of all plots. */
  Ratio = "Ratio",
  /** The least-squares line of full on quick, read at the quick mean of all plots. */
  Regression = "Regression",
}

/**
 * Margin of error of the mean of a grid of plots, from the differences of neighbors on the walk.
 * @customfunction SYSTEMATICMARGIN
 * @param values What each plot says in the order in which plots were walked, one number a plot, in any one unit; a blank between others counts as 0, a plot without trees; type 0 for an empty plot at the end.
 * @param [confidence_pct] Confidence, in percent. Left out: 95.
 * @returns Half the width of the interval, in the unit of the values.
 */
export function systematicMargin(values: any[][], confidence_pct?: any): number {
  return answered(() => {
    const walked = plotValues(values);
    const standardError = successiveDifferenceError(walked);
    return studentT(confidenceOf(confidence_pct), walked.length - 1) * standardError;
  });
}

/**
 * Mean of a full measure taken on some plots, by way of a quick measure taken on all of them.
 * @customfunction DOUBLESAMPLE
 * @param quick Quick measure of every plot, such as its basal area, in any one unit; a blank between others counts as 0.
 * @param measured_quick The same quick measure on the plots that were also measured in full.
 * @param measured_full Full measure on those plots, such as volume per acre, in any one unit and in the same order.
 * @param [way] Way of carrying it over: Ratio or Regression. Left out: Ratio.
 * @param [confidence_pct] Confidence of the margin, in percent. Left out: 95.
 * @returns A table of one row: mean, margin, margin in percent, low, high, slope, number of plots and of those measured in full.
 */
export function doubleSample(
  quick: any[][],
  measured_quick: any[][],
  measured_full: any[][],
  way?: DoubleWayName,
  confidence_pct?: any,
): any[][] {
  return answered(() =>
    doubleTable(
      { quick, measuredQuick: measured_quick, measuredFull: measured_full },
      chosen("Way", oneText(way, "Way", DoubleWayName.Ratio), doubleWays),
      confidenceOf(confidence_pct),
    ),
  );
}

/**
 * A cruise against a check of it: the same plots measured twice, compared pair by pair.
 * @customfunction CHECKCRUISE
 * @param cruise What the cruise says of each checked plot, one number a plot, in any one unit; a blank between others counts as 0.
 * @param check What the check says of the same plots, in the same unit and order.
 * @param [confidence_pct] Confidence of the margin, in percent. Left out: 95.
 * @returns A table of one row: plots checked, both means, their difference with its margin, and whether it is more than chance.
 */
export function checkCruise(cruise: any[][], check: any[][], confidence_pct?: any): any[][] {
  return answered(() => checkTable({ cruise, check }, confidenceOf(confidence_pct)));
}
