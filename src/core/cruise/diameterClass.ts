import type { Source } from "../basis/source";

export const sources: readonly Source[] = [
  {
    author: "D. Marshall and K. Iles",
    year: "n.d.",
    title: "newsletter article on a stand table from counted and measured points, title not noted",
    where: "class of 16.0 to 17.9 in: the lower limit belongs to the class",
    url: "http://john-bell-associates.com/regular/regular45b.htm",
    standing: "read",
  },
];

/** Far below any tape's reading, far above the rounding of a converted centimetre. */
export const ROUNDING = 1e-9;

/**
 * The number of the diameter class that holds a tree; the class is named by its midpoint, its number times the width.
 *
 *     k w - w/2 <= d < k w + w/2
 *
 *     k  number of the class
 *     w  width of a class
 *     d  diameter at breast height, in the unit of the width
 *
 * So the 2-inch class 12 holds 11.0 to just under 13.0 in. The lower limit belongs to the class, as in [1]; other
 * printed tables put it one step down, 11.1 to 13.0. That midpoints are multiples of the width is a choice of ours.
 * Classes only sort the trees: each is expanded by the diameter that was measured.
 *
 * [1] D. Marshall and K. Iles, newsletter article on a stand table from counted and measured points
 */
export function diameterClass(dbh: number, width: number): number {
  return Math.floor(dbh / width + 0.5 + ROUNDING);
}
