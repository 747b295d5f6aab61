import { requireBetween, requirePositive } from "../basis/require";
import type { Source } from "../basis/source";
import { inches, type Inches } from "../basis/units";

/** Thickest bark taken for a true reading: half the diameter. */
export const LEAST_BARK_RATIO = 0.5;

/**
 * Diameter inside bark by a bark ratio.
 *
 *     dib = k dob
 *
 *     dib, dob  diameter inside and outside bark    [in, or any unit]
 *     k         bark ratio of the species or, better, of a tree measured nearby
 *
 * @throws InvalidInput when the diameter is not a number above 0, or k is not between 0.5 and 1
 */
export function insideBark(outside: Inches, barkRatio: number): Inches {
  requirePositive("Diameter outside bark", outside);
  requireBetween("Bark ratio", barkRatio, LEAST_BARK_RATIO, 1);
  return inches(outside * barkRatio);
}

export const sources: readonly Source[] = [
  {
    author: "The trade",
    year: "",
    title: "Bark ratio",
    where: "diameter inside bark as a share of diameter outside bark; no single source",
    standing: "common practice",
  },
];
