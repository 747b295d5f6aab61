import type { Source } from "../basis/source";

export const sources: readonly Source[] = [
  {
    author: "Woodlot Reckoner",
    year: "",
    title: "Stopping as soon as the margin looks good enough",
    where: "simulation test/bench/stopping.ts: 4,000 cruises each of an invented mapped stand, BAF 10, 95 % confidence",
    standing: "choice of ours",
  },
];

/**
 * By how much the stated margin falls short of the true one when one stops as soon as it is down to what one wants: the
 * luckiest cruises stop first. As test/bench/stopping.ts prints it. [1]
 *
 *     wanted   margin at which one stops                                         [%]
 *     percent  100 (1 - s / r), of the mean stated margin s and the true one r   [%]
 *
 * [1] simulation test/bench/stopping.ts
 */
export const understatements = [
  { wanted: 30, percent: 14 },
  { wanted: 20, percent: 6 },
  { wanted: 15, percent: 5 },
] as const;

/** The figure for the simulated margin that lies nearest to the one wanted. */
export function understatementAt(wanted: number): { readonly wanted: number; readonly percent: number } {
  return understatements.reduce((best, one) =>
    Math.abs(one.wanted - wanted) < Math.abs(best.wanted - wanted) ? one : best,
  );
}
