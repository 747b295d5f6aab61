import type { Source } from "../basis/source";

/**
 * Scribner board feet per foot of length, as the scaling bureaus of the Northwest take them: one row for each inch of
 * diameter inside bark at the small end, 1 to 50, with one factor for each of three groups of lengths. [bf/ft]
 * The groups differ from 6 to 11 in only.
 *
 * All of it is from memory; the book was not seen. What speaks for it: of the 44 logs of 5 to 8 in by 10 to 20 ft it
 * gives 20 bf to exactly 25, the count that N. Hart states in print; and in logs of 16 ft it agrees with the Forest
 * Service table from 6 to 40 in.
 */
export const northwestFactors = {
  sources: [
    {
      author: "Northwest Log Rules Advisory Group",
      year: "n.d.",
      title: "Official Log Scaling and Grading Rules",
      where: "Scribner board feet per foot of length, 1 to 50 in; from memory",
      standing: "from memory",
    },
    {
      author: "N. Hart, Timber Measurement Society",
      year: "2018",
      title: "Translating Log Volumes from BC Metric to US Scribner Scale",
      where: "25 of the 44 logs of 5 to 8 in by 10 to 20 ft scale 20 bf: the factors give the same count",
      url: "https://docslib.org/download/2637088/translating-log-volumes-from-bc-metric-to-us-scribner-scale",
      standing: "read",
    },
  ] satisfies readonly Source[],
  smallestDiameter: 1,
  /** The longest length of each group. [ft] */
  groups: [15, 31, 40],
  rows: [
    [0, 0, 0], // 1 in
    [0.143, 0.143, 0.143], // 2 in
    [0.39, 0.39, 0.39], // 3 in
    [0.676, 0.676, 0.676], // 4 in
    [1.07, 1.07, 1.07], // 5 in
    [1.16, 1.249, 1.57], // 6 in
    [1.4, 1.608, 1.8], // 7 in
    [1.501, 1.854, 2.2], // 8 in
    [2.084, 2.41, 2.9], // 9 in
    [3.126, 3.542, 3.815], // 10 in
    [3.749, 4.167, 4.499], // 11 in
    [4.9, 4.9, 4.9], // 12 in
    [6.043, 6.043, 6.043], // 13 in
    [7.14, 7.14, 7.14], // 14 in
    [8.88, 8.88, 8.88], // 15 in
    [10, 10, 10], // 16 in
    [11.528, 11.528, 11.528], // 17 in
    [13.29, 13.29, 13.29], // 18 in
    [14.99, 14.99, 14.99], // 19 in
    [17.499, 17.499, 17.499], // 20 in
    [18.99, 18.99, 18.99], // 21 in
    [20.88, 20.88, 20.88], // 22 in
    [23.51, 23.51, 23.51], // 23 in
    [25.218, 25.218, 25.218], // 24 in
    [28.677, 28.677, 28.677], // 25 in
    [31.249, 31.249, 31.249], // 26 in
    [34.22, 34.22, 34.22], // 27 in
    [36.376, 36.376, 36.376], // 28 in
    [38.04, 38.04, 38.04], // 29 in
    [41.06, 41.06, 41.06], // 30 in
    [44.376, 44.376, 44.376], // 31 in
    [45.975, 45.975, 45.975], // 32 in
    [48.99, 48.99, 48.99], // 33 in
    [50, 50, 50], // 34 in
    [54.688, 54.688, 54.688], // 35 in
    [57.66, 57.66, 57.66], // 36 in
    [64.319, 64.319, 64.319], // 37 in
    [66.73, 66.73, 66.73], // 38 in
    [70, 70, 70], // 39 in
    [75.24, 75.24, 75.24], // 40 in
    [79.48, 79.48, 79.48], // 41 in
    [83.91, 83.91, 83.91], // 42 in
    [87.19, 87.19, 87.19], // 43 in
    [92.501, 92.501, 92.501], // 44 in
    [94.99, 94.99, 94.99], // 45 in
    [99.075, 99.075, 99.075], // 46 in
    [103.501, 103.501, 103.501], // 47 in
    [107.97, 107.97, 107.97], // 48 in
    [112.292, 112.292, 112.292], // 49 in
    [116.99, 116.99, 116.99], // 50 in
  ],
} as const;
