import { Problem } from "../../core/basis/problem";
import { localVolume } from "../../core/tree/local/localVolume";
import { mean } from "../../core/basis/statistics";
import type { LocalFit, MeasuredTree } from "../job/readLocalVolume";

/** Volume against DBH by the fitted equation, for trees of one height. */
export interface LocalCurve {
  readonly height: number;
  readonly points: readonly { readonly dbh: number; readonly volume: number }[];
}

const POINTS = 40;

/** The equation over the felled diameters, for the shortest, the mean and the tallest of the felled trees. */
export function localCurves({ table }: LocalFit, felled: readonly MeasuredTree[]): readonly LocalCurve[] {
  const { least, most } = table.dbh;
  const heights = [table.height.least, mean(felled.map(({ height }) => height)), table.height.most];
  return [...new Set(heights)].map((height) => ({
    height,
    points: Array.from({ length: POINTS + 1 }, (_, i) => least + ((most - least) * i) / POINTS).flatMap((dbh) => {
      const volume = volumeOrNone(() => localVolume(table, dbh, height));
      return volume === undefined ? [] : [{ dbh, volume }];
    }),
  }));
}

/** How far the equation is off a felled tree; undefined where it gives it nothing. [%] */
export function offBy({ table }: LocalFit, { dbh, height, volume }: MeasuredTree): number | undefined {
  const by = volumeOrNone(() => localVolume(table, dbh, height));
  return by === undefined ? undefined : 100 * (by / volume - 1);
}

function volumeOrNone(work: () => number): number | undefined {
  try {
    return work();
  } catch (problem) {
    if (problem instanceof Problem) return undefined;
    throw problem;
  }
}
