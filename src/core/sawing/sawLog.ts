import { InvalidInput } from "../basis/problem";
import { requirePositive } from "../basis/require";
import type { Source } from "../basis/source";
import { told } from "../basis/telling";
import { cubicFeet, inches, type CubicFeet, type Feet, type Inches } from "../basis/units";

/** A log on the mill: straight, round, sound, inside bark, its taper even from end to end (a truncated cone). */
export interface SawLog {
  /** Diameter inside bark at the small end. [in] */
  readonly smallEnd: Inches;
  /** Diameter inside bark at the large end; the same as the small end for a cylinder. [in] */
  readonly largeEnd: Inches;
  /** [ft] */
  readonly length: Feet;
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

/** @throws InvalidInput when a measure is not a number above 0, or the small end is the larger one */
export function requireSawLog({ smallEnd, largeEnd, length }: SawLog): void {
  requirePositive("Small end", smallEnd, "in");
  requirePositive("Large end", largeEnd, "in");
  requirePositive("Length", length, "ft");
  if (largeEnd < smallEnd) {
    throw new InvalidInput((telling) => {
      const came = `${telling.number(largeEnd, "in")} and ${told(telling, smallEnd, "in")}`;
      return `The large end should be at least as thick as the small end. You have ${came}. Ends swapped?`;
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
 *     V = pi L (Db^2 + Db Ds + Ds^2) / 1728
 *
 *     V  volume [ft3]; 1728 = 3 for the cone, 4 for the radii, 144 for in2 to ft2
 */
export function solidVolume({ smallEnd, largeEnd, length }: SawLog): CubicFeet {
  return cubicFeet((Math.PI * length * (largeEnd ** 2 + largeEnd * smallEnd + smallEnd ** 2)) / 1728);
}
