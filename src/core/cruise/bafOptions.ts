import { requirePositive } from "../basis/require";
import type { Source } from "../basis/source";
import type { SquareFeetPerAcre } from "../basis/units";

/** How many trees a gauge would pick at a point, and how that sits with the band that is taught. */
export interface BafOption {
  readonly baf: number;
  readonly trees: number;
  readonly band: "fewer" | "fits" | "more";
}

/** Average trees at a point that are taught as few enough to check and enough to average. [1] */
export const BAND = { low: 4, high: 8 } as const;

/** Gauges on offer in the trade; the list is a choice of ours. [ft2/ac], [m2/ha] */
export const IMPERIAL_GAUGES: readonly number[] = [5, 10, 15, 20, 30, 40];
export const METRIC_GAUGES: readonly number[] = [1, 2, 3, 4, 6, 9];

export const sources: readonly Source[] = [
  {
    author: "author not shown",
    year: "n.d.",
    title: "Point Sampling or Variable Plot Cruising, Kentucky forestry teaching slides",
    where: "4 to 8 trees at a point on average; one factor for a stratum",
    url: "https://studylib.net/doc/5701643/13--14",
    standing: "read",
  },
];

/**
 * Trees to expect at a point under each gauge.
 *
 *     n = G / BAF
 *
 *     n       average number of trees at a point
 *     G, BAF  basal area of the stand and factor of the gauge, in one unit
 *
 * @throws InvalidInput when the basal area is not a number above 0
 *
 * [1] Point Sampling or Variable Plot Cruising, Kentucky forestry teaching slides
 */
export function bafOptions(basalArea: SquareFeetPerAcre | number, gauges: readonly number[]): readonly BafOption[] {
  requirePositive("Basal area", basalArea);
  return gauges.map((baf) => {
    const trees = basalArea / baf;
    return { baf, trees, band: trees < BAND.low ? "fewer" : trees > BAND.high ? "more" : "fits" };
  });
}
