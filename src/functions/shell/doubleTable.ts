import type { Percent } from "../../core/basis/units";
import type { Choice } from "../../core/basis/choices";
import {
  doubleSampleRatio,
  doubleSampleRegression,
  type DoubleSample,
  type DoubleSampleEstimate,
} from "../../core/cruise/doubleSampling";
import { compareCheckCruise } from "../../core/cruise/checkCruise";
import { mean } from "../../core/basis/statistics";
import { spilled } from "./answers";
import { sharedRows, column } from "./columns";
import { plotValues } from "./plotValues";
import type { Cells } from "./readings";
import { marginAt } from "./margins";

/** A way of carrying the full measure over to all plots. */
export interface DoubleWay extends Choice {
  readonly slope: string;
  estimate(sample: DoubleSample, confidence: Percent): DoubleSampleEstimate;
}

export const doubleWays: readonly DoubleWay[] = [
  {
    title: "Ratio",
    aliases: ["Ratio estimate"],
    slope: "Full for one quick",
    estimate: doubleSampleRatio,
  },
  {
    title: "Regression",
    aliases: ["Line"],
    slope: "Slope of the line",
    estimate: doubleSampleRegression,
  },
];

/** Mean of the full measure from a quick one on all plots, with its margin. */
export function doubleTable(
  given: {
    readonly quick: unknown;
    readonly measuredQuick: unknown;
    readonly measuredFull: unknown;
  },
  way: DoubleWay,
  confidence: Percent,
): Cells {
  const { measuredQuick, measuredFull } = pairs(
    ["Quick measure of measured plots", given.measuredQuick],
    ["Full measure", given.measuredFull],
  );
  const measured = measuredQuick.map((quick, plot) => ({
    quick,
    full: measuredFull[plot] as number,
  }));
  const quick = plotValues(given.quick);
  const header = ["Mean", marginAt(confidence), "Margin %", "Low", "High", way.slope, "Plots", "Measured in full"];
  if (quick.length === 0) return spilled(header, [["No plots yet"]]);
  const { value, margin, marginPercent, low, high, slope } = way.estimate({ quick, measured }, confidence);
  return spilled(header, [[value, margin, marginPercent, low, high, slope, quick.length, measured.length]]);
}

/** Cruise and check on the same plots, and whether they differ by more than chance explains. */
export function checkTable(given: { readonly cruise: unknown; readonly check: unknown }, confidence: Percent): Cells {
  const { measuredQuick: cruise, measuredFull: check } = pairs(["Cruise", given.cruise], ["Check", given.check]);
  const header = ["Plots checked", "Cruise, mean", "Check, mean", "Check less cruise", marginAt(confidence), "Verdict"];
  if (cruise.length === 0) return spilled(header, [["No plots yet"]]);
  const { difference, shown } = compareCheckCruise(cruise, check, confidence);
  const verdict = shown
    ? "They differ by more than chance explains: find out why before you correct."
    : "No difference shown: chance explains it.";
  return spilled(header, [[cruise.length, mean(cruise), mean(check), difference.value, difference.margin, verdict]]);
}

/** Two lists of the same plots; a blank in one beside a number in the other is a plot without trees. */
function pairs(one: readonly [string, unknown], other: readonly [string, unknown]) {
  sharedRows([column(one[1], one[0]), column(other[1], other[0])]);
  const [first, second] = [plotValues(one[1]), plotValues(other[1])];
  const rows = Math.max(first.length, second.length);
  const longer = (values: Float64Array) => Array.from({ length: rows }, (_, row) => values[row] ?? 0);
  return { measuredQuick: longer(first), measuredFull: longer(second) };
}
