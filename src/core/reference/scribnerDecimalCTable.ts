import type { Source } from "../basis/source";

/**
 * Scribner Decimal C log rule, the short-log table of the Forest Service: one row for each inch of diameter inside
 * bark at the small end, one column for each even foot of length. [tens of board feet; 0.5 is 5 bf]
 *
 * `cellsRead` tells which cells were read in print, as blocks of diameters [in] and lengths [ft], both ends included;
 * all others are from memory, and the table has not been seen in the scaling handbook itself.
 * What speaks for the recalled ones: all 90 cells of the first block had been recalled the same before they were read,
 * and the 16-ft column agrees in all 35 cells with the per-foot factors of the Northwest.
 */
export const scribnerDecimalCTable = {
  sources: [
    {
      author: "E. M. Wengert",
      year: "2001",
      title: "Log Volume",
      where: "Scribner table, 6 to 20 in by 6 to 16 ft: 90 cells",
      url: "https://woodweb.com/knowledge_base/Log_Volume.html",
      standing: "read",
    },
    {
      author: "L. H. Bailey",
      year: "n.d.",
      title: "Farm and Garden Rule-Book",
      where: "Forest Yields: 6 in x 8 ft = 0.5 and 30 in x 16 ft = 66",
      url: "https://chestofbooks.com/gardening-horticulture/farming/Farm-And-Garden-Rule-Book/Forest-Yields-Part-5.html",
      standing: "read",
    },
    {
      author: "USDA Forest Service",
      year: "n.d.",
      title: "National Forest Log Scaling Handbook, FSH 2409.11",
      where: "21 to 40 in, and 18 and 20 ft at any diameter, but for 30 in x 16 ft: 189 cells",
      standing: "from memory",
    },
  ] satisfies readonly Source[],
  cellsRead: [
    { diameters: [6, 20], lengths: [6, 16] },
    { diameters: [30, 30], lengths: [16, 16] },
  ],
  smallestDiameter: 6,
  largestDiameter: 40,
  lengths: [6, 8, 10, 12, 14, 16, 18, 20],
  rows: [
    [0.5, 0.5, 1, 1, 1, 2, 2, 2], // 6 in
    [0.5, 1, 1, 2, 2, 3, 3, 3], // 7 in
    [1, 1, 2, 2, 2, 3, 3, 3], // 8 in
    [1, 2, 3, 3, 3, 4, 4, 4], // 9 in
    [2, 3, 3, 3, 4, 6, 6, 7], // 10 in
    [2, 3, 4, 4, 5, 7, 8, 8], // 11 in
    [3, 4, 5, 6, 7, 8, 9, 10], // 12 in
    [4, 5, 6, 7, 8, 10, 11, 12], // 13 in
    [4, 6, 7, 9, 10, 11, 13, 14], // 14 in
    [5, 7, 9, 11, 12, 14, 16, 18], // 15 in
    [6, 8, 10, 12, 14, 16, 18, 20], // 16 in
    [7, 9, 12, 14, 16, 18, 21, 23], // 17 in
    [8, 11, 13, 16, 19, 21, 24, 27], // 18 in
    [9, 12, 15, 18, 21, 24, 27, 30], // 19 in
    [11, 14, 17, 21, 24, 28, 31, 35], // 20 in
    [12, 15, 19, 23, 27, 30, 34, 38], // 21 in
    [13, 17, 21, 25, 29, 33, 38, 42], // 22 in
    [14, 19, 23, 28, 33, 38, 42, 47], // 23 in
    [15, 21, 25, 30, 35, 40, 45, 50], // 24 in
    [17, 23, 29, 34, 40, 46, 52, 57], // 25 in
    [19, 25, 31, 37, 44, 50, 56, 62], // 26 in
    [21, 27, 34, 41, 48, 55, 62, 68], // 27 in
    [22, 29, 36, 44, 51, 58, 65, 73], // 28 in
    [23, 31, 38, 46, 53, 61, 68, 76], // 29 in
    [25, 33, 41, 49, 57, 66, 74, 82], // 30 in
    [27, 36, 44, 53, 62, 71, 80, 89], // 31 in
    [28, 37, 46, 55, 64, 74, 83, 92], // 32 in
    [29, 39, 49, 59, 69, 78, 88, 98], // 33 in
    [30, 40, 50, 60, 70, 80, 90, 100], // 34 in
    [33, 44, 55, 66, 77, 88, 98, 109], // 35 in
    [35, 46, 58, 69, 81, 92, 104, 115], // 36 in
    [39, 51, 64, 77, 90, 103, 116, 129], // 37 in
    [40, 54, 67, 80, 93, 107, 120, 133], // 38 in
    [42, 56, 70, 84, 98, 112, 126, 140], // 39 in
    [45, 60, 75, 90, 105, 120, 135, 150], // 40 in
  ],
} as const;
