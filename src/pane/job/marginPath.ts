import { percent } from "../../core/basis/units";
import { estimate } from "../../core/cruise/estimate";
import type { PointFigures } from "./readStand";

/** The margin after so many points, in percent of their mean. */
export interface MarginAfter {
  readonly points: number;
  readonly margin: number;
}

/** Fewer points say nothing of a margin; their t alone would fill the chart. A choice of ours. */
const FIRST = 3;

/** How the margin went as points came in, in the order of the list; of the volume, or of basal area while there is none. */
export function marginPath(points: readonly PointFigures[], confidence: number): readonly MarginAfter[] {
  const volumes = points.map(({ volume }) => volume);
  const values = volumes.some((volume) => volume > 0) ? volumes : points.map(({ basalArea }) => basalArea);
  return values.slice(FIRST - 1).flatMap((_, place) => {
    const used = place + FIRST;
    const { marginPercent } = estimate(values.slice(0, used), percent(confidence));
    return marginPercent === undefined ? [] : [{ points: used, margin: marginPercent }];
  });
}
