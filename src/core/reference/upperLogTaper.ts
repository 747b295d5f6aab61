import type { Source } from "../basis/source";

/**
 * Average upper-log taper: how much smaller, inside bark, the top of each 16-foot log is than the top of the log
 * below it, by diameter at breast height and number of 16-foot logs in the tree. [in]
 *
 * Set down from memory and not yet seen in print, but checked through volumes that were read in print: with the log
 * rules they rebuild the Scribner and International tables of form class 78 and the International one of form class
 * 80. The tapers of 2- and 3-log trees from 34 in up are the values that rebuild those cells. Left out, because no
 * cell pins them down: 4 logs at 10 in and above 32 in, and every tree of 5 or 6 logs.
 */
export const upperLogTaper = {
  source: {
    author: "C. Mesavage and J. W. Girard",
    year: "1946",
    title: "Tables for estimating board-foot volume of timber",
    where: "average upper-log taper, as reprinted in mensuration texts",
    standing: "from memory",
  } satisfies Source,
  /** Tapers of the second, third and fourth log of a tree of two, three and four logs. */
  rows: [
    { dbh: 10, two: [1.4], three: [1.2, 1.4] },
    { dbh: 12, two: [1.6], three: [1.3, 1.5], four: [1.1, 1.4, 1.9] },
    { dbh: 14, two: [1.7], three: [1.4, 1.6], four: [1.2, 1.5, 2.0] },
    { dbh: 16, two: [1.9], three: [1.5, 1.7], four: [1.2, 1.6, 2.1] },
    { dbh: 18, two: [2.0], three: [1.6, 1.8], four: [1.3, 1.7, 2.2] },
    { dbh: 20, two: [2.1], three: [1.7, 1.9], four: [1.4, 1.8, 2.4] },
    { dbh: 22, two: [2.2], three: [1.8, 2.0], four: [1.4, 2.0, 2.5] },
    { dbh: 24, two: [2.3], three: [1.8, 2.2], four: [1.5, 2.2, 2.6] },
    { dbh: 26, two: [2.4], three: [1.9, 2.3], four: [1.5, 2.3, 2.7] },
    { dbh: 28, two: [2.5], three: [1.9, 2.5], four: [1.6, 2.4, 2.8] },
    { dbh: 30, two: [2.6], three: [2.0, 2.6], four: [1.7, 2.5, 3.0] },
    { dbh: 32, two: [2.7], three: [2.0, 2.7], four: [1.7, 2.5, 3.1] },
    { dbh: 34, two: [2.8], three: [2.1, 2.7] },
    { dbh: 36, two: [2.8], three: [2.1, 2.8] },
    { dbh: 38, two: [2.9], three: [2.1, 2.8] },
    { dbh: 40, two: [2.9], three: [2.2, 2.8] },
  ],
} as const;
