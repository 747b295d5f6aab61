import { requirePositive } from "../basis/require";
import type { Source } from "../basis/source";
import { inches, type Inches } from "../basis/units";

/**
 * Diameter at breast height from the girth that a plain tape gives, the stem taken as round.
 *
 *     D = C / pi
 *
 *     D  diameter         [in, or the unit of C]
 *     C  circumference    [in, or any unit]
 *
 * No closed curve of the same girth is as wide as the circle, so that a stem out of round comes out too large.
 *
 * @throws InvalidInput when C is not a number above 0
 */
export function dbhFromGirth(circumference: Inches): Inches {
  requirePositive("Circumference", circumference);
  return inches(circumference / Math.PI);
}

export const sources: readonly Source[] = [
  { author: "Geometry", year: "", title: "Girth of a circle", where: "C = pi D, exact", standing: "computed" },
  {
    author: "J. Martin",
    year: "n.d.",
    title: "University of Wisconsin Extension G3332",
    where: "where to measure: 4.5 ft above the ground, on the uphill side",
    url: "https://studylib.net/doc/12015782",
    standing: "read",
  },
];
