import { overTrees, type DensityMeasure } from "../standDensity";

/** Coefficients as remembered; the paper itself was not seen. [1] */
const RECALLED = {
  trees: -0.00507,
  diameters: 0.01698,
  squares: 0.00317,
} as const;

/**
 * Stocking of upland hardwoods, oak above all: the share of the growing space that the trees take. [%]
 *
 *     S = a N + b sum(d) + c sum(d^2)     over the trees of an acre
 *
 *     N        trees per acre                 [1/ac]
 *     d        diameter at breast height      [in]
 *     a, b, c  -0.00507, 0.01698, 0.00317, recalled [1]
 *
 * 100 is as full as such stands grow; about 58 is the least that uses the site in full [2]. The form is printed
 * in [3], whose own answer for 200 trees and 100 ft2 comes out only with 0.00307 in place of 0.00317; three readings
 * from printed charts fit 0.00317 better. Take the answer as good to 2 or 3 percent.
 *
 * [1] S. F. Gingrich, Forest Science 13:38-53, 1967, from memory; [2] Hardwood Stocking Charts, SREF;
 * [3] D. R. Larsen, University of Missouri, teaching page on percent stocking
 */
export const uplandOakStocking: DensityMeasure = {
  id: "uplandOakStocking",
  title: "Upland oak stocking",
  aliases: ["Stocking", "Oak stocking", "Gingrich"],
  perLand: false,
  says: "percent of the growing space of upland oak; coefficients recalled, good to 2 or 3 percent",
  sources: [
    {
      author: "S. F. Gingrich",
      year: "1967",
      title: "Measuring and evaluating stocking and stand density in upland hardwood forests, Forest Science 13:38-53",
      where: "coefficients of the tree-area ratio",
      standing: "from memory",
    },
    {
      author: "D. R. Larsen",
      year: "n.d.",
      title: "teaching page on percent stocking, University of Missouri",
      where: "the form; its printed answer differs by 2 percent from the recalled coefficients",
      url: "https://larsendr.github.io/percentStocking.html",
      standing: "read",
    },
    {
      author: "Southern Regional Extension Forestry",
      year: "n.d.",
      title: "Hardwood Stocking Charts, forestry handbook pages",
      where: "chart readings, held against the coefficients in a test",
      url: "https://handbook.sref.info/doku.php?do=export_xhtml&id=hardwood_stocking_charts",
      standing: "read",
    },
  ],
  of: (stand) => overTrees(stand, (dbh) => RECALLED.trees + RECALLED.diameters * dbh + RECALLED.squares * dbh ** 2),
};
