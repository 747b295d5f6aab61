import type { Source } from "../basis/source";

/**
 * Softwood lumber: the nominal size of a face and the least it measures once dressed, dry (19 % moisture or less) and
 * green. [in] Fractions are kept as printed so that a reader can check them by eye. Of a timber the table prints what
 * comes off: its thickness and its width alike.
 */
export const softwoodSizes = {
  sources: [
    {
      author: "U.S. Department of Commerce",
      year: "n.d.",
      title: "American Softwood Lumber Standard, PS 20",
      where: "minimum dressed sizes, as tabulated without edition by Engineering ToolBox; the standard was not opened",
      url: "https://www.engineeringtoolbox.com/softwood-lumber-standard-d_1270.html",
      standing: "read",
    },
    {
      author: "sizes.com",
      year: "n.d.",
      title: "Softwood lumber dimensions in the United States",
      where: "timbers by PS 20-05, dry: 1/2 in less at 5 and 6 in, 3/4 less at 7 to 15, 1 less from 16 up",
      url: "https://www.sizes.com/materials/lumberSoftDimen_US.htm",
      standing: "read",
    },
  ] satisfies readonly Source[],
  boards: {
    thicknesses: [
      { nominal: 3 / 8, dry: 5 / 16, green: 11 / 32 },
      { nominal: 1 / 2, dry: 7 / 16, green: 15 / 32 },
      { nominal: 5 / 8, dry: 9 / 16, green: 19 / 32 },
      { nominal: 3 / 4, dry: 5 / 8, green: 11 / 16 },
      { nominal: 1, dry: 3 / 4, green: 25 / 32 },
      { nominal: 1 + 1 / 4, dry: 1, green: 1 + 1 / 32 },
      { nominal: 1 + 1 / 2, dry: 1 + 1 / 4, green: 1 + 9 / 32 },
    ],
    widths: [
      { nominal: 2, dry: 1 + 1 / 2, green: 1 + 9 / 16 },
      { nominal: 3, dry: 2 + 1 / 2, green: 2 + 9 / 16 },
      { nominal: 4, dry: 3 + 1 / 2, green: 3 + 9 / 16 },
      { nominal: 5, dry: 4 + 1 / 2, green: 4 + 5 / 8 },
      { nominal: 6, dry: 5 + 1 / 2, green: 5 + 5 / 8 },
      { nominal: 7, dry: 6 + 1 / 2, green: 6 + 5 / 8 },
      { nominal: 8, dry: 7 + 1 / 4, green: 7 + 1 / 2 },
      { nominal: 9, dry: 8 + 1 / 4, green: 8 + 1 / 2 },
      { nominal: 10, dry: 9 + 1 / 4, green: 9 + 1 / 2 },
      { nominal: 11, dry: 10 + 1 / 4, green: 10 + 1 / 2 },
      { nominal: 12, dry: 11 + 1 / 4, green: 11 + 1 / 2 },
      { nominal: 14, dry: 13 + 1 / 4, green: 13 + 1 / 2 },
      { nominal: 16, dry: 15 + 1 / 4, green: 15 + 1 / 2 },
    ],
  },
  dimension: {
    thicknesses: [
      { nominal: 2, dry: 1 + 1 / 2, green: 1 + 9 / 16 },
      { nominal: 2 + 1 / 2, dry: 2, green: 2 + 1 / 16 },
      { nominal: 3, dry: 2 + 1 / 2, green: 2 + 9 / 16 },
      { nominal: 3 + 1 / 2, dry: 3, green: 3 + 1 / 16 },
      { nominal: 4, dry: 3 + 1 / 2, green: 3 + 9 / 16 },
      { nominal: 4 + 1 / 2, dry: 4, green: 4 + 1 / 16 },
    ],
    widths: [
      { nominal: 2, dry: 1 + 1 / 2, green: 1 + 9 / 16 },
      { nominal: 2 + 1 / 2, dry: 2, green: 2 + 1 / 16 },
      { nominal: 3, dry: 2 + 1 / 2, green: 2 + 9 / 16 },
      { nominal: 3 + 1 / 2, dry: 3, green: 3 + 1 / 16 },
      { nominal: 4, dry: 3 + 1 / 2, green: 3 + 9 / 16 },
      { nominal: 4 + 1 / 2, dry: 4, green: 4 + 1 / 16 },
      { nominal: 5, dry: 4 + 1 / 2, green: 4 + 5 / 8 },
      { nominal: 6, dry: 5 + 1 / 2, green: 5 + 5 / 8 },
      { nominal: 8, dry: 7 + 1 / 4, green: 7 + 1 / 2 },
      { nominal: 10, dry: 9 + 1 / 4, green: 9 + 1 / 2 },
      { nominal: 12, dry: 11 + 1 / 4, green: 11 + 1 / 2 },
      { nominal: 14, dry: 13 + 1 / 4, green: 13 + 1 / 2 },
      { nominal: 16, dry: 15 + 1 / 4, green: 15 + 1 / 2 },
    ],
  },
  timbers: [
    { from: 5, to: 6, lessDry: 1 / 2, lessGreen: 1 / 2 },
    { from: 7, to: 15, lessDry: 3 / 4, lessGreen: 1 / 2 },
    { from: 16, to: Infinity, lessDry: 1, lessGreen: 1 / 2 },
  ],
} as const;
