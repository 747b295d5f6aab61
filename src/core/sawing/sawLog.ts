import { InvalidInput } from "../basis/problem";
import { requireNotNegative, requirePositive } from "../basis/require";
import type { Source } from "../basis/source";
import { told } from "../basis/telling";
import { cubicFeet, inches, type CubicFeet, type Feet, type Inches } from "../basis/units";

/**
 * A log on the mill: sound wood inside bark, its taper even from end to end (a truncated cone). Round where only one
 * diameter of each end is known, and straight where no sweep is.
 */
export interface SawLog {
  /** Diameter inside bark at the small end. [in] */
  readonly smallEnd: Inches;
  /** Diameter inside bark at the large end; the same as the small end for a cylinder. [in] */
  readonly largeEnd: Inches;
  /** [ft] */
  readonly length: Feet;
  /** Diameters at right angles to the first ones, where the ends are oval; the section is taken as an ellipse. [in] */
  readonly smallEndAcross?: Inches;
  readonly largeEndAcross?: Inches;
  /**
   * Greatest departure of the pith from the straight line between its ends, in the plane of the first diameters; the
   * pith is taken as a parabola. [in]
   */
  readonly sweep?: Inches;
}

export const sources: readonly Source[] = [
  {
    author: "Woodlot Reckoner",
    year: "2026",
    title: "Geometry of a truncated cone",
    where: "core/sawing/sawLog",
    standing: "computed",
  },
];

/** Both diameters of an end; the first again where the end is round. [in] */
export const acrossSmallEnd = ({ smallEnd, smallEndAcross = smallEnd }: SawLog): Inches => smallEndAcross;
export const acrossLargeEnd = ({ largeEnd, largeEndAcross = largeEnd }: SawLog): Inches => largeEndAcross;

/** The most that the log measures anywhere. [in] */
export const thickestOf = (log: SawLog): number => Math.max(log.largeEnd, acrossLargeEnd(log));

export const isRound = (log: SawLog): boolean =>
  log.smallEnd === acrossSmallEnd(log) && log.largeEnd === acrossLargeEnd(log);

/** @throws InvalidInput when a measure is not a number above 0, or the small end is the larger one */
export function requireSawLog(log: SawLog): void {
  const { smallEnd, largeEnd, length, sweep = 0 } = log;
  const [smallAcross, largeAcross] = [acrossSmallEnd(log), acrossLargeEnd(log)];
  requirePositive("Small end", smallEnd, "in");
  requirePositive("Small end across", smallAcross, "in");
  requirePositive("Large end", largeEnd, "in");
  requirePositive("Large end across", largeAcross, "in");
  requirePositive("Length", length, "ft");
  requireNotNegative("Sweep", sweep, "in");
  for (const [large, small] of [
    [largeEnd, smallEnd],
    [largeAcross, smallAcross],
  ] as const) {
    if (large >= small) continue;
    throw new InvalidInput((telling) => {
      const came = `${telling.number(large, "in")} and ${told(telling, small, "in")}`;
      return `The large end should be at least as thick as the small end. You have ${came}. Ends swapped?`;
    });
  }
  const thinnest = Math.min(smallEnd, smallAcross);
  if (sweep >= thinnest) {
    throw new InvalidInput((telling) => {
      const came = `${telling.number(sweep, "in")} and ${told(telling, thinnest, "in")}`;
      return `Sweep should be less than the small end. You have ${came}.`;
    });
  }
}

/**
 * Diameter of the log a distance up from its large end.
 *
 *     D(x) = Db - (Db - Ds) x / L
 *
 *     Db, Ds  diameter at the large and at the small end  [in]
 *     x       distance from the large end                 [ft]
 *     L       length                                      [ft]
 */
export function diameterAt({ smallEnd, largeEnd, length }: SawLog, fromLargeEnd: number): Inches {
  return inches(largeEnd - ((largeEnd - smallEnd) * fromLargeEnd) / length);
}

/**
 * Solid wood in the log.
 *
 *     V = pi L (Db1 Db2 + 4 Dm1 Dm2 + Ds1 Ds2) / 3456
 *
 *     V         volume [ft3]; 3456 = 6 of Simpson's rule (exact here), 4 for the radii, 144 for in2 to ft2
 *     D1, D2    the two diameters of a section, at the large end, half-way and at the small end [in]
 *
 * Of a round log pi L (Db^2 + Db Ds + Ds^2) / 1728. Sweep does not change it.
 */
export function solidVolume(log: SawLog): CubicFeet {
  const [largeAcross, smallAcross] = [acrossLargeEnd(log), acrossSmallEnd(log)];
  const middle = (log.largeEnd + log.smallEnd) * (largeAcross + smallAcross); // four times the product half-way
  const sum = log.largeEnd * largeAcross + middle + log.smallEnd * smallAcross;
  return cubicFeet((Math.PI * log.length * sum) / 3456);
}
