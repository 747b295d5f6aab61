import { OutOfRange } from "../basis/problem";
import { mean, sampleVariance } from "../basis/statistics";
import { percent, type Percent } from "../basis/units";
import { plotsNeeded } from "./plotsNeeded";
import { requireTwoPlots } from "./requireTwoPlots";

/**
 * How many further plots would bring the margin of error down to the one that is wanted, if the further plots
 * differ as much as those already taken; 0 when there are enough.
 *
 * @param plots what each plot taken so far says, those without trees as 0
 * @throws OutOfRange when there are fewer than 2 plots, or their mean is 0
 * @throws InvalidInput when the wanted error is not above 0 or the confidence is out of its bounds
 */
export function morePlots(plots: ArrayLike<number>, error: Percent, confidence: Percent): number {
  requireTwoPlots(plots.length);
  const centre = mean(plots);
  if (centre === 0) throw new OutOfRange("Nothing to work on yet.");
  const variation = percent((100 * Math.sqrt(sampleVariance(plots))) / Math.abs(centre));
  return Math.max(0, plotsNeeded(variation, error, confidence) - plots.length);
}
