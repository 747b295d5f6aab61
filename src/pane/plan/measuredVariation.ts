import { mean, sampleVariance } from "../../core/basis/statistics";
import type { StandAnswers } from "../job/readStand";

/** From this many points on, their own variation says more than a guess. A choice of ours. */
const ENOUGH_POINTS = 5;

/** How much the points taken so far differ in volume, or in basal area while there is no volume. [%] */
export function measuredVariation(stand: StandAnswers | undefined): number | undefined {
  if (!stand || stand.points.length < ENOUGH_POINTS) return undefined;
  const volumes = stand.points.map(({ volume }) => volume);
  const values = volumes.some((volume) => volume > 0) ? volumes : stand.points.map(({ basalArea }) => basalArea);
  const centre = mean(values);
  return centre > 0 ? (100 * Math.sqrt(sampleVariance(values))) / centre : undefined;
}
