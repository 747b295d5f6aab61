import { requirePositive } from "../basis/require";
import type { Source } from "../basis/source";
import { feet, percent, type Feet, type Inches, type Percent, type SquareFeetPerAcre } from "../basis/units";
import { slopeStretch } from "../tree/horizontalDistance";
import { toCenter, type MeasureTo } from "./measureTo";
import { plotRadiusFactor, sources as factorSources } from "./plotRadiusFactor";

/** A tree at a sampling point, and how its distance is taped. */
export interface BorderlineTree {
  /** Diameter at breast height, over bark. [in] */
  readonly dbh: Inches;
  /** Basal area factor of the gauge. [ft2/ac] */
  readonly baf: SquareFeetPerAcre;
  readonly measureTo?: MeasureTo;
  /** Slope along which the tape lies. [%] */
  readonly slope?: Percent;
}

/**
 * Limiting distance of a tree at a sampling point: the longest tape reading at which it is still in.
 *
 *     LD = k D sqrt(1 + (s / 100)^2)
 *
 *     LD  limiting distance, along the slope if there is one   [ft]
 *     k   plot radius factor, to the centre or to the face     [ft/in]
 *     D   diameter at breast height, over bark                 [in]
 *     s   slope                                                [%]
 *
 * A tree is in when its level distance is no more than k D; the root turns that into what the tape shows. At full
 * precision: a rounded factor can decide a borderline tree the other way.
 *
 * @throws InvalidInput when D or BAF is not a number above 0, or the slope is not between -200 and 200 %
 */
export function limitingDistance({ dbh, baf, measureTo = toCenter, slope = percent(0) }: BorderlineTree): Feet {
  requirePositive("DBH", dbh, "in");
  return feet(plotRadiusFactor(baf, measureTo) * dbh * slopeStretch(slope));
}

export const sources: readonly Source[] = factorSources;
